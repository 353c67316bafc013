package org.oldwood.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.oldwood.crop.Figure;

/**
 * Finds the day on which a rule is met in one season's temperatures. Knows nothing of what was
 * seen. Empty where the rule is never met there, in polar cold or without a winter.
 */
final class StageModel {
    private static final int LONGEST_SUM = 270;
    private static final int LONGEST_AUTUMN = 200;

    private final SeasonDays days;
    private final SeasonMethods methods;
    private final LocalDate heatFrom;
    private final double warmestMonthC;

    StageModel(SeasonDays days, SeasonMethods methods, LocalDate heatFrom, double warmestMonthC) {
        this.days = days;
        this.methods = methods;
        this.heatFrom = heatFrom;
        this.warmestMonthC = warmestMonthC;
    }

    Optional<LocalDate> heat(StageRule.Heat rule) {
        if (rule.warmSummer().isPresent()
                && warmestMonthC > rule.warmSummer().get().warmestMonthC().is()) {
            return Optional.of(days.on(rule.warmSummer().get().then()));
        }
        ToDoubleFunction<LocalDate> heat =
                rule.dayLength()
                        ? day -> days.heatByDayLength(day, rule.baseC())
                        : day -> days.heat(day, rule.baseC());
        Optional<LocalDate> met = reaches(heat, heatFrom, rule.sum().is(), LONGEST_SUM);
        if (rule.window().isEmpty()) {
            return met;
        }
        LocalDate least = days.on(rule.window().get().notBefore());
        LocalDate most = days.on(rule.window().get().notAfter());
        return Optional.of(within(met.orElse(most), least, most));
    }

    LocalDate heatAfter(StageRule.HeatAfter rule, Figure sum, LocalDate from) {
        int most = (int) rule.days().high();
        return within(
                reaches(day -> days.heat(day, rule.baseC()), from, sum.is(), most)
                        .orElse(from.plusDays(most)),
                from.plusDays((long) rule.days().low()),
                from.plusDays(most));
    }

    Optional<LocalDate> meanRises(StageRule.MeanRises rule) {
        LocalDate last = heatFrom.plusDays(LONGEST_SUM);
        LocalDate coldest = days.on(methods.heatFrom());
        for (LocalDate day = coldest; day.isBefore(last); day = day.plusDays(1)) {
            if (coolMean(day) >= rule.aboveC().is()) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    /** Leaf fall by cold, by short days, or by the days since it began. */
    Optional<LocalDate> leafFall(StageRule.LeafFall rule, Optional<LocalDate> began) {
        LocalDate first = days.on(methods.leafFallFrom());
        LocalDate most =
                began.isPresent() && rule.mostDaysAfterBegins().isPresent()
                        ? began.get().plusDays((long) rule.mostDaysAfterBegins().get().is())
                        : LocalDate.MAX;
        LocalDate last = first.plusDays(LONGEST_AUTUMN);
        for (LocalDate day = first; day.isBefore(last); day = day.plusDays(1)) {
            boolean dark =
                    rule.dayLengthBelowH().isPresent()
                            && days.dayLengthH(day) < rule.dayLengthBelowH().get().is();
            if (dark || !day.isBefore(most) || isCool(day, rule.belowC().is())) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private boolean isCool(LocalDate day, double belowC) {
        int run = days.isMeasured(day) ? (int) methods.run().is() : 1;
        for (int i = 0; i < run; i++) {
            if (coolMean(day.minusDays(i)) >= belowC) {
                return false;
            }
        }
        return true;
    }

    /** A measured day is smoothed by those before it; a normal day is smooth already. */
    private double coolMean(LocalDate day) {
        return days.isMeasured(day)
                ? days.meanC(day, (int) methods.meanOver().is())
                : days.meanC(day);
    }

    private static Optional<LocalDate> reaches(
            ToDoubleFunction<LocalDate> heat, LocalDate from, double need, int longest) {
        double sum = 0;
        for (int i = 0; i < longest; i++) {
            LocalDate day = from.plusDays(i);
            sum += heat.applyAsDouble(day);
            if (sum >= need) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    private static LocalDate within(LocalDate day, LocalDate least, LocalDate most) {
        if (day.isBefore(least)) {
            return least;
        }
        return day.isAfter(most) ? most : day;
    }
}

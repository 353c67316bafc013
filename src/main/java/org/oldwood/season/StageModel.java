package org.oldwood.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.oldwood.crop.Figure;

/**
 * Finds the day on which a rule is met in one season's temperatures. Knows nothing of what was seen. Empty where the
 * rule is never met there, in polar cold or without a winter.
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
        Optional<LocalDate> met = reaches(
                rule.dayLength() ? day -> days.heatByDayLength(day, rule.baseC()) : day -> days.heat(day, rule.baseC()),
                heatFrom,
                rule.sum().is(),
                LONGEST_SUM);
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
        int last = days.index(heatFrom) + LONGEST_SUM;
        for (int day = days.index(days.on(methods.heatFrom())); day < last; day++) {
            if (coolMean(day) >= rule.aboveC().is()) {
                return Optional.of(days.day(day));
            }
        }
        return Optional.empty();
    }

    /** Leaf fall by cold, by short days, or by the days since it began. */
    Optional<LocalDate> leafFall(StageRule.LeafFall rule, Optional<LocalDate> began) {
        int first = days.index(days.on(methods.leafFallFrom()));
        int most = began.isPresent() && rule.mostDaysAfterBegins().isPresent()
                ? days.index(began.get())
                        + (int) rule.mostDaysAfterBegins().get().is()
                : Integer.MAX_VALUE;
        double shortestH = rule.dayLengthBelowH().isPresent()
                ? rule.dayLengthBelowH().get().is()
                : 0;
        double belowC = rule.belowC().is();
        for (int day = first; day < first + LONGEST_AUTUMN; day++) {
            if (days.dayLengthH(day) < shortestH || day >= most || isCool(day, belowC)) {
                return Optional.of(days.day(day));
            }
        }
        return Optional.empty();
    }

    private boolean isCool(int day, double belowC) {
        int run = days.isMeasured(day) ? (int) methods.run().is() : 1;
        for (int i = 0; i < run; i++) {
            if (coolMean(day - i) >= belowC) {
                return false;
            }
        }
        return true;
    }

    /** A measured day is smoothed by those before it; a normal day is smooth already. */
    private double coolMean(int day) {
        return days.isMeasured(day) ? days.meanC(day, (int) methods.meanOver().is()) : days.meanC(day);
    }

    private Optional<LocalDate> reaches(IntToDoubleFunction heat, LocalDate from, double need, int longest) {
        int first = days.index(from);
        double sum = 0;
        for (int day = first; day < first + longest; day++) {
            sum += heat.applyAsDouble(day);
            if (sum >= need) {
                return Optional.of(days.day(day));
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

package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.oldwood.crop.Figure;

/**
 * Finds the day on which a rule is met in one season's temperatures. Knows nothing of what was seen. Empty where the
 * rule is never met there, in polar cold or without a winter.
 *
 * @param heatFrom the day from which heat counts
 * @param heatFactor what lacking chill multiplies the sums of heat with
 */
record StageModel(SeasonDays days, SeasonMethods methods, LocalDate heatFrom, double heatFactor, double warmestMonthC) {
    private static final int LONGEST_SUM = 270;

    StageModel(SeasonDays days, SeasonMethods methods, double heatFactor, double warmestMonthC) {
        this(days, methods, days.on(methods.heat().from()), heatFactor, warmestMonthC);
    }

    Optional<LocalDate> heat(StageRule.Heat rule) {
        if (isWarm(rule)) { return rule.warmSummer().map(each -> days.on(each.then())); }
        Optional<LocalDate> met = reaches(heat(rule.baseC(), rule.dayLength()), heatFrom, need(rule), LONGEST_SUM);
        if (rule.window().isEmpty()) { return met; }
        LocalDate least = days.on(rule.window().get().notBefore());
        LocalDate most = days.on(rule.window().get().notAfter());
        return Optional.of(within(met.orElse(most), least, most));
    }

    /** How far a sum of heat was by the last day measured, and what it lacks on the latest day that the rule gives it. */
    String far(StageRule.Heat rule) {
        if (isWarm(rule)) { return ""; }
        return far(heat(rule.baseC(), rule.dayLength()), heatFrom, need(rule),
                rule.window().map(each -> days.on(each.notAfter())));
    }

    /** The same from another stage on. */
    String far(StageRule.HeatAfter rule, LocalDate from) {
        return far(heat(rule.baseC(), false), from, rule.sum().is(),
                Optional.of(from.plusDays((long) rule.days().high())));
    }

    private String far(IntToDoubleFunction heat, LocalDate from, double need, Optional<LocalDate> latest) {
        List<String> words = new ArrayList<>();
        days.lastMeasured(from).ifPresent(
                last -> words.add("%.0f of %.0f by %s".formatted(Math.min(need, sum(heat, from, last)), need, last)));
        latest.filter(day -> sum(heat, from, day) < need).ifPresent(day -> words
                .add("at the latest %s, with %.0f of %.0f by then".formatted(day, sum(heat, from, day), need)));
        return String.join("; ", words);
    }

    private boolean isWarm(StageRule.Heat rule) {
        return rule.warmSummer().filter(each -> warmestMonthC > each.warmestMonthC().is()).isPresent();
    }

    private IntToDoubleFunction heat(double baseC, boolean dayLength) {
        return dayLength ? day -> days.heatByDayLength(day, baseC) : day -> days.heat(day, baseC);
    }

    private double sum(IntToDoubleFunction heat, LocalDate from, LocalDate to) {
        return IntStream.rangeClosed(days.index(from), days.index(to)).mapToDouble(heat).sum();
    }

    private double need(StageRule.Heat rule) { return rule.sum().is() * heatFactor; }

    /** Days not measured between the beginning of heat and a stage; the weather that was still to come. */
    int toCome(LocalDate stage) {
        return days.unmeasured(heatFrom, stage);
    }

    /** Whether any day was measured since heat began to count. */
    boolean isMeasured() {
        return days.lastMeasured(heatFrom).isPresent();
    }

    /** The share of those days, 0 where all are known. */
    double shareToCome(LocalDate stage) {
        long all = stage.toEpochDay() - heatFrom.toEpochDay();
        return all <= 0 ? 1 : (double) toCome(stage) / all;
    }

    LocalDate heatAfter(StageRule.HeatAfter rule, Figure sum, LocalDate from) {
        int most = (int) rule.days().high();
        return within(reaches(heat(rule.baseC(), false), from, sum.is(), most).orElse(from.plusDays(most)),
                from.plusDays((long) rule.days().low()), from.plusDays(most));
    }

    Optional<LocalDate> meanRises(StageRule.MeanRises rule) {
        int first = days.index(heatFrom);
        return IntStream.range(first, first + LONGEST_SUM).filter(day -> coolMean(day) >= rule.aboveC().is()).boxed()
                .findFirst().map(days::day);
    }

    /** Leaf fall: its day, slid by the mean of the autumn. */
    LocalDate leafFall(StageRule.LeafFall rule) {
        return days.on(rule.north()).plusDays(Math.round(rule.perC().is() * (heldAutumnC() - rule.atC().is())));
    }

    /** The same mean within the bounds where rows were seen: what leaf fall goes by. */
    double heldAutumnC() {
        return Math.max(methods.leafFall().least().is(), Math.min(methods.leafFall().most().is(), autumnC()));
    }

    /** Mean of the autumn, °C, measured days in place of normal ones. */
    double autumnC() {
        int last = days.index(days.on(methods.leafFall().to()));
        return days.meanC(last, last - days.index(days.on(methods.leafFall().from())) + 1);
    }

    /** A measured day is smoothed by those before it; a normal day is smooth already. */
    private double coolMean(int day) {
        return days.isMeasured(day) ? days.meanC(day, (int) methods.heat().meanOver().is()) : days.meanC(day);
    }

    private Optional<LocalDate> reaches(IntToDoubleFunction heat, LocalDate from, double need, int longest) {
        int first = days.index(from);
        double sum = 0;
        for (int day = first; day < first + longest; day++) {
            sum += heat.applyAsDouble(day);
            if (sum >= need) { return Optional.of(days.day(day)); }
        }
        return Optional.empty();
    }

    private static LocalDate within(LocalDate day, LocalDate least, LocalDate most) {
        if (day.isBefore(least)) { return least; }
        return day.isAfter(most) ? most : day;
    }
}

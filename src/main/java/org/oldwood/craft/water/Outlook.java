package org.oldwood.craft.water;

import java.util.OptionalInt;

/**
 * When a bed will run short in the days ahead. Uses the same arithmetic as {@link WaterAccount}. Days are counted from
 * the first one looked at, 0 for that one.
 *
 * @param likely days until it runs short in mean weather; empty where mean rain keeps it going
 * @param sooner the same with less rain than the mean
 * @param later the same with more
 * @param rainless the same with no rain at all
 */
public record Outlook(OptionalInt likely, OptionalInt sooner, OptionalInt later, OptionalInt rainless) {
    /**
     * Looks ahead.
     *
     * @param bed the bed
     * @param ahead mean weather from today on
     * @param coefficient the bed's coefficient on each of these days
     * @param depletionMm depletion on the evening before the first of these days
     * @param rainSpread by what share of the mean the rain of some weeks commonly misses it
     */
    public static Outlook of(
            BedWater bed, WeatherSeries ahead, double[] coefficient, double depletionMm, double rainSpread) {
        Run run = new Run(bed, ahead, coefficient, depletionMm);
        return new Outlook(
                run.firstShort(1), run.firstShort(1 - rainSpread), run.firstShort(1 + rainSpread), run.firstShort(0));
    }

    // never compared, and lives within one call
    @SuppressWarnings("ArrayRecordComponent")
    private record Run(BedWater bed, WeatherSeries ahead, double[] coefficient, double depletionMm) {
        OptionalInt firstShort(double rain) {
            WaterDays days =
                    new WaterAccount(bed).run(ahead.withRainTimes(rain), coefficient, new BedEvents(), depletionMm);
            for (int i = 0; i < days.days(); i++) {
                if (days.isShort(i)) {
                    return OptionalInt.of(i);
                }
            }
            return OptionalInt.empty();
        }
    }

    /**
     * Days to either side of the likely day, the greater of the two; to the sooner day alone where more rain would keep
     * the bed going. Empty where the likely day is not known.
     */
    public OptionalInt plusMinusDays() {
        if (likely.isEmpty() || sooner.isEmpty()) {
            return OptionalInt.empty();
        }
        int before = likely.getAsInt() - sooner.getAsInt();
        int after = later.orElse(likely.getAsInt()) - likely.getAsInt();
        return OptionalInt.of(Math.max(1, Math.max(before, after)));
    }
}

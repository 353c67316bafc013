package org.oldwood.water;

import java.util.OptionalInt;

/**
 * When a bed will run short in the days ahead. Uses the same arithmetic as {@link WaterAccount}.
 *
 * @param likely days from the start until it runs short in mean weather; empty where mean rain
 *     keeps it going
 * @param earliest the same with no rain at all; empty where even so it does not run short within
 *     the days looked at
 */
public record Outlook(OptionalInt likely, OptionalInt earliest) {
    /**
     * Looks ahead.
     *
     * @param bed the bed
     * @param ahead mean weather from today on
     * @param coefficient the bed's coefficient on each of these days
     * @param depletionMm depletion on the evening before the first of these days
     */
    public static Outlook of(
            BedWater bed, WeatherSeries ahead, double[] coefficient, double depletionMm) {
        WaterDays mean =
                new WaterAccount(bed).run(ahead, coefficient, new BedEvents(), depletionMm);
        WaterDays dry =
                new WaterAccount(bed)
                        .run(rainless(ahead), coefficient, new BedEvents(), depletionMm);
        return new Outlook(firstShort(mean), firstShort(dry));
    }

    private static WeatherSeries rainless(WeatherSeries ahead) {
        double[] et0 = new double[ahead.days()];
        for (int i = 0; i < et0.length; i++) {
            et0[i] = ahead.et0(i);
        }
        double[] none = new double[et0.length];
        return new WeatherSeries(ahead.first(), et0, none, none);
    }

    private static OptionalInt firstShort(WaterDays days) {
        for (int i = 0; i < days.days(); i++) {
            if (days.isShort(i)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Days to either side of the likely day: from the dry case to it. Empty where the likely day is
     * not known.
     */
    public OptionalInt plusMinusDays() {
        return likely.isPresent() && earliest.isPresent()
                ? OptionalInt.of(Math.max(1, likely.getAsInt() - earliest.getAsInt()))
                : OptionalInt.empty();
    }
}

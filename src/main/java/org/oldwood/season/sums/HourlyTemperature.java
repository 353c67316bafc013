package org.oldwood.season.sums;

import org.oldwood.season.SunTimes;

/**
 * The day's course of temperature from its least and greatest value: a sine by day, a logarithmic fall by night
 * (Linvill 1990, HortScience 25(1):14-16).
 *
 * <p>The form is the one most published chill figures were made with: the denominator of the hours before sunrise lacks
 * the "+ 1" that the evening's has, so the hour before sunrise can fall slightly below the least value of the day (1.98
 * °C for 2.00 °C in the worked day). We keep that term, since published season totals are met with it and not without
 * it; only in nights shorter than six hours, where it would fall far below, the term is put in. For the same reason
 * yesterday's temperature at sunset is reckoned with today's day length, some minutes off.
 *
 * <p>In polar night the curve says nothing; every hour then has the mean of least and greatest. In polar day there is
 * no night and the sine goes on all round. Hours are solar time.
 */
public final class HourlyTemperature {
    /** The greatest temperature comes two hours after noon. */
    private static final double LAG = 4;

    /** In shorter nights than this, h, the missing "+ 1" would throw the curve far below the least. */
    private static final double SHORT_NIGHT = 6;

    private HourlyTemperature() {}

    /**
     * Fills {@code hours}, 24 long, with the temperatures at 0, 1 … 23 h of day {@code i}. The days before and after
     * are taken from the arrays too; at their ends the day itself stands in.
     *
     * @param min least temperatures by day, °C
     * @param max greatest temperatures by day, °C
     * @param halfDay half day lengths, h, as from {@link SunTimes#halfDay}
     */
    public static void fill(double[] min, double[] max, double[] halfDay, int i, double[] hours) {
        double half = halfDay[i];
        if (half <= 0) {
            java.util.Arrays.fill(hours, (min[i] + max[i]) / 2);
            return;
        }
        int before = Math.max(0, i - 1);
        int after = Math.min(min.length - 1, i + 1);
        double rise = 12 - half;
        double set = 12 + half;
        double range = max[i] - min[i];
        double atSet = atSunset(min[i], max[i], half);
        double atSetBefore = atSunset(min[before], max[before], half);
        double setBefore = 12 + halfDay[before];
        double evening = fall(24 - (set - (12 - halfDay[after])) + 1, atSet - min[after]);
        double night = 24 - (setBefore - rise);
        double morning = fall(night < SHORT_NIGHT ? night + 1 : night, atSetBefore - min[i]);
        for (int hour = 0; hour < 24; hour++) {
            if (hour <= rise && morning < Double.MAX_VALUE) {
                hours[hour] = atSetBefore - morning * Math.log(hour + 24 - setBefore + 1);
            } else if (hour >= set) {
                hours[hour] = atSet - evening * Math.log(hour - set + 1);
            } else {
                hours[hour] = min[i] + range * Math.sin(Math.PI * (hour - rise) / (2 * half + LAG));
            }
        }
    }

    private static double atSunset(double min, double max, double half) {
        return min + (max - min) * Math.sin(Math.PI * 2 * half / (2 * half + LAG));
    }

    /** How much falls per unit of the logarithm; no night, no fall. */
    private static double fall(double nightHours, double drop) {
        return nightHours > 1.0001 ? drop / Math.log(nightHours) : Double.MAX_VALUE;
    }
}

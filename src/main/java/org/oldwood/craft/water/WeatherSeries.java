package org.oldwood.craft.water;

import java.time.LocalDate;
import java.util.function.IntPredicate;

/**
 * What every bed of a garden shares: reference evapotranspiration and rain, day by day. Keeps the arrays it is given;
 * nobody may change them afterwards.
 */
public final class WeatherSeries {
    private final LocalDate first;
    private final double[] et0;
    private final double[] rain;
    private final double[] soaked;

    /**
     * Days in a row.
     *
     * @param first the first day
     * @param et0 reference evapotranspiration, mm a day
     * @param rain rain, mm a day, as many; what falls on roofs
     * @param soaked of the rain, what gets past leaves and litter to the roots, mm a day, as many
     */
    public WeatherSeries(LocalDate first, double[] et0, double[] rain, double[] soaked) {
        if (rain.length != et0.length || soaked.length != et0.length) {
            throw new IllegalArgumentException(
                    "evapotranspiration and rain must be given for the same days, but are for %s, %s and %s"
                            .formatted(et0.length, rain.length, soaked.length));
        }
        this.first = first;
        this.et0 = et0;
        this.rain = rain;
        this.soaked = soaked;
    }

    /** The same days with the rain times a factor on some of them, 0 for none. */
    public WeatherSeries withRainTimes(double factor, IntPredicate days) {
        return new WeatherSeries(first, et0, times(rain, factor, days), times(soaked, factor, days));
    }

    /** The same days with the reference evapotranspiration times a factor on some of them. */
    public WeatherSeries withUseTimes(double factor, IntPredicate days) {
        return new WeatherSeries(first, times(et0, factor, days), rain, soaked);
    }

    private static double[] times(double[] values, double factor, IntPredicate days) {
        double[] all = values.clone();
        for (int i = 0; i < all.length; i++) {
            all[i] *= days.test(i) ? factor : 1;
        }
        return all;
    }

    public LocalDate first() { return first; }

    /** Reference evapotranspiration of a day, mm. */
    public double et0(int day) { return et0[day]; }

    /** Rain of a day, mm. */
    public double rain(int day) { return rain[day]; }

    /** Rain of a day that soaked in, mm. */
    public double soaked(int day) { return soaked[day]; }

    public int days() { return et0.length; }

    public LocalDate last() { return first.plusDays(et0.length - 1L); }

    /** How many days after the first a day comes; below 0 before it. */
    public int index(LocalDate day) {
        return Math.toIntExact(day.toEpochDay() - first.toEpochDay());
    }
}

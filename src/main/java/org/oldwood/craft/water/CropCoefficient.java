package org.oldwood.craft.water;

import org.oldwood.crop.Key;

/**
 * A crop's coefficient through the year: level while bare, rising to full leaf, level, falling to leaf fall.
 *
 * <p>Source: FAO-56, figure 36, equations 62, 65 and 66. Checked against {@code reference/crop-coefficient.csv}.
 *
 * @param initial while the plants are bare
 * @param mid in full leaf
 * @param end at leaf fall
 */
public record CropCoefficient(@Key(least = 0, most = 2) double initial, @Key(least = 0, most = 2) double mid,
        @Key(least = 0, most = 2) double end) {
    /** Wind at 2 m for which the tables hold, m/s (FAO-56, p. 114). */
    public static final double TABLE_WIND = 2;

    /** Lowest relative humidity of the day for which the tables hold, % (FAO-56, p. 114). */
    public static final double TABLE_LOWEST_HUMIDITY = 45;

    private static final double LEAST_ADJUSTED = 0.45;

    /**
     * The coefficient on a day. Days are counted from any one day; the four ends must not run backwards.
     *
     * @param begins first day of growth
     * @param full first day of full leaf
     * @param declines last day of full leaf
     * @param ends leaf fall; afterwards the plants are bare again
     */
    public double on(double day, double begins, double full, double declines, double ends) {
        if (day <= begins || day > ends) { return initial; }
        if (day < full) { return initial + (mid - initial) * (day - begins) / (full - begins); }
        if (day <= declines) { return mid; }
        return mid + (end - mid) * (day - declines) / (ends - declines);
    }

    /**
     * For a climate that is not the table's, windy or dry: mid and end are moved where they are 0.45 or more (equations
     * 62 and 65).
     *
     * @param wind mean wind at 2 m, m/s; held to 1 to 6
     * @param rhMin mean lowest relative humidity, %; held to 20 to 80
     * @param heightM the plants' height, m
     */
    public CropCoefficient adjusted(double wind, double rhMin, double heightM) {
        double byWind = 0.04 * (Math.max(1, Math.min(6, wind)) - TABLE_WIND);
        double byHumidity = 0.004 * (Math.max(20, Math.min(80, rhMin)) - TABLE_LOWEST_HUMIDITY);
        double change = (byWind - byHumidity) * Math.pow(heightM / 3, 0.3);
        return new CropCoefficient(initial, mid >= LEAST_ADJUSTED ? mid + change : mid,
                end >= LEAST_ADJUSTED ? end + change : end);
    }
}

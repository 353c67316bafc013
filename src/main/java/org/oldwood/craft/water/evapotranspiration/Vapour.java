package org.oldwood.craft.water.evapotranspiration;

/**
 * Water vapour in air, as pressure in kPa. Temperatures in °C, relative humidity in %.
 *
 * <p>Source: FAO-56, equations 11 to 19 and 48. Checked against {@code reference/vapour.csv}.
 */
public final class Vapour {
    private Vapour() {}

    /** Saturation vapour pressure at a temperature (equation 11). */
    public static double saturation(double celsius) {
        return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
    }

    /** A day's mean saturation vapour pressure (equation 12). */
    public static double meanSaturation(double tmin, double tmax) {
        return (saturation(tmax) + saturation(tmin)) / 2;
    }

    /** Slope of the saturation curve at a temperature, kPa/°C (equation 13). */
    public static double slope(double celsius) {
        double warmth = celsius + 237.3;
        return 4098 * saturation(celsius) / (warmth * warmth);
    }

    /** Actual vapour pressure from the dew point (equation 14), or from the night's minimum (48). */
    public static double fromDewPoint(double celsius) {
        return saturation(celsius);
    }

    /** Actual vapour pressure from the day's extremes of humidity (equation 17). */
    public static double fromExtremes(double tmin, double tmax, double rhMin, double rhMax) {
        return (saturation(tmin) * rhMax / 100 + saturation(tmax) * rhMin / 100) / 2;
    }

    /** Actual vapour pressure from the highest humidity alone (equation 18). */
    public static double fromHighest(double tmin, double rhMax) {
        return saturation(tmin) * rhMax / 100;
    }
}

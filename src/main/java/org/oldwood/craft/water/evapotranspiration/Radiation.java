package org.oldwood.craft.water.evapotranspiration;

/**
 * Radiation at the ground, MJ/m² a day: what comes through the air, what is kept, what is lost to the sky.
 *
 * <p>Source: FAO-56, equations 35 to 44 and 50. Checked against {@code reference/radiation.csv}.
 */
public final class Radiation {
    /** Stefan-Boltzmann constant of equation 39, MJ/m²/K⁴ a day. */
    private static final double STEFAN_BOLTZMANN = 4.903e-9;

    /** From °C to K as equation 39 has it. */
    private static final double KELVIN = 273.16;

    /** Albedo of the reference grass is 0.23, so this is kept (equation 38). */
    private static final double KEPT = 0.77;

    /** Cloudiness where the sun does not rise, so that it cannot be measured: our assumption. */
    private static final double POLAR_NIGHT_CLEARNESS = 0.5;

    private Radiation() {}

    /** Solar radiation from hours of sunshine out of hours of daylight (equation 35). */
    public static double solarFromSunshine(double sunHours, double daylightHours, double ra) {
        double share = daylightHours == 0 ? 0 : Math.min(1, sunHours / daylightHours);
        return (0.25 + 0.50 * share) * ra;
    }

    /** Solar radiation from the day's range of temperature, at most the clear sky's (50). */
    public static double solarFromRange(double tmin, double tmax, double ra, double adjustment) {
        return adjustment * Math.sqrt(Math.max(0, tmax - tmin)) * ra;
    }

    /** Solar radiation under a clear sky at a height in m (equation 37). */
    public static double clearSky(double heightM, double ra) {
        return (0.75 + 2e-5 * heightM) * ra;
    }

    /** Net solar radiation over grass (equation 38). */
    public static double netSolar(double solar) {
        return KEPT * solar;
    }

    /**
     * Net long-wave radiation lost (equation 39).
     *
     * @param ea actual vapour pressure, kPa
     * @param clearSky solar radiation under a clear sky; 0 in the polar night
     */
    public static double netLongwave(double tmin, double tmax, double ea, double solar, double clearSky) {
        double clearness = clearSky == 0 ? POLAR_NIGHT_CLEARNESS : Math.min(1, solar / clearSky);
        double glow = STEFAN_BOLTZMANN * (fourth(tmax) + fourth(tmin)) / 2;
        return glow * (0.34 - 0.14 * Math.sqrt(ea)) * (1.35 * clearness - 0.35);
    }

    private static double fourth(double celsius) {
        double square = (celsius + KELVIN) * (celsius + KELVIN);
        return square * square;
    }
}

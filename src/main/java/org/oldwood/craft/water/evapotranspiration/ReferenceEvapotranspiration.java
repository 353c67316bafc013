package org.oldwood.craft.water.evapotranspiration;

/**
 * Evapotranspiration of well-watered short grass, mm a day: how thirsty the weather is.
 *
 * <p>Source: FAO-56, equations 6 to 8, 47 and 52. Checked against {@code reference/reference-evapotranspiration.csv},
 * {@code air-pressure.csv} and {@code wind-speed.csv}.
 */
public final class ReferenceEvapotranspiration {
    /** mm of water that 1 MJ/m² evaporates (FAO-56, equation 20). */
    public static final double MM_PER_MEGAJOULE = 0.408;

    private ReferenceEvapotranspiration() {}

    /**
     * The part of the Penman-Monteith equation (6) that radiation drives; may be below 0 in winter.
     *
     * @param slope slope of the vapour pressure curve, kPa/°C
     * @param gamma psychrometric constant, kPa/°C
     * @param wind wind at 2 m, m/s
     * @param energy net radiation less soil heat, MJ/m² a day
     */
    public static double fromRadiation(double slope, double gamma, double wind, double energy) {
        return MM_PER_MEGAJOULE * slope * energy / (slope + gamma * (1 + 0.34 * wind));
    }

    /**
     * The part of the Penman-Monteith equation (6) that wind and dry air drive.
     *
     * @param deficit saturation less actual vapour pressure, kPa
     * @param tmean mean of the day's extremes, °C
     */
    public static double fromAir(double slope, double gamma, double wind, double deficit, double tmean) {
        return gamma * 900 / (tmean + 273) * wind * deficit / (slope + gamma * (1 + 0.34 * wind));
    }

    /**
     * Hargreaves' equation (52), for days of which only the temperatures are known.
     *
     * @param ra radiation at the top of the air, MJ/m² a day
     */
    public static double hargreaves(double tmin, double tmax, double tmean, double ra) {
        double range = Math.max(0, tmax - tmin);
        return Math.max(0, 0.0023 * (tmean + 17.8) * Math.sqrt(range) * MM_PER_MEGAJOULE * ra);
    }

    /** Mean air pressure at a height above the sea, m, in kPa (equation 7); nothing of a given day's weather. */
    public static double pressure(double heightM) {
        return 101.3 * Math.pow((293 - 0.0065 * heightM) / 293, 5.26);
    }

    /** Psychrometric constant at a pressure in kPa, kPa/°C (equation 8). */
    public static double psychrometric(double kilopascals) {
        return 0.665e-3 * kilopascals;
    }

    /** The wind at 2 m from a speed measured at {@code heightM} metres, more than 0.1 m (equation 47). */
    public static double windAtTwoMetres(double metresPerSecond, double heightM) {
        return metresPerSecond * 4.87 / Math.log(67.8 * heightM - 5.42);
    }
}

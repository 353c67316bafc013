package org.oldwood.craft.water.evapotranspiration;

/**
 * Wind at the height of 2 m, m/s.
 *
 * <p>Source: FAO-56, equation 47. Checked against {@code reference/wind-speed.csv}.
 */
public final class WindSpeed {
    private WindSpeed() {}

    /** The wind at 2 m from a speed measured at {@code heightM} metres, more than 0.1 m. */
    public static double atTwoMetres(double metresPerSecond, double heightM) {
        return metresPerSecond * 4.87 / Math.log(67.8 * heightM - 5.42);
    }
}

package org.oldwood.craft.water.evapotranspiration;

/**
 * Mean air pressure at a height above the sea, and the psychrometric constant that goes with it.
 *
 * <p>Source: FAO-56, equations 7, 8 and 16. Checked against {@code reference/air-pressure.csv}. Says nothing about the
 * weather of a given day.
 */
public final class AirPressure {
    private AirPressure() {}

    /** Mean pressure in kPa at {@code heightM} metres (equation 7). */
    public static double kilopascals(double heightM) {
        return 101.3 * Math.pow((293 - 0.0065 * heightM) / 293, 5.26);
    }

    /** Psychrometric constant in kPa/°C at a pressure in kPa (equation 8). */
    public static double psychrometric(double kilopascals) {
        return 0.665e-3 * kilopascals;
    }
}

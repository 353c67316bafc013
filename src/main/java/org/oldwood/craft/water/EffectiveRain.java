package org.oldwood.craft.water;

/**
 * How much of the rain reaches the roots.
 *
 * <p>Sources: FAO-56, p. 170 (light rain); USDA Soil Conservation Service as in FAO's CROPWAT (monthly). Checked
 * against {@code reference/effective-rain.csv}.
 */
public final class EffectiveRain {
    private static final double LIGHT = 0.2;

    private EffectiveRain() {}

    /** A day's rain, or 0 where it is less than a fifth of the reference evapotranspiration. */
    public static double daily(double rainMm, double et0Mm) {
        return rainMm < LIGHT * et0Mm ? 0 : rainMm;
    }

    /** Of a month's rain, from the total alone (USDA-SCS). */
    public static double monthly(double rainMm) {
        return rainMm <= 250 ? rainMm * (125 - 0.2 * rainMm) / 125 : 125 + 0.1 * rainMm;
    }
}

package org.oldwood.craft.water;

/**
 * What the ground holds for the roots, mm of water (1 mm on 1 m² is 1 litre). Shares are from 0 to 1, water contents
 * m³/m³, depths m.
 *
 * <p>Source: FAO-56, equations 82 to 88 and table 22's note on the depletion fraction. Checked against
 * {@code reference/root-zone.csv}.
 */
public final class RootZone {
    private static final double LEAST_FRACTION = 0.1;
    private static final double MOST_FRACTION = 0.8;

    private RootZone() {}

    /** Water that the ground can hold for the roots, field capacity to wilting point (82). */
    public static double totalAvailable(double fieldCapacity, double wiltingPoint, double depthM) {
        return 1000 * (fieldCapacity - wiltingPoint) * depthM;
    }

    /** Of this, what the plants draw without stress (83). */
    public static double readilyAvailable(double totalAvailableMm, double fraction) {
        return fraction * totalAvailableMm;
    }

    /**
     * The depletion fraction for a day's demand: more on cool days, less on hot ones (table 22, note 2); kept from 0.1
     * to 0.8.
     *
     * @param tableFraction the fraction at 5 mm a day
     * @param demandMm the plants' demand that day (ETc), mm
     */
    public static double fraction(double tableFraction, double demandMm) {
        // Not by Math.min and Math.max: the short compiler tier calls them, a million times a run.
        double fraction = tableFraction + 0.04 * (5 - demandMm);
        if (fraction > MOST_FRACTION) { return MOST_FRACTION; }
        return fraction < LEAST_FRACTION ? LEAST_FRACTION : fraction;
    }

    /** Share of their demand that the plants can still draw at a depletion (84). */
    public static double stress(double depletionMm, double totalAvailableMm, double fraction) {
        if (depletionMm <= fraction * totalAvailableMm) { return 1; }
        return Math.max(0, (totalAvailableMm - depletionMm) / ((1 - fraction) * totalAvailableMm));
    }

    /** Water that runs through below the roots: what comes beyond field capacity (88). */
    public static double drainage(double gainMm, double usedMm, double depletionMm) {
        return Math.max(0, gainMm - usedMm - depletionMm);
    }

    /** Litres that a depth of water makes on an area. */
    public static double litres(double mm, double areaM2) {
        return mm * areaM2;
    }

    /** Depth of water that litres make on an area. */
    public static double millimetres(double litres, double areaM2) {
        return litres / areaM2;
    }
}

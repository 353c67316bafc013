package org.oldwood.craft.feeding.liming;

/**
 * Lime to raise the pH of a soil: a factor for the texture times the gap in pH, for ground limestone worked into 20 cm.
 *
 * <p>Source: RB209 section 1 (AHDB 2023), Table 1.2 and pages 12-15; the factors stand in {@code liming.json}. Checked
 * against {@code reference/lime-requirement.csv}. Print differs by a factor of two and more: garden tables, for a
 * shallower layer, ask about half.
 */
public final class LimeRequirement {
    private LimeRequirement() {}

    /**
     * Tonnes per hectare of ground limestone. Zero where the soil is at the target or above.
     *
     * @param factor t/ha per pH unit for the top layer of the table
     */
    public static double tonnesPerHectare(double factor, double targetPh, double measuredPh) {
        return factor * Math.max(0, targetPh - measuredPh);
    }

    /**
     * The factor for a layer of another depth: in proportion down to the depth of the table, then the subsoil's factor
     * for what lies below.
     *
     * @param factor t/ha per pH unit for the whole top layer
     * @param subsoilFactor t/ha per pH unit for a layer of the same thickness below it
     * @param tableDepthCm depth of the top layer, cm
     * @param depthCm depth to put right, cm
     */
    public static double factorForDepth(double factor, double subsoilFactor, double tableDepthCm, double depthCm) {
        double top = Math.min(depthCm, tableDepthCm) / tableDepthCm;
        double below = Math.max(0, depthCm - tableDepthCm) / tableDepthCm;
        return factor * top + subsoilFactor * below;
    }

    /** What is left to give where stones take up a share of the soil. */
    public static double lessStones(double amount, double stonesPercent) {
        return amount * (1 - stonesPercent / 100);
    }
}

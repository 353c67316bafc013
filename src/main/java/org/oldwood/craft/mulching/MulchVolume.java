package org.oldwood.craft.mulching;

/**
 * Areas, volumes and counts of mulch: plain geometry.
 *
 * <p>Checked against coverage tables in {@code reference/mulch-volume.csv}.
 */
public final class MulchVolume {
    private static final double CM_PER_M = 100;

    private MulchVolume() {}

    /** Volume of a layer, m³. */
    public static double cubicMetres(double areaM2, double depthCm) {
        return areaM2 * depthCm / CM_PER_M;
    }

    /** Area of a round bed or of a collar, m². */
    public static double circle(double radiusM) {
        return Math.PI * radiusM * radiusM;
    }

    /** The area to cover: the bed less a bare collar round each bush; never less than nothing, m². */
    public static double lessCollars(double areaM2, int bushes, double gapCm) {
        return Math.max(0, areaM2 - bushes * circle(gapCm / CM_PER_M));
    }

    /** Sheets for one layer on one square metre, each overlapping its neighbours on two sides. */
    public static double sheetsPerM2(double widthCm, double heightCm, double overlapCm) {
        if (overlapCm >= Math.min(widthCm, heightCm)) {
            throw new IllegalArgumentException(
                    "sheets of " + widthCm + " by " + heightCm + " cm cannot overlap by " + overlapCm + " cm");
        }
        return CM_PER_M * CM_PER_M / ((widthCm - overlapCm) * (heightCm - overlapCm));
    }
}

package org.oldwood.season.sums;

/**
 * Growing degree days from a day's least and greatest temperature, °C·d. Never negative. Two methods stand side by side
 * because they differ by weeks in cool springs: the simple mean loses the warm half of a cold day, the sine does not.
 */
public final class DegreeDays {
    private DegreeDays() {}

    /** Mean of the two less the base, not below 0; the greatest first cut down to {@code upperC}. */
    public static double simple(double minC, double maxC, double baseC, double upperC) {
        return Math.max(0, (minC + Math.min(maxC, upperC)) / 2 - baseC);
    }

    /** The part above the base of one sine through least and greatest (Baskerville and Emin 1969). */
    public static double sine(double minC, double maxC, double baseC) {
        if (maxC <= baseC) { return 0; }
        double mean = (minC + maxC) / 2;
        if (minC >= baseC) { return mean - baseC; }
        double half = (maxC - minC) / 2;
        double crossing = Math.asin((baseC - mean) / half);
        return ((mean - baseC) * (Math.PI / 2 - crossing) + half * Math.cos(crossing)) / Math.PI;
    }

    /** The sine with a horizontal cut-off: warmth above {@code upperC} adds nothing more. */
    public static double sine(double minC, double maxC, double baseC, double upperC) {
        return sine(minC, maxC, baseC) - sine(minC, maxC, upperC);
    }
}

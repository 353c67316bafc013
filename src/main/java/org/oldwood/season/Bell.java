package org.oldwood.season;

import org.apache.commons.numbers.gamma.Erfc;

/** The standard normal distribution. */
final class Bell {
    /** Five points of the normal curve, in standard deviations, that stand for all of it (Gauss and Hermite). */
    static final double[] POINTS = {-2.856970, -1.355626, 0, 1.355626, 2.856970};

    /** And how much each counts. */
    static final double[] SHARES = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};

    private Bell() {}

    static double density(double z) { return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI); }

    /** The share below {@code z}. */
    static double below(double z) { return Erfc.value(-z / Math.sqrt(2)) / 2; }

    /** What a value about {@code mean} with this spread is above {@code base} on the average. */
    static double expectedAbove(double mean, double spread, double base) {
        if (spread <= 0) { return Math.max(0, mean - base); }
        double z = (mean - base) / spread;
        return (mean - base) * below(z) + spread * density(z);
    }
}

package org.oldwood.season;

import java.util.function.DoubleUnaryOperator;

import org.apache.commons.numbers.gamma.Erfc;

/** The standard normal distribution. */
public final class Bell {
    /** Five points of the normal curve, in standard deviations, that stand for all of it (Gauss and Hermite). */
    private static final double[] POINTS = {-2.856970, -1.355626, 0, 1.355626, 2.856970};

    /** And how much each counts. */
    private static final double[] SHARES = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};

    private Bell() {}

    /** What {@code of} gives on the average of departures about 0 with this spread. */
    public static double mean(double spread, DoubleUnaryOperator of) {
        if (spread <= 0) { return of.applyAsDouble(0); }
        double mean = 0;
        for (int i = 0; i < POINTS.length; i++) {
            mean += SHARES[i] * of.applyAsDouble(POINTS[i] * spread);
        }
        return mean;
    }

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

package org.oldwood.craft.water;

/**
 * Adds up an account over summers. The days of a summer are those from {@code from[i]} to {@code to[i]}, both included,
 * counted from the first day of the weather; summers run forwards and do not overlap.
 */
public final class SummerTally {
    private final int[] from;
    private final int[] to;
    private final int[] daysShort;
    private final double[] depletionSum;
    private final double[] drainedSum;
    private int summer;

    public SummerTally(int[] from, int[] to) {
        this.from = from;
        this.to = to;
        daysShort = new int[from.length];
        depletionSum = new double[from.length];
        drainedSum = new double[from.length];
    }

    /** Whether a day belongs to a summer; days must be asked for in their order. */
    boolean counts(int day) {
        while (summer < to.length && day > to[summer]) {
            summer++;
        }
        return summer < to.length && day >= from[summer];
    }

    /** Adds the day that was asked for last. */
    void add(double depletion, boolean isShort, double drained) {
        daysShort[summer] += isShort ? 1 : 0;
        depletionSum[summer] += depletion;
        drainedSum[summer] += drained;
    }

    int days(int one) {
        return to[one] - from[one] + 1;
    }

    public int daysShort(int one) {
        return daysShort[one];
    }

    public double meanDepletion(int one) {
        return depletionSum[one] / days(one);
    }

    /** What ran through below the roots, mm. */
    public double drained(int one) {
        return drainedSum[one];
    }
}

package org.oldwood.craft.cuttings.survival;

/**
 * A survival rate that is not known for sure: a beta distribution, read as plants that lived and plants that died in
 * trials worth {@link #weight()} plants.
 *
 * <p>Two facts of the beta distribution carry the whole craft. A binomial count adds to it plainly ({@link #after}).
 * And if X is Beta(a, b) and Y, independent of it, is Beta(a + b, c), then XY is Beta(a, b + c): so the rate of a whole
 * phase splits into one for its first part and one for the rest ({@link #late}), and a count in the middle can be used
 * without changing what the whole phase promised. Both are textbook results, checked by enumeration in the tests.
 *
 * @param lived plants that lived, above 0; need not be whole
 * @param died plants that died, at least 0; 0 means a sure rate of 1
 */
public record UncertainRate(double lived, double died) {
    /** A rate of 1 that no count can change. */
    public static final UncertainRate CERTAIN = new UncertainRate(1, 0);

    public UncertainRate {
        if (!(lived > 0 && died >= 0 && Double.isFinite(lived + died))) {
            throw new IllegalArgumentException(
                    "a rate needs lived above 0 and died at least 0 but has " + lived + " and " + died);
        }
    }

    /** The rate of that mean, above 0 and at most 1, known as well as from {@code weight} plants. */
    public static UncertainRate of(double mean, double weight) {
        return new UncertainRate(mean * weight, Math.max(0, (1 - mean) * weight));
    }

    public double mean() { return lived / weight(); }

    /** The number of plants that would have to be counted to know the rate this well. */
    public double weight() {
        return lived + died;
    }

    public boolean isCertain() { return died == 0; }

    /** The correlation of two plants of one lot: what they share of a good or a bad year. */
    public double correlation() {
        return 1 / (weight() + 1);
    }

    /** The rate after {@code outOf} plants were seen, of which {@code alive} lived. */
    public UncertainRate after(double alive, double outOf) {
        if (!(alive >= 0 && alive <= outOf)) {
            throw new IllegalArgumentException("alive must lie from 0 to " + outOf + " but is " + alive);
        }
        return isCertain() ? this : new UncertainRate(lived + alive, died + outOf - alive);
    }

    /** The rate over what is left of the phase after its first {@code fraction}. */
    public UncertainRate late(double fraction) {
        return died * (1 - fraction) <= 0 ? CERTAIN : new UncertainRate(lived, died * (1 - fraction));
    }
}

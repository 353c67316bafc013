package org.oldwood.craft.cuttings.survival;

import org.apache.commons.numbers.gamma.LogBeta;

/**
 * The number that live, out of {@code n}, when the rate itself is uncertain: the beta-binomial distribution.
 *
 * <p>P(k) = C(n, k) B(k + a, n − k + b) / B(a, b), with C(n, k) = 1 / ((n + 1) B(n − k + 1, k + 1)). Source of the
 * formula: Skellam, A probability distribution derived from the binomial distribution by regarding the probability of
 * success as variable, J. R. Stat. Soc. B 10: 257-261, 1948 (from memory). Checked against exact fractions, published
 * cases and simulation in the tests.
 */
final class BetaBinomial {
    private BetaBinomial() {}

    /** The logarithm of B(a, b), the same for any number of plants. */
    static double logBeta(UncertainRate rate) {
        return LogBeta.value(rate.lived(), rate.died());
    }

    /** The chances of 0, 1, … {@code n} alive, by {@link #logBeta} of the rate. They add up to 1. */
    static double[] chances(int n, UncertainRate rate, double logBeta) {
        double[] chances = new double[n + 1];
        if (rate.isCertain() || n == 0) {
            chances[n] = 1;
            return chances;
        }
        // From near the mean outwards by the ratio of neighbours: no cancellation, no underflow.
        int start = (int) Math.min(n, Math.round(n * rate.mean()));
        chances[start] = Math.exp(logChance(start, n, rate, logBeta));
        for (int k = start; k < n; k++) {
            chances[k + 1] = chances[k] * ratio(k, n, rate);
        }
        for (int k = start; k > 0; k--) {
            chances[k - 1] = chances[k] / ratio(k - 1, n, rate);
        }
        return chances;
    }

    /**
     * Turns the chances of 0, 1, … {@code n} alive out of {@code n} into those out of one plant more, by Pólya's urn:
     * the plant lives as often as those before it say.
     */
    static void addOne(double[] chances, int n, UncertainRate rate) {
        double all = rate.weight() + n;
        chances[n + 1] = 0;
        for (int k = n; k >= 0; k--) {
            double now = chances[k];
            chances[k + 1] += now * ((rate.lived() + k) / all);
            chances[k] = now * ((rate.died() + n - k) / all);
        }
    }

    private static double logChance(int k, int n, UncertainRate rate, double logBeta) {
        double a = rate.lived();
        double b = rate.died();
        return LogBeta.value(k + a, n - k + b) - logBeta - Math.log(n + 1.0) - LogBeta.value(n - k + 1.0, k + 1.0);
    }

    /** P(k + 1) / P(k). */
    private static double ratio(int k, int n, UncertainRate rate) {
        return (n - k) / (k + 1.0) * ((k + rate.lived()) / (n - k - 1 + rate.died()));
    }
}

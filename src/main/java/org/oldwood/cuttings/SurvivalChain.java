package org.oldwood.cuttings;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * Survival through one phase after another: what lives through the first enters the second. Each
 * phase is a beta-binomial draw, so the plants of a lot share its luck.
 *
 * @param rates the rate of each phase, in order; empty means that nothing more can be lost
 */
record SurvivalChain(List<UncertainRate> rates) {
    private static final double NEGLIGIBLE = 1e-18;

    SurvivalChain {
        rates = List.copyOf(rates);
    }

    /** The expected share that lives through every phase. */
    double mean() {
        return rates.stream().mapToDouble(UncertainRate::mean).reduce(1, (a, b) -> a * b);
    }

    /** How many are left of {@code n}. */
    Spread from(int n) {
        double[] now = new double[n + 1];
        now[n] = 1;
        for (UncertainRate rate : rates) {
            if (!rate.isCertain()) {
                now = through(now, rate);
            }
        }
        return new Spread(now);
    }

    private static double[] through(double[] before, UncertainRate rate) {
        double[] after = new double[before.length];
        for (int entering = 0; entering < before.length; entering++) {
            if (before[entering] > NEGLIGIBLE) {
                double[] chances = BetaBinomial.chances(entering, rate);
                for (int k = 0; k <= entering; k++) {
                    after[k] += before[entering] * chances[k];
                }
            }
        }
        return after;
    }

    /**
     * The fewest plants at the start, from 0 to {@code most}, for which the chance of success is at
     * least {@code sure}; empty where not even {@code most} will do.
     *
     * @param success the chance of success with that many plants at the end; must not fall as they
     *     grow more
     */
    OptionalInt fewest(IntToDoubleFunction success, double sure, int most) {
        double[][] table = new double[rates.size() + 1][most + 1];
        for (int n = 0; n <= most; n++) {
            table[rates.size()][n] = success.applyAsDouble(n);
            for (int phase = rates.size() - 1; phase >= 0; phase--) {
                table[phase][n] = expected(table[phase + 1], n, rates.get(phase));
            }
            if (table[0][n] >= sure) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.empty();
    }

    /** The expected value of {@code worth} over what is left of {@code n}. */
    private static double expected(double[] worth, int n, UncertainRate rate) {
        double[] chances = BetaBinomial.chances(n, rate);
        double sum = 0;
        for (int k = n; k >= 0 && !(worth[k] == 0); k--) {
            sum += chances[k] * worth[k];
        }
        return sum;
    }

    @Override
    public String toString() {
        return Arrays.toString(rates.stream().mapToDouble(UncertainRate::mean).toArray());
    }
}

package org.oldwood.craft.cuttings.survival;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * Survival through one phase after another: what lives through the first enters the second. Each phase is a
 * beta-binomial draw, so the plants of a lot share its luck.
 *
 * @param rates the rate of each phase, in order; empty means that nothing more can be lost
 */
public record SurvivalChain(List<UncertainRate> rates) {
    private static final double NEGLIGIBLE = 1e-18;

    /** How many are left of {@code n}. */
    public Spread from(int n) {
        double[] now = new double[n + 1];
        now[n] = 1;
        for (UncertainRate rate : rates) {
            if (!rate.isCertain()) { now = through(now, rate); }
        }
        return new Spread(now);
    }

    private static double[] through(double[] before, UncertainRate rate) {
        double[] after = new double[before.length];
        double logBeta = BetaBinomial.logBeta(rate);
        for (int entering = 0; entering < before.length; entering++) {
            if (before[entering] > NEGLIGIBLE) {
                double[] chances = BetaBinomial.chances(entering, rate, logBeta);
                for (int k = 0; k <= entering; k++) {
                    after[k] += before[entering] * chances[k];
                }
            }
        }
        return after;
    }

    /**
     * The fewest plants at the start, from 0 to {@code most}, for which the chance of success is at least {@code sure};
     * empty where not even {@code most} will do.
     *
     * @param success the chance of success with that many plants at the end; must not fall as they grow more
     */
    public OptionalInt fewest(IntToDoubleFunction success, double sure, int most) {
        Growing[] phases = rates.stream().map(Growing::new).toArray(Growing[]::new);
        for (int n = 0; n <= most; n++) {
            double worth = success.applyAsDouble(n);
            for (int phase = phases.length - 1; phase >= 0; phase--) {
                worth = phases[phase].withOneMore(worth);
            }
            if (worth >= sure) { return OptionalInt.of(n); }
        }
        return OptionalInt.empty();
    }

    /** One phase of a lot that grows by a plant at a time. */
    private static final class Growing {
        private static final int FIRST_ROOM = 16;

        private final UncertainRate rate;
        private double[] chances = new double[FIRST_ROOM];
        private double[] worths = new double[FIRST_ROOM];
        private int n = -1;

        Growing(UncertainRate rate) { this.rate = rate; }

        /**
         * The expected worth of what is left of one plant more than before; of none at the first.
         *
         * @param worth what it is worth if all of them are left
         */
        double withOneMore(double worth) {
            n++;
            if (n == chances.length) {
                chances = Arrays.copyOf(chances, 2 * n);
                worths = Arrays.copyOf(worths, 2 * n);
            }
            worths[n] = worth;
            if (n == 0) {
                chances[0] = 1;
            } else {
                BetaBinomial.addOne(chances, n - 1, rate);
            }
            double sum = 0;
            for (int k = n; k >= 0 && !(worths[k] == 0); k--) {
                sum += chances[k] * worths[k];
            }
            return sum;
        }
    }

    @Override
    public String toString() { return Arrays.toString(rates.stream().mapToDouble(UncertainRate::mean).toArray()); }
}

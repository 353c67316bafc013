package org.oldwood.craft.cuttings.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.craft.cuttings.Urn;

class BetaBinomialTest {
    private static final double EXACT = 1e-12;

    /** Rates in halves and tenths, so that the urn can be walked in whole balls. */
    @ParameterizedTest
    @CsvSource({"0,  1,   1,  1", "1,  1,   1,  1", "5,  1,   1,  1", "9,  154, 46, 10", "10, 1,   1,  2",
            "11, 90,  10, 10", "12, 3,   7,  2", "8,  335, 165, 83"})
    void agrees_with_every_path_of_the_urn(int n, int green, int brown, int per) {
        UncertainRate rate = new UncertainRate(green / (double) per, brown / (double) per);

        double[] chances = chances(n, rate);

        Urn.Fraction[] exact = Urn.chances(n, green, brown, per);
        for (int k = 0; k <= n; k++) {
            assertThat(chances[k]).as("%d of %d", k, n).isCloseTo(exact[k].value(), within(EXACT));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 1", "154, 46, 10", "3, 7, 2", "335, 165, 83", "4, 0, 1"})
    void grows_by_one_plant_at_a_time_as_the_urn_does(int green, int brown, int per) {
        UncertainRate rate = new UncertainRate(green / (double) per, brown / (double) per);
        double[] chances = new double[13];
        chances[0] = 1;

        for (int n = 1; n < chances.length; n++) {
            BetaBinomial.addOne(chances, n - 1, rate);

            Urn.Fraction[] exact = Urn.chances(n, green, brown, per);
            for (int k = 0; k <= n; k++) {
                assertThat(chances[k]).as("%d of %d", k, n).isCloseTo(exact[k].value(), within(EXACT));
            }
        }
    }

    @Test
    void an_unknown_rate_gives_every_number_the_same_chance() {
        // Laplace's rule, the case that Bayes 1763 worked out: 1 / (n + 1).
        double[] chances = chances(40, new UncertainRate(1, 1));

        for (double chance : chances) {
            assertThat(chance).isCloseTo(1.0 / 41, within(EXACT));
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/beta-binomial.csv", useHeadersInDisplayName = true)
    void matches_the_published_value(String id, int n, double lived, double died, double outOf, int k, double expected,
            double printedTo, String source) {
        double computed = outOf * chances(n, new UncertainRate(lived, died))[k];

        assertThat(computed).as(source).isCloseTo(expected, within(printedTo / 2));
    }

    @ParameterizedTest
    @CsvSource({"2000, 15.4, 4.6", "5000, 0.5, 0.5", "3000, 400, 30", "1000, 9, 1"})
    void large_numbers_neither_vanish_nor_lose_their_sum(int n, double lived, double died) {
        UncertainRate rate = new UncertainRate(lived, died);

        Spread spread = new Spread(chances(n, rate));

        assertThat(Urn.atLeast(spread, 0)).isCloseTo(1, within(1e-9));
        assertThat(spread.mean()).isCloseTo(n * rate.mean(), within(1e-6));
        assertThat(variance(spread)).isCloseTo(n * rate.mean() * (1 - rate.mean()) * (1 + (n - 1) * rate.correlation()),
                within(n * 1e-6));
    }

    private static double variance(Spread spread) {
        double sum = 0;
        for (int k = 0; k <= spread.most(); k++) {
            sum += spread.chance(k) * (k - spread.mean()) * (k - spread.mean());
        }
        return sum;
    }

    /** Drawn with a general statistics library: a rate first, then that many survivors. */
    @Test
    void agrees_with_a_simulation_of_many_lots() {
        int n = 200;
        int lots = 200_000;
        UncertainRate rate = UncertainRate.of(0.77, 20);
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20261120L);
        ContinuousDistribution.Sampler rates = BetaDistribution.of(rate.lived(), rate.died()).createSampler(random);
        int[] seen = new int[n + 1];
        for (int lot = 0; lot < lots; lot++) {
            seen[BinomialDistribution.of(n, rates.sample()).createSampler(random).sample()]++;
        }

        double[] chances = chances(n, rate);

        double below = 0;
        int counted = 0;
        for (int k = 0; k <= n; k++) {
            below += chances[k];
            counted += seen[k];
            // five standard errors of a share of 200,000
            double error = 5 * Math.sqrt(Math.max(1e-12, below * (1 - below)) / lots);
            assertThat((double) counted / lots).as("at most %d", k).isCloseTo(below, within(error + 1e-5));
        }
    }

    private static double[] chances(int n, UncertainRate rate) {
        return BetaBinomial.chances(n, rate, BetaBinomial.logBeta(rate));
    }
}

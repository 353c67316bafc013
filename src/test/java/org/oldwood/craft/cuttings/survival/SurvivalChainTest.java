package org.oldwood.craft.cuttings.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.cuttings.Urn;

class SurvivalChainTest {
    private static final SurvivalChain THREE = new SurvivalChain(
            List.of(new UncertainRate(15.4, 4.6), new UncertainRate(9, 1), new UncertainRate(9.5, 0.5)));

    @Test
    void three_phases_agree_with_every_path_of_three_urns() {
        Spread spread = THREE.from(7);

        Urn.Fraction[] exact = Urn.chain(7, new int[]{154, 46, 10}, new int[]{9, 1, 1}, new int[]{95, 5, 10});
        for (int k = 0; k <= 7; k++) {
            assertThat(spread.chance(k)).as("%d of 7", k).isCloseTo(exact[k].value(), within(1e-12));
        }
    }

    @Test
    void nothing_more_to_lose_keeps_the_number() {
        Spread spread = new SurvivalChain(List.of()).from(9);

        assertThat(spread.chance(9)).isEqualTo(1);
        assertThat(spread.mean()).isEqualTo(9);
    }

    /** The product of Beta(a + b(1 − f), bf) and Beta(a, b(1 − f)) is Beta(a, b). */
    @Property(tries = 100)
    void a_phase_cut_in_two_promises_what_it_promised_whole(@ForAll @DoubleRange(min = 0.05, max = 0.98) double mean,
            @ForAll @DoubleRange(min = 0.5, max = 60) double weight,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double fraction, @ForAll @IntRange(min = 1, max = 40) int n) {
        UncertainRate whole = UncertainRate.of(mean, weight);

        UncertainRate early = new UncertainRate(whole.lived() + whole.died() * (1 - fraction), whole.died() * fraction);
        Spread twice = new SurvivalChain(List.of(early, whole.late(fraction))).from(n);

        Spread once = new SurvivalChain(List.of(whole)).from(n);
        for (int k = 0; k <= n; k++) {
            assertThat(twice.chance(k)).isCloseTo(once.chance(k), within(1e-9));
        }
    }

    @Property(tries = 100)
    void chances_add_up_and_the_mean_is_the_product_of_the_rates(@ForAll @DoubleRange(min = 0.02, max = 1) double first,
            @ForAll @DoubleRange(min = 0.02, max = 1) double second,
            @ForAll @DoubleRange(min = 0.3, max = 80) double weight, @ForAll @IntRange(min = 0, max = 300) int n) {
        SurvivalChain chain = new SurvivalChain(
                List.of(UncertainRate.of(first, weight), UncertainRate.of(second, weight)));

        Spread spread = chain.from(n);

        assertThat(Urn.atLeast(spread, 0)).isCloseTo(1, within(1e-9));
        assertThat(spread.mean()).isCloseTo(n * first * second, within(1e-7)).isBetween(0.0, (double) n);
        assertThat(spread.quantile(0.1)).isBetween(0, n);
        assertThat(spread.quantile(0.1)).isLessThanOrEqualTo(spread.quantile(0.5));
        assertThat(spread.quantile(0.5)).isLessThanOrEqualTo(spread.quantile(0.9));
    }

    @Property(tries = 60)
    void the_fewest_do_and_one_fewer_does_not(@ForAll @DoubleRange(min = 0.3, max = 0.97) double mean,
            @ForAll @DoubleRange(min = 2, max = 40) double weight, @ForAll @IntRange(min = 1, max = 25) int wanted,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double sure) {
        SurvivalChain chain = new SurvivalChain(List.of(UncertainRate.of(mean, weight), UncertainRate.of(0.9, 10)));

        int fewest = chain.fewest(k -> k >= wanted ? 1 : 0, sure, 3000).orElse(-1);

        if (fewest == -1) {
            assertThat(Urn.atLeast(chain.from(3000), wanted)).isLessThan(sure);
        } else {
            assertThat(Urn.atLeast(chain.from(fewest), wanted)).isGreaterThanOrEqualTo(sure - 1e-12);
            assertThat(Urn.atLeast(chain.from(fewest - 1), wanted)).isLessThan(sure + 1e-12);
        }
    }
}

package org.oldwood.craft.cuttings.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.cuttings.Crafted;
import org.oldwood.craft.cuttings.PastLot;
import org.oldwood.craft.cuttings.Urn;

class SurvivalTest {
    private static final Survival SOURCES = Crafted.survival(Crafted.course("blackcurrant", "stool", "hardwood"));

    private static PastLot lot(int struck, int rooted) {
        OptionalInt none = OptionalInt.empty();
        return new PastLot(struck, OptionalInt.of(rooted), none, none, none);
    }

    private static PastLot lifted(int struck, int lifted) {
        OptionalInt none = OptionalInt.empty();
        return new PastLot(struck, none, OptionalInt.of(lifted), none, none);
    }

    private static double rooting(Survival survival) { return survival.rate(Phase.ROOTING).mean(); }

    @Test
    void a_better_past_raises_the_rate_and_a_worse_one_lowers_it() {
        assertThat(rooting(SOURCES.learning(List.of(lot(20, 19))))).isGreaterThan(0.77);
        assertThat(rooting(SOURCES.learning(List.of(lot(20, 8))))).isLessThan(0.77);
        assertThat(rooting(SOURCES.learning(List.of()))).isCloseTo(0.77, within(1e-12));
    }

    @Test
    void one_huge_lot_counts_for_no_more_than_the_correlation_within_it_allows() {
        double one = SOURCES.learning(List.of(lot(10_000, 2_000))).rate(Phase.ROOTING).weight();

        // n / (1 + (n − 1) / 21) tends to 21 plants beside the 20 of the sources
        assertThat(one).isBetween(40.0, 41.0);
    }

    @Test
    void many_lots_end_at_what_the_garden_does() {
        Survival own = SOURCES.learning(Collections.nCopies(200, lot(30, 27)));

        assertThat(rooting(own)).isCloseTo(0.9, within(0.01));
    }

    @Test
    void a_lot_counted_only_when_lifted_still_tells_of_its_rooting() {
        // 9 lifted are 10 rooted after the usual loss of one in ten
        Survival own = SOURCES.learning(List.of(lifted(20, 9)));
        Survival same = SOURCES.learning(List.of(lot(20, 10)));

        assertThat(rooting(own)).isCloseTo(rooting(same), within(1e-12));
        assertThat(own.rate(Phase.NURSERY).mean()).isCloseTo(0.9, within(1e-9));
    }

    /** No published count may be one that the rates call next to impossible. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/strike-rates.csv", useHeadersInDisplayName = true)
    void every_published_strike_rate_is_within_what_the_rates_expect(String id, String crop, String method, int outOf,
            int rooted, String printed, double tail, String why, String source) {
        Survival survival = Crafted.propagation(crop).method(method, Crafted.CROPS.get(crop).form()).orElseThrow()
                .survival();

        UncertainRate rate = survival.rate(Phase.ROOTING);
        Spread spread = new Spread(BetaBinomial.chances(outOf, rate, BetaBinomial.logBeta(rate)));

        assertThat(Urn.atLeast(spread, rooted)).as(source).isGreaterThan(tail);
        if (!printed.equals("words")) {
            assertThat(1 - Urn.atLeast(spread, rooted + 1)).as(source).isGreaterThan(tail);
        }
    }
}

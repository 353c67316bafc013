package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** How the nitrogen of a year is shared among its dressings. */
class DressingsTest {
    private static final Feed NITROGEN = Data.plain("nitrogen", 10, 0, 0);
    private static final Feed PHOSPHATE = Data.plain("phosphate", 0, 10, 0);

    /** Each dressing's nitrogen and phosphate, g/m², on ten thousand square metres so that rounding does not show. */
    private static List<Nutrients> dressings(String timing, double need, double given, int from, Feed... kept) {
        return dressings(Optional.empty(), timing, need, given, from, kept);
    }

    private static List<Nutrients> dressings(Optional<String> texture, String timing, double need, double given,
            int from, Feed... kept) {
        Need wanted = new Need(new Nutrients(need, 4, 0, 0), EnumSet.allOf(Nutrient.class), "print", List.of(),
                List.of());
        Nutrients half = new Nutrients(given / 2, 0, 0, 0);
        return Budget
                .of(Data.TABLES, wanted, Budget.Counting.of(half, half), Data.TABLES.timing(timing), texture, from,
                        new Choice(List.of(kept), List.of()), new NeedCase.Ground(10_000, 0, 0))
                .dressings().stream().map(FeedPlan::gives).toList();
    }

    @Test
    void halves_come_at_their_time_and_phosphate_with_the_first() {
        assertThat(dressings("ribes", 14, 0, 0, NITROGEN, PHOSPHATE)).containsExactly(new Nutrients(7, 4, 0, 0),
                new Nutrients(7, 0, 0, 0));
        assertThat(dressings("ribes", 14, 7, 1, NITROGEN)).containsExactly(new Nutrients(7, 0, 0, 0));
    }

    @Test
    void what_the_ceiling_cuts_off_goes_with_the_next() {
        assertThat(dressings("rubus", 15, 0, 0, NITROGEN)).containsExactly(new Nutrients(10, 0, 0, 0),
                new Nutrients(5, 0, 0, 0));
        assertThat(dressings("rubus", 15, 10, 1, NITROGEN)).containsExactly(new Nutrients(5, 0, 0, 0));
    }

    /** Waikato Regional Council: at most 30 kg N a hectare in one dressing on peat. */
    @Test
    void peat_holds_three_grams_at_once() {
        assertThat(dressings(Optional.of("peat"), "ribes", 7, 0, 0, NITROGEN)).extracting(Nutrients::n)
                .containsExactly(3.0, 3.0);
        assertThat(dressings(Optional.of("loam"), "ribes", 7, 0, 0, NITROGEN)).extracting(Nutrients::n)
                .containsExactly(3.5, 3.5);
    }

    @Test
    void a_dressing_given_too_small_is_made_up_for() {
        assertThat(dressings("ribes", 14, 3, 1, NITROGEN).get(0).n()).isEqualTo(10);
        assertThat(dressings("ribes", 14, 14, 1, NITROGEN)).isEmpty();
    }

    /** A half below the smallest dressing is not weighed apart. */
    @Test
    void a_second_dressing_that_is_too_small_joins_the_first() {
        assertThat(dressings("ribes", 1.8, 0, 0, NITROGEN)).containsExactly(new Nutrients(1.8, 0, 0, 0));
        assertThat(dressings("ribes", 2.2, 0, 0, NITROGEN)).hasSize(2);
    }

    /** 1 % N beside 10 % P2O5: 40 g/m² hold 0.4 g of nitrogen, too little for two weighings. */
    @Test
    void a_material_with_little_nitrogen_is_weighed_once() {
        assertThat(dressings("ribes", 14, 0, 0, NITROGEN, Data.plain("meal", 1, 10, 0)).get(1).p2o5()).isZero();
    }

    /**
     * Slow feeds last the season and do not burn: the ceiling is that of quick salts, and a rest would come too late.
     */
    @Test
    void slow_feeds_alone_go_in_one_dressing() {
        Feed slow = Data.read("{\"id\": \"horn\", \"name\": \"horn\", \"tags\": [\"slow\"], \"analysis\": {\"N\": 10}}",
                new ArrayList<>());

        assertThat(dressings("ribes", 8, 0, 0, slow)).extracting(Nutrients::n).containsExactly(8.0);
        assertThat(dressings("ribes", 14, 0, 0, slow)).extracting(Nutrients::n).containsExactly(14.0);
    }

    /** Blueberries on sand are fed again in mid June: too late for a meal, which is given whole before bloom. */
    @Test
    void a_meal_for_blueberries_on_sand_goes_in_one_dressing() {
        Optional<String> sand = Optional.of("sand");

        assertThat(dressings(sand, "vaccinium", 6, 0, 0, Data.feed("blood-fish-bone"))).hasSize(1);
        assertThat(dressings(sand, "vaccinium", 6, 0, 0, Data.feed("ammonium-sulphate"))).hasSize(2);
        assertThat(dressings(sand, "ribes", 6, 0, 0, Data.feed("blood-fish-bone"))).hasSize(2);
    }

    /** 1 % N beside 10 % P2O5: 40 g/m² hold 0.4 g of nitrogen, so the quick feed brings 6.6 g with it and 7 g later. */
    @Test
    void what_a_material_weighed_once_brings_is_taken_off_the_first() {
        List<Nutrients> all = dressings("ribes", 14, 0, 0, NITROGEN, Data.plain("meal", 1, 10, 0));

        assertThat(all).hasSize(2);
        assertThat(all.get(0).n()).isCloseTo(7, within(0.05));
        assertThat(all.get(0).p2o5()).isCloseTo(4, within(0.05));
        assertThat(all.get(1).n()).isCloseTo(7, within(0.05));
    }

    /** Half of 14 is 7: of that 4 are there. The smallest dressing is 1 g: two of just that are weighed. */
    @Test
    void the_first_half_is_filled_up_and_the_smallest_is_given() {
        assertThat(dressings("ribes", 14, 4, 0, NITROGEN)).extracting(Nutrients::n).containsExactly(3.0, 7.0);
        assertThat(dressings("ribes", 2, 0, 0, NITROGEN)).extracting(Nutrients::n).containsExactly(1.0, 1.0);
    }

    /** Of 4.1 the first half lacks 0.05: not weighed apart, and not lost. */
    @Test
    void a_rest_of_the_first_that_is_too_small_goes_with_the_second() {
        assertThat(dressings("ribes", 4.1, 2, 0, NITROGEN)).singleElement()
                .satisfies(only -> assertThat(only.n()).isCloseTo(2.1, within(0.05)));
    }

    @Property(tries = 200)
    void dressings_never_bring_more_than_is_due_and_none_passes_the_ceiling(
            @ForAll @DoubleRange(min = 0, max = 40) double need, @ForAll @DoubleRange(min = 0, max = 40) double given) {
        List<Nutrients> all = dressings("ribes", need, given, 0, NITROGEN);
        double sum = all.stream().mapToDouble(Nutrients::n).sum();
        double open = Math.max(0, need - given);

        assertThat(sum).isLessThanOrEqualTo(open * 1.03 + 1e-9);
        assertThat(all).allMatch(each -> each.n() <= 10.3);
        if (open >= 1 && open <= 10) { assertThat(sum).isCloseTo(open, within(open * 0.03)); }
    }
}

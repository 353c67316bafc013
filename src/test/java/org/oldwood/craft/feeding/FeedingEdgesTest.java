package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * Ends of ranges, steps of rounding and shares of a feed, each worked out by hand; faults put into them went unnoticed
 * before.
 */
class FeedingEdgesTest {
    private static final NeedCase.Ground FOUR_BUSHES = new NeedCase.Ground(10, 4, 5);
    private static final Feed POTASH = Data.plain("potash", 0, 0, 50);
    private static final Feed NITROGEN = Data.plain("nitrogen", 10, 0, 0);

    private static Choice choice(Feed... feeds) { return new Choice(List.of(feeds), List.of()); }

    private static Budget budget(Nutrients due, NeedCase.Ground ground, Feed... feeds) {
        return Budget.of(Data.TABLES, new Need(due, EnumSet.allOf(Nutrient.class), "", List.of(), List.of()),
                Budget.Counting.NOTHING, Data.TABLES.timing("rubus"), Optional.empty(), 0, choice(feeds), ground);
    }

    private static FeedPlan plan(Nutrients due, NeedCase.Ground ground, Feed... feeds) {
        return budget(due, ground, feeds).next().orElseThrow();
    }

    static Feed heap(String more) {
        List<Problem> problems = new ArrayList<>();
        Feed feed = Data.read("{\"id\": \"heap\", \"name\": \"heap\", \"analysis\": {\"N\": 1}, " + more, problems);
        assertThat(problems).isEmpty();
        return feed;
    }

    @Test
    void doses_are_split_no_further_than_needed() {
        assertThat(Doses.equal(100, 50)).containsExactly(50.0, 50.0);
        assertThat(Doses.equal(0, 50)).isEmpty();
        assertThat(Doses.largestFirst(100, 40)).containsExactly(40.0, 40.0, 20.0);
        assertThat(Doses.largestFirst(80, 40)).containsExactly(40.0, 40.0);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.3, 0.3", "17.4, 17", "63, 65", "234, 230", "777, 800", "4321, 4300", "2.5, 3", "10.5, 11",
            "22.5, 25", "125, 130", "0.5, 1", "43210, 43000", "432100, 430000",})
    void portions_go_by_ever_larger_steps(double grams, double expected) {
        assertThat(Portion.rounded(grams)).isEqualTo(expected);
    }

    @Test
    void a_portion_rounded_down_never_grows_and_never_vanishes() {
        assertThat(Portion.within(0.7, 0.7)).isEqualTo(0.7);
        assertThat(Portion.within(19.9, 19.9)).isEqualTo(19);
        assertThat(Portion.within(64, 64)).isEqualTo(60);
        assertThat(Portion.within(1460, 2000)).isEqualTo(1500);
        assertThat(Portion.within(1460, 1499)).isEqualTo(1400);
    }

    @Test
    void a_soil_richer_than_the_table_has_its_last_index() {
        SoilIndex index = Data.TABLES.index();

        assertThat(index.ofPhosphorus(1e6)).isEqualTo(index.phosphorus().size() - 1);
        assertThat(index.ofPotassium(0)).isZero();
    }

    @Test
    void all_four_nutrients_are_in_the_sum() { assertThat(new Nutrients(1, 2, 3, 4).sum()).isEqualTo(10); }

    @ParameterizedTest
    @CsvSource({"100, 100", "100.4, 100", "99.94, 99.9", "10.04, 10", "9.994, 9.99", "1.004, 1", "0.9994, 0.999",
            "0, 0", "-2.5, -2.5",})
    void amounts_have_three_digits(double value, String expected) {
        assertThat(Words.amount(value)).isEqualTo(expected);
    }

    @Test
    void kilograms_begin_at_a_thousand_grams() {
        assertThat(Words.weight(999)).isEqualTo("999 g");
        assertThat(Words.weight(1000)).isEqualTo("1 kg");
        assertThat(Words.weight(-1500)).isEqualTo("-1.5 kg");
    }

    /** 10 g/m² of K2O from a feed with half of it: 20 g/m², 200 g for 10 m². */
    @Test
    void a_plan_adds_up_and_is_told_by_the_bush_or_the_row() {
        Nutrients due = new Nutrients(0, 0, 10, 0);
        FeedPlan plan = plan(due, FOUR_BUSHES, POTASH);

        assertThat(plan.totalGrams()).isEqualTo(200);
        assertThat(plan.gives().k2o()).isCloseTo(10, within(1e-9));
        assertThat(plan.words()).isEqualTo("200 g of potash");
        assertThat(plan.lines())
                .containsExactly("at bud burst, potash: 200 g on 10 m² = 20 g/m², giving K2O 10 g/m² this season");
        assertThat(plan.measures()).containsExactly("potash: 50 g a bush");
        assertThat(plan(due, new NeedCase.Ground(10, 1, 5), POTASH).measures())
                .containsExactly("potash: 40 g a metre of row");
        assertThat(plan(due, new NeedCase.Ground(10, 0, 0), POTASH).measures()).isEmpty();
    }

    /** Six tenths of 10 g/m² of nitrogen may come from the heap: 6 g are 600 g/m² of 1 %. */
    @Test
    void a_heap_brings_no_more_than_its_share_of_the_nitrogen() {
        Nutrients due = new Nutrients(10, 0, 0, 0);
        Budget budget = budget(due, FOUR_BUSHES, heap("\"tags\": [\"manure\"]}"));

        assertThat(budget.next().orElseThrow().totalGrams()).isCloseTo(6000, within(1e-6));
        assertThat(budget.missing()).singleElement().asString()
                .startsWith("4 g/m² N are not given: more of heap is not advised, since manures");
    }

    /** 8 g/m² of 1 % would be 800 g/m²; nobody gives more than 500. At 3 % of N, 25 g are in 833 g. */
    @Test
    void a_feed_has_its_limits_and_says_which() {
        assertThat(budget(new Nutrients(8, 0, 0, 0), FOUR_BUSHES, heap("\"tags\": []}")).missing()).singleElement()
                .asString().startsWith("3 g/m² N are not given: more of heap is not advised, since that would be more");
        Feed meal = Data.plain("meal", 1, 27, 0);
        assertThat(budget(new Nutrients(8, 4, 0, 0), FOUR_BUSHES, meal).dressed().p2o5()).isLessThan(5);
    }

    @Test
    void less_than_the_smallest_dressing_waits() {
        Budget little = budget(new Nutrients(0.9, 0, 0, 0), FOUR_BUSHES, NITROGEN);

        assertThat(little.dressings()).isEmpty();
        assertThat(little.missing()).isEmpty();
        assertThat(little.notes())
                .containsExactly("0.9 g/m² N are too little to weigh out; they may wait for the next season.");
        assertThat(budget(new Nutrients(1, 0, 0, 0), FOUR_BUSHES).missing())
                .containsExactly("1 g/m² N are not given: no material at hand brings nitrogen.");
    }

    /** 5 % of what it gives is a trace, 20 % is not. */
    @Test
    void a_trace_does_not_bring_a_nutrient() {
        Nutrients due = new Nutrients(5, 0, 0, 0);

        assertThat(budget(due, FOUR_BUSHES, Data.plain("trace", 1, 0, 19)).missing()).singleElement().asString()
                .endsWith("no material at hand brings more than a trace of nitrogen.");
        assertThat(budget(due, FOUR_BUSHES, Data.plain("fifth", 2, 0, 8)).missing()).singleElement().asString()
                .contains(
                        "more of fifth is not advised, since it would bring more than 6 times (our assumption) the potash");
    }

    /** 100 g/m² of 10-0-10 meet 10 g of N and bring 5 g of K2O too many. */
    @Test
    void what_comes_beyond_the_need_is_said() {
        Budget budget = budget(new Nutrients(10, 0, 5, 0), FOUR_BUSHES, Data.plain("both", 10, 0, 10));

        assertThat(budget.next().orElseThrow().totalGrams()).isCloseTo(1000, within(1e-6));
        assertThat(budget.notes()).containsExactly("5 g/m² K2O come with it beyond the need.");
    }

    /** 31 g on 3 m² are weighed as 30: a step of the scales is no shortage and no surplus. */
    @Test
    void rounding_is_not_told_as_overdoing() {
        Budget budget = budget(new Nutrients(1.04, 0, 0, 0), new NeedCase.Ground(3, 0, 0), NITROGEN);

        assertThat(budget.next().orElseThrow().totalGrams()).isEqualTo(30);
        assertThat(budget.missing()).isEmpty();
        assertThat(budget.notes()).isEmpty();
    }

    @Test
    void amounts_under_a_twentieth_of_a_gram_are_left_out() {
        assertThat(FeedPlan.inWords(new Nutrients(0.05, 0.04, 0, -0.06))).isEqualTo("N 0.1, MgO -0.1");
        assertThat(FeedPlan.inWords(Nutrients.NONE)).isEqualTo("nothing");
    }

    @Test
    void of_two_feeds_that_do_as_well_the_first_is_taken() {
        Recipe recipe = Recipe.best(new Nutrients(10, 0, 0, 0), List.of(NITROGEN, Data.plain("twin", 10, 0, 0)),
                feed -> 1000, 5, 1);

        assertThat(recipe.parts()).singleElement().extracting(Recipe.Part::feed).isEqualTo(NITROGEN);
    }

    @Test
    void a_feed_named_twice_counts_once() {
        Recipe recipe = Recipe.best(new Nutrients(10, 0, 0, 0), List.of(NITROGEN, NITROGEN), feed -> 1000, 5, 1);

        assertThat(recipe.parts()).singleElement().extracting(Recipe.Part::feed).isEqualTo(NITROGEN);
    }

    /** Four feeds of one nutrient each: the fourth is weighed for more than a gram, not for less. */
    @ParameterizedTest
    @CsvSource({"0.9, 3", "1.1, 4"})
    void a_fourth_material_is_weighed_for_more_than_a_gram(double magnesia, int materials) {
        Feed kieserite = Data.feed("kieserite");
        Recipe recipe = Recipe.best(new Nutrients(10, 5, 12, magnesia),
                List.of(NITROGEN, Data.plain("p", 0, 10, 0), Data.plain("k", 0, 0, 10), kieserite), feed -> 1000, 5, 1);

        assertThat(recipe.parts()).hasSize(materials);
        assertThat(recipe.gives().n()).isCloseTo(10, within(1e-9));
    }

    /** 19.8 g a bush (as the data has it): two bushes on 4 m² make 9.9 g/m². */
    @Test
    void a_need_by_the_plant_is_shared_by_the_ground() {
        FeedingProfile profile = Data.profile("gooseberry");
        Need need = Need.of(Data.TABLES, profile, profile.school("penn-state").orElseThrow(),
                NeedCase.of(new NeedCase.Ground(4, 2, 0)));

        assertThat(need.gPerM2().n()).isCloseTo(19.8 * 2 / 4, within(1e-9));
    }

    /** 7.5 g a metre: 5 m of row on 10 m² make 3.75 g/m². */
    @Test
    void a_need_by_the_row_is_shared_by_the_ground() {
        FeedingProfile profile = Data.profile("summer-raspberry");
        FeedingProfile.School byRow = profile.schools().stream()
                .filter(each -> each.tables().containsValue("oregon-canes-n")).findFirst().orElseThrow();

        Need need = Need.of(Data.TABLES, profile, byRow, NeedCase.of(FOUR_BUSHES));

        assertThat(need.gPerM2().n()).isCloseTo(7.5 * 5 / 10, within(1e-9));
    }

    /** Half in the first two seasons (14 × 0.5), all from the third; 5 at most in the first. */
    @Test
    void plants_are_young_for_two_seasons_and_new_for_one() {
        FeedingProfile profile = Data.profile("blackcurrant");
        NeedCase loam = NeedCase.of(FOUR_BUSHES).withSoil(Data.soil(NeedCase.Soil.UNKNOWN, "loam"));

        Need first = Need.of(Data.TABLES, profile, profile.schools().get(0), loam.withAge(1));
        Need second = Need.of(Data.TABLES, profile, profile.schools().get(0), loam.withAge(2));
        Need third = Need.of(Data.TABLES, profile, profile.schools().get(0), loam.withAge(3));

        assertThat(first.gPerM2().n()).isEqualTo(5);
        assertThat(second.gPerM2().n()).isEqualTo(7);
        assertThat(third.gPerM2().n()).isEqualTo(14);
        assertThat(second.lines()).contains("nitrogen 14 × 0.5 = 7 g/m²: season 2, young");
    }

    /** Redcurrants: without chloride above 12 g/m² of K2O (RB209 section 7). */
    @Test
    void chloride_is_refused_above_its_limit_and_not_at_it() {
        FeedingProfile profile = Data.profile("redcurrant");
        List<Feed> kept = List.of(Data.feed("muriate-of-potash"));

        assertThat(Choice.of(kept, profile, 12, OptionalDouble.empty(), 7).refused()).isEmpty();
        assertThat(Choice.of(kept, profile, 12.1, OptionalDouble.empty(), 7).refused()).hasSize(1);
    }

    /** Blueberries: urea below pH 5, ammonium sulphate from 5 up, where both are kept. */
    @Test
    void the_ph_decides_between_two_kinds_of_ammonium() {
        FeedingProfile profile = Data.profile("blueberry");
        Feed urea = Data.feed("urea");
        Feed sulphate = Data.feed("ammonium-sulphate");
        List<Feed> both = List.of(urea, sulphate);

        assertThat(Choice.of(both, profile, 0, OptionalDouble.of(4.9), 7).allowed()).containsExactly(urea);
        assertThat(Choice.of(both, profile, 0, OptionalDouble.of(5), 7).allowed()).containsExactly(sulphate);
        assertThat(Choice.of(List.of(urea), profile, 0, OptionalDouble.of(5), 7).allowed()).containsExactly(urea);
        assertThat(Choice.of(both, profile, 0, OptionalDouble.empty(), 7).allowed()).hasSize(2);
    }

    /** US Extension, 1991: ash only where the pH is below 7. */
    @Test
    void what_limes_is_no_food_for_soil_that_is_never_limed() {
        FeedingProfile profile = Data.profile("redcurrant");
        List<Feed> kept = List.of(Data.feed("wood-ash"));

        assertThat(Choice.of(kept, profile, 12, OptionalDouble.of(6.9), 7).refused()).isEmpty();
        assertThat(Choice.of(kept, profile, 12, OptionalDouble.of(7), 7).refused()).hasSize(1);
        assertThat(Choice.of(kept, profile, 12, OptionalDouble.empty(), 7).refused()).isEmpty();
    }

    @Test
    void a_label_holds_more_than_nothing_and_at_most_all() {
        assertThat(Feed.ofLabel(new Nutrients(40, 30, 20, 10)).percent().sum()).isEqualTo(100);
        for (Nutrients wrong : List.of(new Nutrients(40, 30, 20, 10.1), Nutrients.NONE, new Nutrients(-1, 5, 5, 5),
                new Nutrients(5, -1, 5, 5), new Nutrients(5, 5, -1, 5), new Nutrients(5, 5, 5, -1))) {
            assertThatThrownBy(() -> Feed.ofLabel(wrong)).isInstanceOf(RecordException.class);
        }
    }

    /** By water's density, 1 kg/l: 2 l, then tens of ml, then 10 ml spoons. */
    @ParameterizedTest
    @CsvSource({"2000, about 2 l", "1999, about 2000 ml in a measuring jug", "200, about 200 ml in a measuring jug",
            "83, about 80 ml in a measuring jug", "82, about 8 level 10 ml spoons", "10, about 1 level 10 ml spoon",
            "15, about 1.5 level 10 ml spoons", "2, ",})
    void vessels_change_above_8_spoons_and_at_2_l(double grams, String expected) {
        Figure water = new Figure(1, 1, 1, "kg/l", List.of(), Seen.READ, "");

        assertThat(Household.inWords(grams, Optional.of(water))).isEqualTo(Optional.ofNullable(expected));
    }

    @Test
    void three_quarters_of_a_handful_is_one() {
        Figure forty = new Figure(40, 40, 40, "g", List.of(), Seen.READ, "");

        assertThat(Household.inHandfuls(30, "large open", forty)).contains("about 1 handful (large open hand, 40 g)");
        assertThat(Household.inHandfuls(29, "large open", forty)).isEmpty();
        assertThat(Household.inHandfuls(320, "large open", forty)).isPresent();
        assertThat(Household.inHandfuls(360, "large open", forty)).isEmpty();
        assertThat(Household.inHandfuls(80, "large open", forty)).contains("about 2 handfuls (large open hand, 40 g)");
    }

    @Test
    void the_last_day_is_that_of_the_slowest_nitrogen() {
        Feed slow = heap("\"tags\": [\"organic-nitrogen\", \"slow\"]}");

        assertThat(latest(NITROGEN)).contains(MonthDay.of(6, 30));
        assertThat(latest(slow)).contains(MonthDay.of(5, 31));
        assertThat(latest(POTASH)).isEmpty();
        assertThat(latest(POTASH, NITROGEN)).contains(MonthDay.of(6, 30));
    }

    private static Optional<MonthDay> latest(Feed... kept) {
        Budget budget = budget(new Nutrients(4, 0, 6, 0), FOUR_BUSHES, kept);
        return budget.latest(budget.next().orElseThrow());
    }
}

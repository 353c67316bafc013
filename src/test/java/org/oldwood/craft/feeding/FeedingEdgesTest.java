package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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

    private static Choice choice(Feed... feeds) {
        return new Choice(List.of(feeds), List.of());
    }

    private static FeedPlan plan(Nutrients due, NeedCase.Ground ground, Feed... feeds) {
        return FeedPlan.of(Data.TABLES, due, due.n(), choice(feeds), ground);
    }

    private static Feed heap(String more) {
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

    /** Shares need not add up to one: 2 and 3 are two and three fifths. */
    @Test
    void shares_are_of_their_sum() {
        assertThat(Doses.byShares(100, List.of(2.0, 3.0))).containsExactly(40.0, 60.0);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.3, 0.3",
        "17.4, 17",
        "63, 65",
        "234, 230",
        "777, 800",
        "4321, 4300",
        "43210, 43000",
        "432100, 430000",
    })
    void portions_go_by_ever_larger_steps(double grams, double expected) {
        assertThat(Portion.rounded(grams)).isEqualTo(expected);
    }

    @Test
    void a_portion_rounded_down_never_grows_and_never_vanishes() {
        assertThat(Portion.roundedDown(0.7)).isEqualTo(0.7);
        assertThat(Portion.roundedDown(19.9)).isEqualTo(19);
        assertThat(Portion.roundedDown(64)).isEqualTo(60);
    }

    @Test
    void a_soil_richer_than_the_table_has_its_last_index() {
        SoilIndex index = Data.TABLES.index();

        assertThat(index.ofPhosphorus(1e6)).isEqualTo(index.phosphorus().size() - 1);
        assertThat(index.ofPotassium(0)).isZero();
    }

    @Test
    void all_four_nutrients_are_in_the_sum() {
        assertThat(new Nutrients(1, 2, 3, 4).sum()).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({
        "100, 100",
        "100.4, 100",
        "99.94, 99.9",
        "10.04, 10",
        "9.994, 9.99",
        "1.004, 1",
        "0.9994, 0.999",
        "0, 0",
        "-2.5, -2.5",
    })
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
        assertThat(plan.nothingToDo()).isFalse();
        assertThat(plan.notes()).isEmpty();
        assertThat(plan.lines()).containsExactly("potash: 20 g/m² × 10 m² = 200 g, giving K2O 10 g/m² this season");
        assertThat(plan.measures()).containsExactly("potash: 50 g a bush");
        assertThat(plan(due, new NeedCase.Ground(10, 1, 5), POTASH).measures())
                .containsExactly("potash: 40 g a metre of row");
        assertThat(plan(due, new NeedCase.Ground(10, 0, 0), POTASH).measures()).isEmpty();
    }

    /** Six tenths of 10 g/m² of nitrogen may come from the heap: 6 g are 600 g/m² of 1 %. */
    @Test
    void a_heap_brings_no_more_than_its_share_of_the_nitrogen() {
        Nutrients due = new Nutrients(10, 0, 0, 0);
        FeedPlan plan = plan(due, FOUR_BUSHES, heap("\"tags\": [\"manure\"]}"));

        assertThat(plan.totalGrams()).isCloseTo(6000, within(1e-6));
        assertThat(plan.notes()).singleElement().asString().startsWith("4 g/m² N stay undone: more");
        assertThat(plan(due, FOUR_BUSHES, heap("\"tags\": []}")).totalGrams()).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void half_a_gram_undone_is_not_worth_a_word() {
        FeedPlan little = plan(new Nutrients(0.5, 0, 0, 0), FOUR_BUSHES);
        FeedPlan more = plan(new Nutrients(0.6, 0, 0, 0), FOUR_BUSHES);

        assertThat(little.notes()).isEmpty();
        assertThat(little.nothingToDo()).isTrue();
        assertThat(more.lacks()).containsExactly("0.6 g/m² N stay undone: no material at hand brings nitrogen.");
        assertThat(more.nothingToDo()).isFalse();
    }

    /** 5 % of what it gives is a trace, 20 % is not; either way the potash would be overdone. */
    @Test
    void a_trace_does_not_bring_a_nutrient() {
        Nutrients due = new Nutrients(5, 0, 0, 0);

        assertThat(plan(due, FOUR_BUSHES, Data.plain("trace", 1, 0, 19)).lacks())
                .hasSize(1);
        FeedPlan fifth = plan(due, FOUR_BUSHES, Data.plain("fifth", 2, 0, 8));
        assertThat(fifth.lacks()).isEmpty();
        assertThat(fifth.parts()).isEmpty();
        assertThat(fifth.notes()).singleElement().asString().contains("would overdo another");
    }

    /** 100 g/m² of 10-0-10 meet 10 g of N and bring 5 g of K2O too many. */
    @Test
    void what_comes_beyond_the_need_is_said() {
        FeedPlan plan = plan(new Nutrients(10, 0, 5, 0), FOUR_BUSHES, Data.plain("both", 10, 0, 10));

        assertThat(plan.totalGrams()).isCloseTo(1000, within(1e-6));
        assertThat(plan.notes()).containsExactly("5 g/m² K2O come with it beyond the need.");
    }

    @Test
    void amounts_under_a_twentieth_of_a_gram_are_left_out() {
        assertThat(FeedPlan.inWords(new Nutrients(0.05, 0.04, 0, -0.06))).isEqualTo("N 0.1, MgO -0.1");
        assertThat(FeedPlan.inWords(Nutrients.NONE)).isEqualTo("nothing");
    }

    /** Undone 2 N and 3 P2O5, nitrogen once more, 4 K2O too many: 2 + 3 + 2 + 4. */
    @Test
    void a_recipe_pays_twice_for_nitrogen_undone() {
        Recipe recipe = Recipe.of(List.of(new Recipe.Part(POTASH, 20)), new Nutrients(2, 3, 6, 0));

        assertThat(recipe.penalty()).isCloseTo(11, within(1e-9));
    }

    @Test
    void of_two_feeds_that_do_as_well_the_first_is_taken() {
        Recipe recipe =
                Recipe.best(new Nutrients(10, 0, 0, 0), List.of(NITROGEN, Data.plain("twin", 10, 0, 0)), feed -> 1000);

        assertThat(recipe.parts()).singleElement().extracting(Recipe.Part::feed).isEqualTo(NITROGEN);
    }

    /** 19.8 g a bush (as the data has it): two bushes on 4 m² make 9.9 g/m². */
    @Test
    void a_need_by_the_plant_is_shared_by_the_ground() {
        FeedingProfile profile = Data.profile("gooseberry");
        Need need = Need.of(
                Data.TABLES,
                profile,
                profile.school("penn-state").orElseThrow(),
                NeedCase.of(new NeedCase.Ground(4, 2, 0)));

        assertThat(need.gPerM2().n()).isCloseTo(19.8 * 2 / 4, within(1e-9));
    }

    /** 7.5 g a metre: 5 m of row on 10 m² make 3.75 g/m². */
    @Test
    void a_need_by_the_row_is_shared_by_the_ground() {
        FeedingProfile profile = Data.profile("summer-raspberry");
        FeedingProfile.School byRow = profile.schools().stream()
                .filter(each -> each.tables().containsValue("oregon-canes-n"))
                .findFirst()
                .orElseThrow();

        Need need = Need.of(Data.TABLES, profile, byRow, NeedCase.of(FOUR_BUSHES));

        assertThat(need.gPerM2().n()).isCloseTo(7.5 * 5 / 10, within(1e-9));
    }

    /** Half in the first two seasons (14 × 0.5), all from the third; 5 at most in the first. */
    @Test
    void plants_are_young_for_two_seasons_and_new_for_one() {
        FeedingProfile profile = Data.profile("blackcurrant");
        NeedCase loam = NeedCase.of(FOUR_BUSHES).withSoil(NeedCase.Soil.UNKNOWN.withTexture(Optional.of("loam")));

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

        assertThat(Choice.of(kept, profile, 12, OptionalDouble.empty()).refused())
                .isEmpty();
        assertThat(Choice.of(kept, profile, 12.1, OptionalDouble.empty()).refused())
                .hasSize(1);
    }

    /** Blueberries: urea below pH 5, ammonium sulphate from 5 up, where both are kept. */
    @Test
    void the_ph_decides_between_two_kinds_of_ammonium() {
        FeedingProfile profile = Data.profile("blueberry");
        Feed urea = Data.feed("urea");
        Feed sulphate = Data.feed("ammonium-sulphate");
        List<Feed> both = List.of(urea, sulphate);

        assertThat(Choice.of(both, profile, 0, OptionalDouble.of(4.9)).allowed())
                .containsExactly(urea);
        assertThat(Choice.of(both, profile, 0, OptionalDouble.of(5)).allowed()).containsExactly(sulphate);
        assertThat(Choice.of(List.of(urea), profile, 0, OptionalDouble.of(5)).allowed())
                .containsExactly(urea);
        assertThat(Choice.of(both, profile, 0, OptionalDouble.empty()).allowed())
                .hasSize(2);
    }

    @Test
    void a_label_holds_more_than_nothing_and_at_most_all() {
        assertThat(Feed.ofLabel(new Nutrients(40, 30, 20, 10)).percent().sum()).isEqualTo(100);
        for (Nutrients wrong : List.of(
                new Nutrients(40, 30, 20, 10.1),
                Nutrients.NONE,
                new Nutrients(-1, 5, 5, 5),
                new Nutrients(5, -1, 5, 5),
                new Nutrients(5, 5, -1, 5),
                new Nutrients(5, 5, 5, -1))) {
            assertThatThrownBy(() -> Feed.ofLabel(wrong)).isInstanceOf(RecordException.class);
        }
    }

    /** By water's density, 1 kg/l: 2 l, then cups of 236.588 ml in quarters, then 10 ml spoons. */
    @ParameterizedTest
    @CsvSource({
        "2000, about 2 l",
        "1999, about 8.5 US cups",
        "200, about 0.75 US cup",
        "199, about 20 level 10 ml spoons",
        "10, about 1 level 10 ml spoon",
        "15, about 1.5 level 10 ml spoons",
        "2, ",
    })
    void vessels_change_at_200_ml_and_at_2_l(double grams, String expected) {
        Figure water = new Figure(1, 1, 1, "kg/l", List.of(), Seen.READ, "");

        assertThat(Household.inWords(grams, Optional.of(water))).isEqualTo(Optional.ofNullable(expected));
    }

    @Test
    void three_quarters_of_a_handful_is_one() {
        Figure forty = new Figure(40, 40, 40, "g", List.of(), Seen.READ, "");

        assertThat(Household.inHandfuls(30, "large open", forty)).contains("about 1 handful (large open hand, 40 g)");
        assertThat(Household.inHandfuls(29, "large open", forty)).isEmpty();
        assertThat(Household.inHandfuls(80, "large open", forty)).contains("about 2 handfuls (large open hand, 40 g)");
    }

    private static FeedYear year(boolean begun, Feed... kept) {
        Nutrients wanted = new Nutrients(12, 0, 6, 0);
        return new FeedYear(
                new Need(wanted, Set.of(Nutrient.N, Nutrient.K2O), "", List.of(), List.of()),
                Balance.of(wanted, Nutrients.NONE),
                Data.TABLES.timings().get("ribes"),
                false,
                begun,
                choice(kept),
                FOUR_BUSHES);
    }

    /** 12 g/m² of nitrogen in halves, or, of slow feeds alone, at once but 10 g at most. */
    @Test
    void slow_feeds_alone_go_in_one_dressing() {
        Feed slow = heap("\"tags\": [\"organic-nitrogen\", \"slow\"]}");

        assertThat(year(false, NITROGEN, slow).dressings()).hasSize(2);
        assertThat(year(false, POTASH).dressings()).hasSize(2);
        assertThat(year(false, POTASH, slow).dressings()).hasSize(1);
        assertThat(year(false, NITROGEN).dressing(Data.TABLES, 0).due().n()).isEqualTo(6);
        assertThat(year(false, NITROGEN).dressing(Data.TABLES, 1).due().n()).isEqualTo(6);
        assertThat(year(false, slow).dressing(Data.TABLES, 0).due().n()).isEqualTo(10);
        assertThat(year(false, slow).dressing(Data.TABLES, 1).due()).isEqualTo(Nutrients.NONE);
        assertThat(year(true, slow).dressing(Data.TABLES, 1).due().n()).isEqualTo(10);
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
        FeedYear year = year(false, kept);
        return year.latest(year.dressing(Data.TABLES, 0));
    }
}

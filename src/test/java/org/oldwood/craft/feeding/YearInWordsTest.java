package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.store.Problem;

/** What a year's sum says of itself, and which of the kept materials it may use; each worked out by hand. */
class YearInWordsTest {
    private static final Feed NITROGEN = Data.plain("nitrogen", 10, 0, 0);
    private static final Feed OTHER_NITROGEN = Data.plain("other", 20, 0, 0);
    private static final Feed POTASH = Data.plain("potash", 0, 0, 50);
    private static final NeedCase.Ground TEN_M2 = new NeedCase.Ground(10, 4, 0);

    private static Need need(Nutrients gPerM2, Nutrient... known) {
        return new Need(gPerM2, Set.of(known), "print", List.of(), List.of());
    }

    private static Budget year(Nutrients need, Budget.Counting counting, int from, Feed... kept) {
        return Budget.of(Data.TABLES, need(need, Nutrient.values()), counting, Data.TABLES.timing("ribes"),
                Optional.empty(), from, new Choice(List.of(kept), List.of()), TEN_M2);
    }

    /** Of 14 g N 7 are given, of 4 g P2O5 1 is left, of 12 g K2O the mulch brings 6; 7 g N are 70 g/m² of 10 %. */
    private static Budget half() {
        return year(new Nutrients(14, 4, 12, 0), new Budget.Counting(new Nutrients(0, 1, 0, 0),
                new Nutrients(0, 0, 6, 0), new Nutrients(7, 0, 0, 2), Map.of()), 1, NITROGEN);
    }

    @Test
    void the_sum_is_told_in_a_line() {
        assertThat(half().inWords()).isEqualTo(
                "needs N 14, P2O5 4, K2O 12; left P2O5 1; mulch to come K2O 6; given N 7, MgO 2; to give N 7;"
                        + " undone P2O5 3, K2O 6; beyond the need MgO 2 g/m²");
        assertThat(year(Nutrients.NONE, Budget.Counting.NOTHING, 0).inWords()).isEqualTo("needs nothing g/m²");
    }

    @Test
    void the_sum_is_told_step_by_step() {
        assertThat(half().lines()).containsExactly("left by earlier seasons: P2O5 1 g/m²",
                "the mulch that is to be laid this season brings: K2O 6 g/m²", "given this season: N 7, MgO 2 g/m²",
                "due: N 7, P2O5 3, K2O 6 g/m²",
                "after flowering, nitrogen: 700 g on 10 m² = 70 g/m², giving N 7 g/m²" + " this season",
                "more than needed: MgO 2 g/m²");
    }

    @Test
    void a_school_says_of_what_it_tells_nothing() {
        assertThat(need(new Nutrients(4.2, 0, 0, 0), Nutrient.N).inWords())
                .isEqualTo("print: N 4.2 g/m²; of phosphate, potash and magnesia it tells nothing");
        assertThat(need(new Nutrients(4, 1, 0, 0), Nutrient.values()).inWords()).isEqualTo("print: N 4, P2O5 1 g/m²");
    }

    @ParameterizedTest
    @CsvSource({"gooseberry, penn-state, 1, 0, true", "gooseberry, penn-state, 0, 9, false",
            "summer-raspberry, oregon, 0, 0.1, true", "summer-raspberry, oregon, 9, 0, false",
            "gooseberry, rb209, 0, 0, true",})
    void a_school_by_the_plant_fits_ground_whose_plants_are_counted(String crop, String school, int bushes, double rowM,
            boolean fits) {
        FeedingProfile.School asked = Data.profile(crop).schools().stream().filter(each -> each.id().contains(school))
                .findFirst().orElseThrow();

        assertThat(Need.fits(Data.TABLES, asked, new NeedCase.Ground(10, bushes, rowM))).isEqualTo(fits);
    }

    @Test
    void a_feed_that_must_wait_is_left_out_where_another_brings_nitrogen() {
        Choice both = new Choice(List.of(NITROGEN, POTASH, OTHER_NITROGEN), List.of("Not this."));

        Choice without = both.without(feed -> feed.equals(NITROGEN) ? Optional.of("limed.") : Optional.empty());
        assertThat(without.allowed()).containsExactly(POTASH, OTHER_NITROGEN);
        assertThat(without.refused()).containsExactly("Not this.", "Not nitrogen: limed.");
        assertThat(both.without(feed -> feed.givesNitrogen() ? Optional.of("limed.") : Optional.empty()))
                .isEqualTo(both);
        assertThat(both.without(feed -> Optional.empty())).isEqualTo(both);
    }

    /** Both hold ammonia: neither is in the other's way without ash; a crop that may not get a feed need not fear it. */
    @Test
    void only_ash_is_kept_from_ammonia_and_only_from_what_the_crop_may_get() {
        List<Feed> two = List.of(Data.feed("dried-blood"), Data.feed("ammonium-sulphate"));
        assertThat(Choice.of(two, Data.profile("redcurrant"), 12, OptionalDouble.empty(), 7).allowed()).isEqualTo(two);
        Choice ash = Choice.of(List.of(Data.feed("wood-ash"), Data.feed("dried-blood")), Data.profile("redcurrant"), 12,
                OptionalDouble.empty(), 7);
        assertThat(ash.refused()).singleElement().asString().startsWith("Not wood ash: it would drive the nitrogen of");
    }

    private static final String LABELLED = """
            {"id": "meal", "name": "meal", "tags": ["slow", "organic-nitrogen"], "cautions": ["dust", "meals"],
             "analysis": {
                "N": {"is": 10, "unit": "%", "source": "memory", "seen": "memory"},
                "P2O5": {"is": 0, "unit": "%", "source": "memory", "seen": "memory"},
                "K2O": {"is": 5, "unit": "%", "source": "oldwood", "seen": "read"}},
             "firstYear": {
                "N": {"is": 0.8, "unit": "1", "source": "oldwood", "seen": "assumed"},
                "MgO": {"is": 0.8, "unit": "1", "source": "oldwood", "seen": "assumed"}},
             "density": {"is": 1, "unit": "kg/l", "source": "oldwood", "seen": "read"},
             "handfulG": {
                "small-open": {"is": 50, "unit": "g", "source": "oldwood", "seen": "read"},
                "small-heaped": {"is": 80, "unit": "g", "source": "oldwood", "seen": "read"}}}
            """;

    private static Feed meal() {
        List<Problem> problems = new ArrayList<>();
        Feed meal = Data.read(LABELLED, problems);
        assertThat(problems).isEmpty();
        return meal;
    }

    @Test
    void what_was_never_read_of_a_feed_is_marked() {
        assertThat(meal().notRead()).containsExactly("10 % N (from memory)",
                "80 % of its N counts in the first year (our assumption)");
        assertThat(POTASH.notRead()).isEmpty();
    }

    /** 4 g N are 50 g/m² of 8 % free: 500 g, 125 g a bush (told in tens, halves up), 500 ml; 10 handfuls are too many to count. */
    @Test
    void a_dressing_is_told_by_the_bush_the_jug_and_the_hand() {
        FeedPlan much = year(new Nutrients(4, 0, 0, 0), Budget.Counting.NOTHING, 0, meal()).next().orElseThrow();
        List<Recipe.Part> few = List.of(new Recipe.Part(meal(), 10), new Recipe.Part(NITROGEN, 1.2),
                new Recipe.Part(meal(), 1.2));
        FeedPlan little = FeedPlan.of(0, "now", few, 0, TEN_M2);

        assertThat(much.measures()).containsExactly("meal: 130 g a bush; about 500 ml in a measuring jug in all");
        assertThat(little.measures())
                .containsExactly(
                        "meal: 25 g a bush; about 100 ml in a measuring jug in all; about 2 handfuls (small open hand,"
                                + " 50 g)",
                        "nitrogen: 3 g a bush", "meal: 3 g a bush; about 1 level 10 ml spoon in all");
        assertThat(little.tags()).containsExactly("slow", "organic-nitrogen");
        assertThat(little.cautions()).containsExactly("dust", "meals");
        assertThat(little.words()).isEqualTo("100 g of meal, 12 g of nitrogen and 12 g of meal");
        assertThat(FeedPlan.of(0, "now", few, 1, TEN_M2).slow()).isFalse();
        assertThat(much.slow()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"'\"N\": {\"is\": 100, \"unit\": \"%\", \"source\": \"x\", \"seen\": \"read\"}', ",
            "'\"N\": {\"is\": 0, \"unit\": \"%\", \"source\": \"x\", \"seen\": \"read\"}', ",
            "'\"N\": {\"is\": 101, \"unit\": \"%\", \"source\": \"x\", \"seen\": \"read\"}', from 0 to 100",
            "'\"N\": {\"is\": -1, \"unit\": \"%\", \"source\": \"x\", \"seen\": \"read\"}', from 0 to 100",
            "'\"N\": 60, \"K2O\": 40', ", "'\"N\": 60, \"K2O\": 40.6', more than 100 %", "'\"Na\": 1', unknown-key",})
    void a_label_is_read_as_it_stands_or_refused(String analysis, String wrong) {
        List<Problem> problems = new ArrayList<>();
        Data.read("{\"id\": \"own\", \"name\": \"own\", \"tags\": [], \"analysis\": {" + analysis + "}}", problems);

        assertThat(problems.isEmpty()).isEqualTo(wrong == null);
        assertThat(problems.toString()).contains(wrong == null ? "" : wrong);
    }

    @Test
    void a_word_that_no_material_has_is_told() {
        List<Problem> problems = new ArrayList<>();
        Data.read("{\"id\": \"own\", \"name\": \"own\", \"tags\": [], \"analyse\": {\"N\": 1}}", problems);

        assertThat(problems.toString()).contains("Did you mean \"analysis\"");
    }

    /** Feeding lasts from 1 March to 30 June: 244 days lie between, and the middle day goes to the season before. */
    @ParameterizedTest
    @CsvSource({"2026-10-29, NORTH, 2026", "2026-10-31, NORTH, 2027", "2027-02-28, NORTH, 2027",
            "2027-06-30, NORTH, 2027", "2027-04-29, SOUTH, 2026-27", "2027-05-02, SOUTH, 2027-28",})
    void a_feed_counts_for_the_season_that_is_nearer(LocalDate day, Hemisphere hemisphere, String season) {
        assertThat(Data.TABLES.winter().feeds(day, hemisphere).label()).isEqualTo(season);
    }

    @Test
    void feeding_begins_on_the_first_of_march() {
        Season season = Season.containing(LocalDate.of(2027, 5, 1), Hemisphere.NORTH);
        Winter winter = Data.TABLES.winter();

        assertThat(winter.isOver(LocalDate.of(2027, 2, 28), season)).isFalse();
        assertThat(winter.isOver(LocalDate.of(2027, 3, 1), season)).isTrue();
    }

    /** Sand keeps a quarter through the 106 days from 1 November to 15 February; 53 days on, five eighths. */
    @ParameterizedTest
    @CsvSource({"2026-10-31, 0.25", "2026-11-01, 0.25", "2026-12-24, 0.625", "2027-02-15, 1"})
    void winter_takes_quick_nitrogen_evenly(LocalDate day, double keeps) {
        Season season = Season.containing(LocalDate.of(2027, 5, 1), Hemisphere.NORTH);

        assertThat(Data.TABLES.winter().keeps(NITROGEN, day, season, Optional.of("light-sand"))).isCloseTo(keeps,
                within(1e-9));
        assertThat(Data.TABLES.winter().keeps(POTASH, day, season, Optional.of("light-sand"))).isEqualTo(1);
    }

    /** Half of 6 g N from a meal of 10 %, the other half quick: 300 g of each on 10 m². */
    @Test
    void a_meal_at_first_is_followed_by_the_quick_feed() {
        Feed horn = Data.read(
                "{\"id\": \"horn\", \"name\": \"horn\", \"tags\": [\"organic-nitrogen\"], \"analysis\": {\"N\": 10}}",
                new ArrayList<>());
        Budget budget = year(new Nutrients(6, 0, 0, 0), Budget.Counting.NOTHING, 0, horn, NITROGEN);

        assertThat(budget.dressings()).extracting(FeedPlan::words).containsExactly("300 g of horn",
                "300 g of nitrogen");
        assertThat(budget.dressings()).extracting(FeedPlan::number).containsExactly(0, 1);
        assertThat(budget.dressings()).extracting(FeedPlan::when).first().isEqualTo("at bud burst");
    }

    @Test
    void what_a_dressing_on_peat_cannot_hold_is_said_with_its_measure() {
        Budget peat = Budget.of(Data.TABLES, need(new Nutrients(14, 0, 0, 0), Nutrient.values()),
                Budget.Counting.NOTHING, Data.TABLES.timing("ribes"), Optional.of("peat"), 0,
                new Choice(List.of(NITROGEN), List.of()), TEN_M2);

        assertThat(peat.missing())
                .containsExactly("8 g/m² N are not given: a dressing holds at most 3 g/m² of nitrogen here; another"
                        + " would come too late.");
    }

    /** 8 g N in 114 g/m² of 7-7-7 bring 8 of 12 g K2O: more of it would overdo the nitrogen. */
    @Test
    void a_compound_that_stops_at_its_nitrogen_says_so() {
        assertThat(year(new Nutrients(8, 4, 12, 0), Budget.Counting.NOTHING, 0, Data.plain("even", 7, 7, 7)).missing())
                .singleElement().asString()
                .contains("K2O are not given: more of these materials would bring too much of others");
    }

    /** No more than 98 g/m² of ash a year: where 90 were given, 8 are left. */
    @Test
    void what_was_given_of_a_material_counts_against_its_most() {
        Feed ash = Data.feed("wood-ash");
        Budget first = year(new Nutrients(0, 0, 12, 0), Budget.Counting.NOTHING, 0, ash);
        Budget later = year(new Nutrients(0, 0, 12, 0), new Budget.Counting(Nutrients.NONE, Nutrients.NONE,
                new Nutrients(0, 0, 5.4, 0), Map.of("wood-ash", 90.0)), 0, ash);

        assertThat(first.next().orElseThrow().totalGrams()).isEqualTo(1000);
        assertThat(later.next().orElseThrow().totalGrams()).isEqualTo(80);
        assertThat(first.missing()).singleElement().asString().contains("more of it in a year harms");
    }

    /** Half the smallest dressing is told as too little to weigh; 200 g/m² of 10-0-1 bring just 2 g K2O too many. */
    @Test
    void what_is_too_little_and_what_is_beyond_is_told_from_its_bound_on() {
        assertThat(year(new Nutrients(0.5, 0, 0, 0), Budget.Counting.NOTHING, 0, NITROGEN).notes())
                .containsExactly("0.5 g/m² N are too little to weigh out; they may wait for the next season.");
        assertThat(year(new Nutrients(0.4, 0, 0, 0), Budget.Counting.NOTHING, 0, NITROGEN).notes()).isEmpty();
        assertThat(year(new Nutrients(10, 0, 0, 0), Budget.Counting.NOTHING, 0, Data.plain("bit", 10, 0, 2)).notes())
                .containsExactly("2 g/m² K2O come with it beyond the need.");
    }

    @Test
    void a_gram_is_weighed_and_less_is_not() {
        List<Recipe.Part> parts = List.of(new Recipe.Part(NITROGEN, 0.1), new Recipe.Part(POTASH, 0.04));
        FeedPlan plan = FeedPlan.of(0, "now", parts, 0, TEN_M2);

        assertThat(plan.words()).isEqualTo("1 g of nitrogen");
        assertThat(FeedPlan.of(0, "now", parts, 1, TEN_M2).parts()).isEmpty();
        assertThat(Recipe.of(parts).amount(POTASH)).isEqualTo(0.04);
        assertThat(new Nutrients(1, 2, 3, 4).times(new Nutrients(0.5, 0.5, 0.5, 0.5)))
                .isEqualTo(new Nutrients(0.5, 1, 1.5, 2));
        assertThat(Data.feed("garden-compost").givesNitrogen()).isFalse();
    }

    /** Where a crop may not get the meal, ash need not fear it. */
    @Test
    void ash_stands_back_for_what_the_crop_may_get() {
        FeedingProfile usual = Data.profile("redcurrant");
        FeedingProfile without = new FeedingProfile(usual.targetPh(), false, Optional.empty(), Optional.empty(),
                usual.schools(), List.of(), Map.of(), "ribes", Optional.empty(),
                List.of(new FeedingProfile.Excluded("organic-nitrogen", "no meals here.", List.of())));

        assertThat(Choice
                .of(List.of(Data.feed("wood-ash"), Data.feed("dried-blood")), without, 12, OptionalDouble.empty(), 7)
                .allowed()).containsExactly(Data.feed("wood-ash"));
    }

    /** 6 g of quick nitrogen alone may be had again in May; the slow meal and the manure of the first dressing not. */
    @Test
    void the_second_dressing_takes_the_quick_feed_if_one_is_kept() {
        Feed manure = FeedingEdgesTest.heap("\"tags\": [\"manure\"]}");

        assertThat(year(new Nutrients(6, 0, 0, 0), Budget.Counting.NOTHING, 1, meal(), NITROGEN).next().orElseThrow()
                .words()).isEqualTo("600 g of nitrogen");
        assertThat(year(new Nutrients(6, 0, 0, 0), Budget.Counting.NOTHING, 1, manure).dressings()).isEmpty();
    }
}

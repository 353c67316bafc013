package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plants in tubs, and ground rich in humus. */
class TubFeedTest {
    private static Budget pot(double litres, double givenN, String... feeds) {
        NeedCase.Ground ground = new NeedCase.Ground(0.07, 1, 0);
        return TubFeed.budget(Data.TABLES, Need.inTub(Data.TABLES, litres, ground),
                Budget.Counting.of(Nutrients.NONE, Nutrients.NONE.withN(givenN / 0.07)),
                new Choice(List.of(feeds).stream().map(Data::feed).toList(), List.of()), Data.TABLES.timing("tub"),
                ground);
    }

    private static double nitrogen(Budget budget) { return budget.dressed().n() * budget.ground().areaM2(); }

    /** Clark and Zheng 2020: 4.4 to 7.3 g N in a pot of about 19 l did best; 13 g and more harmed. */
    @ParameterizedTest
    @ValueSource(strings = {"ammonium-sulphate", "general-10-10-10"})
    void a_pot_gets_what_did_best_in_the_trial(String feed) {
        Budget budget = pot(19, 0, feed);

        assertThat(nitrogen(budget)).isBetween(4.4, 7.3);
        assertThat(budget.dressings()).hasSize(4)
                .allSatisfy(dressing -> assertThat(dressing.gives().n()).isLessThan(budget.need().gPerM2().n() / 3));
        assertThat(budget.notes()).singleElement().asString().contains("A week's part").contains(" g a plant");
    }

    @Test
    void what_was_given_is_not_given_again() {
        assertThat(pot(19, 2.8, "ammonium-sulphate").dressings()).hasSize(2);
        assertThat(pot(19, 5.7, "ammonium-sulphate").dressings()).isEmpty();
        assertThat(pot(19, 5.7, "ammonium-sulphate").notes()).isEmpty();
    }

    @Test
    void the_part_of_a_week_is_a_quarter_of_four_and_for_one_plant() {
        Budget budget = pot(38, 0, "ammonium-sulphate");

        assertThat(budget.dressings()).extracting(FeedPlan::when).startsWith("weeks 1 to 4", "weeks 5 to 8");
        // 38 l × 0.3 g N over 16 weeks at 21 % N is 3.4 g a week; four weeks are weighed as 14 g
        assertThat(budget.dressings().get(0).totalGrams()).isEqualTo(14);
        assertThat(budget.notes().get(0)).contains(": 3.5 g a plant");
    }

    /** Clark and Zheng 2020: their feed was 15N-3.9P-9.9K, elements, so 5.7 g N came with 3.4 g P2O5 and 4.5 g K2O. */
    @Test
    void phosphate_and_potash_of_the_trial_are_told_where_the_feed_brings_none() {
        assertThat(pot(19, 0, "ammonium-sulphate").missing()).singleElement().asString()
                .contains("3.42 g P2O5 and 4.56 g K2O");
        assertThat(pot(19, 0, "general-10-10-10").missing()).isEmpty();
    }

    @Test
    void slow_meals_do_not_feed_a_tub() {
        Budget budget = pot(19, 0, "hoof-and-horn", "sulphate-of-potash");

        assertThat(budget.dressings()).isEmpty();
        assertThat(budget.missing()).singleElement().asString().contains("quick feed");
    }

    /** Bavarian garden academy: over 4 % humus a start of a quarter of the table. */
    @ParameterizedTest
    @CsvSource({"blackcurrant, rb209, 14", "redcurrant, rb209, 10"})
    void ground_rich_in_humus_gets_a_quarter_of_the_nitrogen(String crop, String school, double mineral) {
        FeedingProfile profile = Data.profile(crop);
        NeedCase.Soil soil = Data.soil(NeedCase.Soil.UNKNOWN, "loam");
        NeedCase asked = NeedCase.of(new NeedCase.Ground(9, 4, 0));
        NeedCase.Soil humus = new NeedCase.Soil(soil.texture(), soil.phosphorus(), soil.potassium(), soil.magnesium(),
                true);

        assertThat(need(profile, school, asked.withSoil(soil)).gPerM2().n()).isEqualTo(mineral);
        Need rich = need(profile, school, asked.withSoil(humus));
        assertThat(rich.gPerM2().n()).isCloseTo(mineral / 4, within(1e-9));
        assertThat(rich.gPerM2().k2o()).isEqualTo(12);
        assertThat(rich.lines()).anyMatch(line -> line.endsWith("ground rich in humus"));
        assertThat(rich.sources()).contains("bavaria-garden-feeding");
    }

    /** A table by age is of the crop, whatever the ground; blueberries grow in peat. */
    @Test
    void a_table_by_age_is_left_as_it_is() {
        FeedingProfile blueberry = Data.profile("blueberry");
        NeedCase asked = NeedCase.of(new NeedCase.Ground(9, 4, 0)).withAge(8);

        assertThat(need(blueberry, "michigan",
                asked.withSoil(new NeedCase.Soil(Optional.of("peat"), NeedCase.Soil.UNKNOWN.phosphorus(),
                        NeedCase.Soil.UNKNOWN.potassium(), NeedCase.Soil.UNKNOWN.magnesium(), true)))
                .gPerM2()).isEqualTo(need(blueberry, "michigan", asked).gPerM2());
    }

    private static Need need(FeedingProfile profile, String school, NeedCase asked) {
        return Need.of(Data.TABLES, profile, profile.school(school).orElseThrow(), asked);
    }

    /** Clark and Zheng 2020: 0.3 g N a litre; 19 l hold 5.7 g. */
    @Test
    void the_need_of_a_tub_is_told_by_its_litres() {
        Need need = Need.inTub(Data.TABLES, 19, new NeedCase.Ground(0.5, 1, 0));

        assertThat(need.gPerM2().n()).isCloseTo(11.4, within(1e-9));
        assertThat(need.lines().get(0)).startsWith("nitrogen 5.7 g in 19 l of mix: 0.3 g/l");
    }
}

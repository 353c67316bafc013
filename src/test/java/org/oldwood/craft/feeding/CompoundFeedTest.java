package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A year fed with one compound alone: all of its nitrogen is given, and what comes with it is told. */
class CompoundFeedTest {
    private static Budget year(String crop, String school, String material) {
        FeedingProfile profile = Data.profile(crop);
        NeedCase asked = NeedCase.of(new NeedCase.Ground(9, 4, 0)).withSoil(Data.soil(NeedCase.Soil.UNKNOWN, "loam"));
        return Budget.of(Data.TABLES, Need.of(Data.TABLES, profile, profile.school(school).orElseThrow(), asked),
                Budget.Counting.NOTHING, Data.TABLES.timing(profile.timing()), Optional.empty(), 0,
                new Choice(List.of(Data.feed(material)), List.of()), asked.ground());
    }

    /** Penn State, home fruit: 6 to 8 oz of 10-10-10 a bush. */
    @Test
    void a_bush_gets_what_the_school_prints_of_its_own_compound() {
        Budget budget = year("redcurrant", "penn-state", "general-10-10-10");

        assertThat(budget.dressings().stream().mapToDouble(FeedPlan::totalGrams).sum() / 4).isBetween(6 * 28.35,
                8 * 28.35);
        assertThat(budget.missing()).isEmpty();
        assertThat(budget.notes()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"blood-fish-bone", "general-7-7-7", "general-10-10-10"})
    void the_second_dressing_does_not_give_up(String material) {
        Budget budget = year("blackcurrant", "rb209", material);

        assertThat(budget.need().gPerM2().n()).isEqualTo(14);
        assertThat(budget.dressings()).hasSize(2);
        assertThat(budget.dressed().n()).isCloseTo(14, within(0.5));
        assertThat(budget.missing()).noneMatch(line -> line.contains(" N "));
    }

    /** What a limit cuts off is said with the limit, and goes on the shopping list. */
    @ParameterizedTest
    @CsvSource({"poultry-pellets, more of it than anybody gives", "monoammonium-phosphate, too much of others"})
    void what_a_limit_cuts_off_is_missing_for_a_true_reason(String material, String reason) {
        Budget budget = year("blackcurrant", "rb209", material);

        assertThat(budget.missing()).anyMatch(line -> line.contains(" N are not given") && line.contains(reason))
                .anyMatch(line -> line.contains("keep a feed that brings nitrogen alone"));
    }

    /** Half the potash of a year is in the mulch to come: only the other half is weighed. */
    @Test
    void the_mulch_to_come_counts_before_anything_is_weighed() {
        Budget plain = year("redcurrant", "rb209", "sulphate-of-potash");
        Budget mulched = Budget.of(Data.TABLES, plain.need(),
                new Budget.Counting(Nutrients.NONE, new Nutrients(0, 0, 6, 0), Nutrients.NONE, Map.of()),
                plain.timing(), Optional.empty(), 0, plain.choice(), plain.ground());

        assertThat(plain.dressed().k2o()).isCloseTo(12, within(0.5));
        assertThat(mulched.dressed().k2o()).isCloseTo(6, within(0.5));
        assertThat(mulched.lines()).contains("the mulch that is to be laid this season brings: K2O 6 g/m²");
    }

    /** Wood ash is alkaline and drives ammonia off feeds given with it, as lime does (extension-wood-ash-1991). */
    @ParameterizedTest
    @CsvSource({"ammonium-sulphate, 1", "dried-blood, 1", "horse-manure, 1", "calcium-ammonium-nitrate, 2",
            "sulphate-of-potash, 2"})
    void ash_goes_with_nothing_that_holds_ammonia(String beside, int allowed) {
        Choice choice = Choice.of(List.of(Data.feed("wood-ash"), Data.feed(beside)), Data.profile("redcurrant"), 12,
                OptionalDouble.empty(), 7);

        assertThat(choice.allowed()).hasSize(allowed).contains(Data.feed(beside));
        assertThat(choice.refused()).hasSize(2 - allowed);
    }
}

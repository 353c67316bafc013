package org.oldwood.craft.cuttings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.craft.cuttings.parent.ParentWood;
import org.oldwood.craft.cuttings.survival.Kilograms;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.SurvivalChain;
import org.oldwood.craft.cuttings.survival.UncertainRate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

class StrikePlanTest {
    private static final Course COURSE = Crafted.course("blackcurrant", "stool", "hardwood", "hard");
    private static final Survival SURVIVAL = Crafted.survival(COURSE);

    private static StrikePlan plan(StrikePlan.Want want, String asOf) {
        return StrikePlan.of(want, COURSE, SURVIVAL, Crafted.north("blackcurrant", asOf));
    }

    @Property(tries = 40)
    void backwards_then_forwards_meets_the_wanted_sureness(@ForAll @IntRange(min = 1, max = 40) int wanted,
            @ForAll @DoubleRange(min = 0.5, max = 0.97) double sure) {
        StrikePlan plan = plan(plants(wanted, Crafted.north(2030), sure), "2026-10-01");

        int number = plan.number().orElseThrow();
        Forecast forward = forward(number, plan);
        assertThat(Urn.atLeast(forward.plants(), wanted)).isGreaterThanOrEqualTo(sure - 1e-12);
        assertThat(Urn.atLeast(forward.plants(), wanted)).isCloseTo(plan.chance(), within(1e-9));
        assertThat(Urn.atLeast(SURVIVAL.whole().from(number - 1), wanted)).isLessThan(sure + 1e-12);
        assertThat(forward.line().firstPick()).isLessThanOrEqualTo(Crafted.north(2030));
    }

    @Property(tries = 40)
    void kilograms_wanted_are_met_forwards_too(@ForAll @DoubleRange(min = 0.5, max = 40) double kg,
            @ForAll @DoubleRange(min = 0.5, max = 0.9) double sure) {
        Season by = Crafted.north(2030);
        StrikePlan plan = plan(kilograms(kg, by, sure), "2026-10-01");

        Forecast forward = forward(plan.number().orElseThrow(), plan);
        double below = 1 - sure;
        // the (1 − sure) point of the crop of that season lies at or above what was wanted
        Kilograms crop = new Kilograms(forward.plants(),
                new PlantYield(COURSE.perPlant().times(Crafted.crop(forward, by).share())));
        assertThat(crop.quantile(below + 1e-9)).isGreaterThanOrEqualTo(kg - 1e-6);
    }

    private static Forecast forward(int number, StrikePlan plan) {
        LotCounts lot = LotCounts.struck(number, plan.strikeFrom().date());
        return Forecast.of(lot, COURSE, SURVIVAL, Crafted.north("blackcurrant", lot.struckOn().toString()));
    }

    @ParameterizedTest
    @CsvSource({
            // the last window whose plants bear: struck in the winter before 2028, 2030 when cut hard
            "2026-11-20, 2030, 2028-03-10", "2026-11-20, 2029, 2027-03-10", "2028-03-10, 2030, 2028-03-10",
            "2028-03-11, 2031, 2029-03-10"})
    void the_latest_strike_date_is_the_end_of_the_last_window_that_bears(String asOf, int by, String latest) {
        StrikePlan plan = plan(plants(10, Crafted.north(by), 0.9), asOf);

        assertThat(plan.latest().orElseThrow().date()).isEqualTo(LocalDate.parse(latest));
        assertThat(plan.isTooLate()).isFalse();
    }

    @Test
    void too_late_says_the_earliest_season() {
        StrikePlan plan = plan(plants(10, Crafted.north(2030), 0.9), "2028-03-11");

        assertThat(plan.isTooLate()).isTrue();
        assertThat(plan.number()).isEmpty();
        assertThat(plan.earliest().label()).isEqualTo("2031");
        assertThat(plan.strikeFrom().date()).isEqualTo(LocalDate.parse("2028-11-10"));
    }

    @Test
    void an_open_window_means_now() {
        StrikePlan plan = plan(plants(10, Crafted.north(2030), 0.9), "2027-01-15");

        assertThat(plan.strikeFrom().date()).isEqualTo(LocalDate.parse("2027-01-15"));
        assertThat(plan.strikeBy().date()).isEqualTo(LocalDate.parse("2027-03-10"));
    }

    @Test
    void in_the_south_the_season_wanted_is_a_summer_over_new_year() {
        Season by = new Season(2030, Hemisphere.SOUTH);

        StrikePlan plan = StrikePlan.of(plants(10, by, 0.9), COURSE, SURVIVAL,
                Crafted.south("blackcurrant", "2026-06-01"));

        assertThat(by.label()).isEqualTo("2029-30");
        assertThat(plan.earliest().label()).isEqualTo("2028-29");
        assertThat(plan.latest().orElseThrow().date()).isEqualTo(LocalDate.parse("2027-09-10"));
    }

    /** The arithmetic of a published rule: N / (rooted x survival), rounded up, by expectation. */
    @Test
    void by_expectation_thirteen_blackcurrants_make_ten_where_nothing_else_is_lost() {
        // 10 / 0.77 = 12.99 (asanica-2017); with 3 of 8 kept (growingfruit-60518) 34.6
        SurvivalChain sure = new SurvivalChain(List.of(UncertainRate.of(0.77, 1e9)));

        int fewest = sure.fewest(k -> k, 10, 100).orElseThrow();

        assertThat(fewest).isEqualTo(13);
        SurvivalChain hard = new SurvivalChain(List.of(UncertainRate.of(0.77, 20), UncertainRate.of(0.375, 8)));
        assertThat(hard.fewest(k -> k, 10, 100).orElseThrow()).isEqualTo(35);
    }

    @Test
    void what_no_sensible_number_gives_is_not_promised() {
        Course gooseberry = Crafted.course("gooseberry", "leg", "disbudded");
        StrikePlan.Want want = plants(400, Crafted.north(2032), 0.99);

        StrikePlan plan = StrikePlan.of(want, gooseberry, Crafted.survival(gooseberry),
                Crafted.north("gooseberry", "2026-10-01"));

        assertThat(plan.number()).isEmpty();
        assertThat(plan.isTooLate()).isFalse();
    }

    @Test
    void a_certainty_cannot_be_wanted() {
        assertThatThrownBy(() -> plants(10, Crafted.north(2030), 1)).hasMessageContaining("between 0 and 1");
    }

    @Test
    void room_and_wood_are_reckoned() {
        NurseryBed bed = NurseryBed.of(20, COURSE.method().measures()).orElseThrow();

        assertThat(bed.rowM()).isCloseTo(3.0, within(1e-9));
        assertThat(bed.areaM2().orElseThrow()).isCloseTo(1.2, within(1e-9));
        assertThat(ParentWood.shootCm(3, 0.25, 20)).isCloseTo(80, within(1e-9));
        assertThat(ParentWood.shootCm(1, 0, 20)).isCloseTo(20, within(1e-9));
        assertThat(ParentWood.forTwoCm(COURSE.method().measures()).orElseThrow()).isCloseTo(2 * 22 / 0.75,
                within(1e-9));
    }

    private static StrikePlan.Want plants(int number, Season by, double sure) {
        return new StrikePlan.Want(OptionalInt.of(number), OptionalDouble.empty(), by, sure);
    }

    private static StrikePlan.Want kilograms(double kg, Season by, double sure) {
        return new StrikePlan.Want(OptionalInt.empty(), OptionalDouble.of(kg), by, sure);
    }
}

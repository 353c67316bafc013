package org.oldwood.craft.cuttings.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Crafted;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LikelyDay;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.PastLot;
import org.oldwood.craft.cuttings.PlantYield;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.crop.Range;
import org.oldwood.season.Season;

/** Ends, shares and signs of the sums of cuttings, by hand; faults put into them went unnoticed before. */
class CuttingsEdgesTest {
    private static final LocalDate STRUCK = LocalDate.of(2026, 11, 20);
    private static final Course HARD = Crafted.course("blackcurrant", "stool", "hardwood", "hard");
    private static final Course UNCUT = Crafted.course("blackcurrant", "stool", "hardwood", "none");
    private static final PlantYield ONE_TO_FOUR = new PlantYield(new Range(1, 2, 4));

    private static Forecast forecast(LotCounts lot) {
        return Forecast.of(lot, HARD, Crafted.survival(HARD), Crafted.north("blackcurrant", "2026-11-20"));
    }

    /** Chances of 0, 1 and 2 plants: a quarter, a half, a quarter. */
    @ParameterizedTest
    @CsvSource({"0.1, 0", "0.25, 0", "0.26, 1", "0.75, 1", "0.76, 2", "1, 2"})
    void a_quantile_is_the_least_number_that_reaches_the_share(double share, int expected) {
        Spread spread = new Spread(new double[]{0.25, 0.5, 0.25});

        assertThat(spread.quantile(share)).isEqualTo(expected);
    }

    /** Half lies below the middle yield, spread evenly from the least; half above. */
    @ParameterizedTest
    @CsvSource({"0.9, 0", "1, 0", "1.5, 0.25", "2, 0.5", "3, 0.75", "4, 1", "4.1, 1"})
    void a_yield_is_spread_evenly_on_both_sides_of_its_middle(double kg, double expected) {
        assertThat(ONE_TO_FOUR.chanceBelow(kg)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void a_yield_of_one_size_is_met_or_not() {
        PlantYield three = new PlantYield(new Range(3, 3, 3));

        assertThat(three.chanceBelow(3)).isZero();
        assertThat(three.chanceBelow(3.01)).isEqualTo(1);
        assertThat(new PlantYield(new Range(0, 0, 0)).chanceBelow(0)).isZero();
    }

    @Test
    void kilograms_of_one_plant_are_those_of_its_yield() {
        Kilograms kg = new Kilograms(new Spread(new double[]{0, 1}), ONE_TO_FOUR);

        assertThat(kg.mean()).isEqualTo(2);
        assertThat(kg.atLeast(3)).isCloseTo(0.25, within(1e-12));
        assertThat(kg.quantile(0.1)).isCloseTo(1.2, within(1e-9));
        assertThat(kg.quantile(0.5)).isCloseTo(2, within(1e-9));
        assertThat(kg.quantile(0.9)).isCloseTo(3.6, within(1e-9));
        assertThat(Kilograms.chance(3, ONE_TO_FOUR, 0)).isEqualTo(1);
        assertThat(Kilograms.chance(0, ONE_TO_FOUR, 0)).isEqualTo(1);
        assertThat(Kilograms.chance(0, ONE_TO_FOUR, 1)).isZero();
    }

    /** A fifth of the lots have no plant: 0.6 = 0.2 + 0.8 × a half. */
    @Test
    void lots_without_a_plant_bear_nothing() {
        Kilograms kg = new Kilograms(new Spread(new double[]{0.2, 0.8}), ONE_TO_FOUR);

        assertThat(kg.quantile(0.1)).isZero();
        assertThat(kg.quantile(0.2)).isZero();
        assertThat(kg.quantile(0.6)).isCloseTo(2, within(1e-9));
    }

    @Test
    void days_are_told_on_their_side_of_the_stage() {
        LikelyDay around = new LikelyDay(STRUCK, 7, "leaf fall");

        assertThat(around.plusDays(0)).isEqualTo(around);
        assertThat(around.plusDays(3)).isEqualTo(new LikelyDay(STRUCK.plusDays(3), 7, "3 days after leaf fall"));
        assertThat(around.plusDays(-2)).isEqualTo(new LikelyDay(STRUCK.minusDays(2), 7, "2 days before leaf fall"));
    }

    /** 10, 50 and 100 % in the second to fourth season where cut hard; left uncut a season sooner. */
    @Test
    void left_uncut_the_crop_comes_a_season_sooner() {
        assertThat(HARD.share(0)).isZero();
        assertThat(HARD.share(1)).isZero();
        assertThat(HARD.share(2)).isCloseTo(0.1, within(1e-12));
        assertThat(UNCUT.share(0)).isZero();
        assertThat(UNCUT.share(1)).isCloseTo(0.1, within(1e-12));
        assertThat(UNCUT.share(2)).isCloseTo(0.5, within(1e-12));
        assertThat(HARD.firstPick()).isEqualTo(2);
        assertThat(HARD.fullCrop()).isEqualTo(4);
        assertThat(UNCUT.firstPick()).isEqualTo(1);
        assertThat(UNCUT.fullCrop()).isEqualTo(3);
    }

    @Test
    void every_figure_of_a_season_has_its_share_of_the_full_crop() {
        Forecast forecast = forecast(Crafted.lot(12, "2026-11-20"));
        Forecast.SeasonCrop full = forecast.fullCrop();
        Season second = Crafted.north(2029);

        Forecast.SeasonCrop tenth = Crafted.crop(forecast, second);

        assertThat(tenth.expectedKg()).isCloseTo(full.expectedKg() / 10, within(1e-12));
        assertThat(tenth.lowKg()).isCloseTo(full.lowKg() / 10, within(1e-12));
        assertThat(tenth.middleKg()).isCloseTo(full.middleKg() / 10, within(1e-12));
        assertThat(tenth.highKg()).isCloseTo(full.highKg() / 10, within(1e-12));
        assertThat(full.lowKg()).isPositive().isLessThan(full.highKg());
        assertThat(forecast.expectedKg(second)).isCloseTo(tenth.expectedKg(), within(1e-12));
        assertThat(forecast.crops()).extracting(each -> each.season().year()).containsExactly(2028, 2029, 2030, 2031);
    }

    @Test
    void a_rate_has_lived_above_nothing_and_died_from_nothing_up() {
        assertThat(new UncertainRate(1, 0).isCertain()).isTrue();
        assertThatThrownBy(() -> new UncertainRate(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UncertainRate(1, -0.1)).isInstanceOf(IllegalArgumentException.class);
        UncertainRate even = new UncertainRate(2, 3);
        assertThat(even.after(0, 4)).isEqualTo(new UncertainRate(2, 7));
        assertThat(even.after(4, 4)).isEqualTo(new UncertainRate(6, 3));
        assertThatThrownBy(() -> even.after(4.1, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> even.after(-0.1, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThat(even.late(1)).isEqualTo(UncertainRate.CERTAIN);
    }

    @Test
    void a_lot_was_counted_on_a_later_day_or_with_fewer() {
        LotCounts struck = LotCounts.struck(12, STRUCK);

        assertThat(struck.wasCounted()).isFalse();
        assertThat(struck.counted(12, STRUCK).wasCounted()).isFalse();
        assertThat(struck.counted(11, STRUCK).wasCounted()).isTrue();
        assertThat(struck.counted(12, STRUCK.plusDays(1)).wasCounted()).isTrue();
        assertThat(struck.plantedOut(9, STRUCK.plusYears(1)).liftedOn()).contains(STRUCK.plusYears(1));
        assertThat(struck.lifted(9, STRUCK.plusDays(350)).plantedOut(9, STRUCK.plusYears(1)).liftedOn())
                .contains(STRUCK.plusDays(350));
    }

    /** The part of a phase that is over, by its days. */
    @Test
    void a_lot_stands_as_far_in_its_phase_as_the_days_say() {
        LotCounts lot = Crafted.lot(12, "2026-11-20");
        Timeline line = forecast(lot).line();
        LocalDate tells = line.tells().date();
        LocalDate rooted = line.rooted().date();
        LocalDate lift = line.liftFrom().date();

        assertThat(at(lot, tells.minusDays(9))).isEqualTo(new Forecast.Position(Phase.ROOTING, 0));
        assertThat(at(lot, tells.plusDays(6)))
                .isEqualTo(new Forecast.Position(Phase.ROOTING, 6.0 / ChronoUnit.DAYS.between(tells, rooted)));
        assertThat(at(lot, rooted)).isEqualTo(new Forecast.Position(Phase.NURSERY, 0));
        assertThat(at(lot, rooted.plusDays(6)))
                .isEqualTo(new Forecast.Position(Phase.NURSERY, 6.0 / ChronoUnit.DAYS.between(rooted, lift)));
        assertThat(at(lot, lift.plusDays(6))).isEqualTo(new Forecast.Position(Phase.NURSERY, 1));
    }

    private static Forecast.Position at(LotCounts lot, LocalDate day) {
        return forecast(lot.counted(10, day)).position();
    }

    /**
     * 20 struck, 18 rooted, 9 lifted, 3 of 4 established: each phase learns its own count. Plants of a lot share their
     * luck, so n count as n / (1 + (n − 1) r), with r the rate's correlation.
     */
    @Test
    void a_past_lot_teaches_each_phase_its_own_count() {
        Survival before = Crafted.survival(HARD);
        Survival after = before.learning(
                List.of(new PastLot(20, OptionalInt.of(18), OptionalInt.of(9), OptionalInt.of(4), OptionalInt.of(3))));

        learnt(before, after, Phase.ROOTING, 18, 20);
        learnt(before, after, Phase.NURSERY, 9, 18);
        learnt(before, after, Phase.PLANTING_OUT, 3, 4);
    }

    @Test
    void a_lot_that_died_teaches_its_rooting_alone() {
        Survival before = Crafted.survival(HARD);
        Survival after = before.learning(List
                .of(new PastLot(20, OptionalInt.of(0), OptionalInt.of(0), OptionalInt.empty(), OptionalInt.empty())));

        learnt(before, after, Phase.ROOTING, 0, 20);
        assertThat(after.rate(Phase.NURSERY)).isEqualTo(before.rate(Phase.NURSERY));
        assertThat(after.rate(Phase.PLANTING_OUT)).isEqualTo(before.rate(Phase.PLANTING_OUT));
    }

    private static void learnt(Survival before, Survival after, Phase phase, double alive, double outOf) {
        UncertainRate rate = before.rate(phase);
        double counts = 1 / (1 + (outOf - 1) / (rate.weight() + 1));
        assertThat(after.rate(phase).lived()).as(phase.name()).isCloseTo(rate.lived() + alive * counts, within(1e-9));
        assertThat(after.rate(phase).died()).as(phase.name()).isCloseTo(rate.died() + (outOf - alive) * counts,
                within(1e-9));
    }
}

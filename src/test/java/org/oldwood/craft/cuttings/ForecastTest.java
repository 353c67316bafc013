package org.oldwood.craft.cuttings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.craft.cuttings.survival.Survival;

class ForecastTest {
    private static final String STRUCK = "2026-11-20";
    private static final Course HARD = Crafted.course("blackcurrant", "stool", "hardwood", "hard");
    private static final Course UNCUT = Crafted.course("blackcurrant", "stool", "hardwood", "none");
    private static final Survival SURVIVAL = Crafted.survival(HARD);
    private static final Setting HERE = Crafted.north("blackcurrant", STRUCK);

    private static Forecast forecast(LotCounts lot) { return Forecast.of(lot, HARD, SURVIVAL, HERE); }

    @Test
    void a_dozen_blackcurrant_cuttings() {
        Forecast forecast = forecast(Crafted.lot(12, STRUCK));

        // 12 x 0.77 x 0.90 x 0.95, the printed rates and the two remembered ones
        assertThat(forecast.plants().mean()).isCloseTo(12 * 0.77 * 0.9 * 0.95, within(1e-9));
        assertThat(forecast.rooted().mean()).isCloseTo(12 * 0.77, within(1e-9));
        assertThat(Crafted.crop(forecast, Crafted.north(2028)).expectedKg()).isZero();
        // 10 % of 3.5 kg in the second season, 50 % in the third, all in the fourth
        assertThat(Crafted.crop(forecast, Crafted.north(2029)).expectedKg()).isCloseTo(forecast.plants().mean() * 0.35,
                within(1e-9));
        assertThat(Crafted.crop(forecast, Crafted.north(2031)).expectedKg()).isCloseTo(forecast.plants().mean() * 3.5,
                within(1e-9));
    }

    @Test
    void left_uncut_they_bear_about_two_years_after_striking_and_cut_hard_a_year_later() {
        Timeline uncut = Forecast.of(Crafted.lot(12, STRUCK), UNCUT, SURVIVAL, HERE).line();
        Timeline hard = forecast(Crafted.lot(12, STRUCK)).line();

        long days = uncut.struckOn().until(uncut.ripe(uncut.firstPick()).date()).toTotalMonths();
        assertThat(days).isBetween(18L, 26L);
        assertThat(hard.firstPick()).isEqualTo(uncut.firstPick().plus(1));
    }

    @Property(tries = 60)
    void more_struck_never_means_fewer(@ForAll @IntRange(min = 1, max = 120) int struck,
            @ForAll @IntRange(min = 1, max = 9) int more) {
        Forecast few = forecast(Crafted.lot(struck, STRUCK));
        Forecast many = forecast(Crafted.lot(struck + more, STRUCK));

        assertThat(many.plants().mean()).isGreaterThan(few.plants().mean());
        assertThat(many.fullCrop().expectedKg()).isGreaterThan(few.fullCrop().expectedKg());
        for (double share : new double[]{0.1, 0.5, 0.9}) {
            assertThat(many.plants().quantile(share)).isGreaterThanOrEqualTo(few.plants().quantile(share));
        }
        for (int wanted = 0; wanted <= struck; wanted += 3) {
            assertThat(Urn.atLeast(many.plants(), wanted))
                    .isGreaterThanOrEqualTo(Urn.atLeast(few.plants(), wanted) - 1e-12);
        }
    }

    /** Whatever the day of the count: in winter, while rooting, in the nursery bed. */
    @Property(tries = 200)
    void a_count_above_what_was_expected_raises_the_forecast_and_one_below_lowers_it(
            @ForAll @IntRange(min = 1, max = 60) int struck, @ForAll @IntRange(min = 1, max = 350) int day,
            @ForAll @IntRange(min = 0, max = 60) int aliveOr) {
        int alive = Math.min(aliveOr, struck);
        LocalDate on = LocalDate.parse(STRUCK).plusDays(day);
        LotCounts lot = Crafted.lot(struck, STRUCK).counted(alive, on);

        Forecast after = forecast(lot);

        double before = forecast(Crafted.lot(struck, STRUCK)).plants().mean();
        double expected = struck * Crafted.share(SURVIVAL.whole())
                / Crafted.share(SURVIVAL.from(after.position().phase(), after.position().fraction()));
        if (alive > expected + 1e-9) {
            assertThat(after.plants().mean()).isGreaterThan(before);
        } else if (alive < expected - 1e-9) {
            assertThat(after.plants().mean()).isLessThan(before);
        } else {
            assertThat(after.plants().mean()).isCloseTo(before, within(1e-6));
        }
        assertThat(after.plants().mean()).isBetween(0.0, (double) alive);
        assertThat(after.plants().quantile(0.9)).isBetween(0, alive);
    }

    @Test
    void every_stage_of_the_count_leaves_less_to_lose() {
        LotCounts struck = Crafted.lot(12, STRUCK);
        double winter = mean(struck.counted(12, LocalDate.parse("2027-01-15")));
        double spring = mean(struck.counted(12, LocalDate.parse("2027-04-20")));
        double summer = mean(struck.counted(12, LocalDate.parse("2027-07-20")));
        double lifted = mean(struck.lifted(12, LocalDate.parse("2027-11-10")));
        LotCounts out = struck.plantedOut(12, LocalDate.parse("2027-11-10"));
        double standing = mean(out.counted(12, LocalDate.parse("2028-10-20")));

        assertThat(winter).isCloseTo(mean(struck), within(1e-9));
        assertThat(new double[]{winter, spring, summer, lifted, standing}).isSorted();
        assertThat(standing).isEqualTo(12);
    }

    private static double mean(LotCounts lot) { return forecast(lot).plants().mean(); }

    @Test
    void the_tenths_of_the_crop_agree_with_plants_times_yield_worked_out_by_hand() {
        // one sure plant: the yield's own tenths, 1.5 to 3.5 to 5 kg, half to either side
        LotCounts one = Crafted.lot(1, STRUCK).plantedOut(1, LocalDate.parse("2027-11-10"));
        Forecast forecast = forecast(one.counted(1, LocalDate.parse("2028-10-20")));

        assertThat(forecast.fullCrop().lowKg()).isCloseTo(1.5 + 0.2 * 2.0, within(1e-6));
        assertThat(forecast.fullCrop().middleKg()).isCloseTo(3.5, within(1e-6));
        assertThat(forecast.fullCrop().highKg()).isCloseTo(3.5 + 0.8 * 1.5, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 13})
    void more_alive_than_struck_or_fewer_than_none_is_refused(int alive) {
        LotCounts lot = Crafted.lot(12, STRUCK);

        assertThatThrownBy(() -> lot.counted(alive, LocalDate.parse("2027-07-01")))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("12");
    }
}

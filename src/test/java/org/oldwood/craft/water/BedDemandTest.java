package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.Basis;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;

/** A bed's coefficient follows the stages of its crops, in both hemispheres, and their age. */
class BedDemandTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final Crop CROP = new Crops(DOCUMENTS).get("blackcurrant");
    private static final WaterFigures FIGURES = WaterFigures.read(DOCUMENTS);
    private static final CropWater WATER = CropWater.of(CROP, FIGURES).orElseThrow();
    private static final MulchCover MULCH = MulchCover.of(FIGURES);

    /** Northern month and day of each stage that the coefficient hangs on. */
    private static final Map<Stage, int[]> DAYS = Map.of(Stage.BUD_BURST, new int[]{3, 20}, Stage.PETAL_FALL,
            new int[]{5, 20}, Stage.LEAF_FALL_BEGINS, new int[]{10, 5}, Stage.LEAF_FALL_DONE, new int[]{10, 31});

    private static final Stages STAGES = (crop, season, stage) -> new StageDate(
            season.day(DAYS.get(stage)[0], DAYS.get(stage)[1]), 0, Basis.SEEN, "a test's own", List.of());

    @Test
    void bare_in_winter_full_in_summer_and_between_on_a_straight_line() {
        double[] kc = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2000, List.of());

        assertThat(kc[index(2026, 2, 1)]).isEqualTo(0.30);
        assertThat(kc[index(2026, 7, 1)]).isEqualTo(1.05);
        // 9 April to 17 June is the rise: 69 days; 14 May is its 35th
        assertThat(kc[index(2026, 5, 14)]).isCloseTo(0.30 + 0.75 * 35 / 69, within(1e-9));
        assertThat(kc[index(2026, 10, 31)]).isCloseTo(0.50, within(1e-9));
        assertThat(kc[index(2026, 11, 1)]).isEqualTo(0.30);
    }

    @Test
    void the_south_has_the_same_curve_half_a_year_later() {
        double[] north = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2000, List.of());
        double[] south = series(Hemisphere.SOUTH, LocalDate.of(2026, 7, 1), 2000, List.of());

        for (int i = 0; i < 300; i++) {
            assertThat(south[i]).isCloseTo(north[i], within(0.06));
        }
    }

    @Test
    void a_bed_just_planted_draws_little_and_nothing_but_the_soil_before() {
        double[] grown = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2000, List.of());
        double[] young = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2026, List.of());
        double[] bare = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2028, List.of());

        int july = index(2026, 7, 1);
        assertThat(young[july]).isCloseTo(0.15 * 1.05 + 0.85 * 0.30, within(1e-9));
        double[] second = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2025, List.of());
        double cover = WATER.cover(2);
        assertThat(cover).isBetween(0.16, 0.99);
        assertThat(second[july]).isCloseTo(cover * 1.05 + (1 - cover) * 0.30, within(1e-9));
        assertThat(bare[july]).isCloseTo(0.30, within(1e-9));
        assertThat(young[july]).isLessThan(grown[july]);
    }

    @Test
    void mulch_counts_from_the_day_it_was_laid() {
        List<BedDemand.Laid> laid = List.of(new BedDemand.Laid(index(2026, 5, 1), 7.5));
        double[] open = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2000, List.of());
        double[] mulched = series(Hemisphere.NORTH, LocalDate.of(2026, 1, 1), 2000, laid);

        assertThat(mulched[index(2026, 4, 30)]).isEqualTo(open[index(2026, 4, 30)]);
        assertThat(mulched[index(2026, 5, 1)]).isLessThan(open[index(2026, 5, 1)]);
    }

    private static int index(int year, int month, int day) {
        return (int) (LocalDate.of(year, month, day).toEpochDay() - LocalDate.of(2026, 1, 1).toEpochDay());
    }

    private static double[] series(Hemisphere hemisphere, LocalDate first, int planted, List<BedDemand.Laid> laid) {
        double[] none = new double[400];
        CropCurves curves = new CropCurves(Days.measured(first, none, none), hemisphere, STAGES,
                CropCoefficient.TABLE_WIND);
        List<BedDemand.Planting> plantings = List.of(new BedDemand.Planting(CROP, WATER, 1, planted));
        return BedDemand.series(curves, plantings, MULCH, laid, 1);
    }

    @Test
    void seasons_are_told_apart_in_both_hemispheres() {
        double[] none = new double[800];
        CropCurves south = new CropCurves(Days.measured(LocalDate.of(2026, 4, 29), none, none), Hemisphere.SOUTH,
                STAGES, CropCoefficient.TABLE_WIND);

        assertThat(south.seasonYear(1)).isEqualTo(2026);
        assertThat(south.seasonYear(2)).isEqualTo(2027);
        assertThat(south.seasonYear(2 + 365)).isEqualTo(2028);
        assertThat(Season.containing(LocalDate.of(2026, 5, 1), Hemisphere.SOUTH).year()).isEqualTo(2027);
    }
}

package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.store.Documents;

/** The bundled figures of this craft can all be read and make sense. */
class WaterDataTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final WaterFigures FIGURES = WaterFigures.read(DOCUMENTS);
    private static final Soils SOILS = Soils.read(DOCUMENTS);

    @Test
    void every_crop_says_how_it_draws_water() {
        Crops crops = new Crops(DOCUMENTS);
        for (String id : crops.ids()) {
            Crop crop = crops.get(id);
            CropWater water = CropWater.of(crop, FIGURES).orElseThrow();
            assertThat(water.rootDepthM(1, 0.15)).as(id).isCloseTo(0.15, within(1e-9));
            assertThat(water.rootDepthM(30, 0.15)).isCloseTo(water.rootDepth().is(), within(1e-9));
            assertThat(water.cover(1)).isLessThan(water.cover(2));
            assertThat(water.cover(9)).isEqualTo(1);
            assertThat(water.critical()).isNotEmpty();
        }
        assertThat(DOCUMENTS.problems().list()).isEmpty();
    }

    @Test
    void roots_go_down_year_by_year() {
        CropWater water = blackcurrant();

        assertThat(List.of(1, 2, 3, 4, 5).stream().map(year -> water.rootDepthM(year, 0.15)))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(0.15, 0.20, 0.25, 0.30, 0.30);
    }

    @Test
    void the_coefficients_are_those_of_tables_12_17_and_22() {
        WaterFigures.Group berries = blackcurrant().group();

        assertThat(berries.single()).isEqualTo(new CropCoefficient(0.30, 1.05, 0.50));
        assertThat(berries.basal()).isEqualTo(new CropCoefficient(0.20, 1.00, 0.40));
        assertThat(berries.depletion().is()).isEqualTo(0.5);
    }

    @Test
    void finer_soils_hold_more_than_sand_and_stones_hold_nothing() {
        Soil sand = SOILS.find("sand").orElseThrow();
        Soil loam = SOILS.find("loam").orElseThrow();

        assertThat(loam.totalAvailableMm(0.3, 0)).isCloseTo(39, within(1e-9));
        assertThat(loam.totalAvailableMm(0.3, 0.5)).isCloseTo(19.5, within(1e-9));
        assertThat(sand.totalAvailableMm(1, 0)).isLessThan(loam.totalAvailableMm(1, 0));
        assertThat(loam.heldShare(0.25)).isCloseTo(1, within(1e-9));
        assertThat(loam.heldShare(0.12)).isCloseTo(0, within(1e-9));
    }

    @Test
    void every_texture_has_its_feel_and_the_classes_fill_the_scale() {
        for (String id : SOILS.ids()) {
            Soil soil = SOILS.find(id).orElseThrow();
            List<Soil.FeelClass> classes = SOILS.guide(soil).classes();
            assertThat(classes.get(0).low()).isZero();
            for (int i = 1; i < classes.size(); i++) {
                assertThat(classes.get(i).low()).isEqualTo(classes.get(i - 1).high());
            }
            assertThat(SOILS.guide(soil).find("moist").orElseThrow().low()).isEqualTo(0.5);
            assertThat(soil.fieldCapacity().is()).isGreaterThan(soil.wiltingPoint().is());
        }
        assertThat(DOCUMENTS.problems().list()).isEmpty();
    }

    @Test
    void the_guide_reads_seventy_percent_where_the_service_prints_it() {
        // USDA NRCS, Montana page: sandy loam, 1.0 in missing of 1.4 in, "70" percent depleted,
        // printed to the nearest ten
        BedWater foot = new BedWater(1.4 * 25.4, 0.5, 1, RoofWater.NONE, 0, 1);

        assertThat(1 - foot.heldShare(1.0 * 25.4)).isCloseTo(0.70, within(0.05));
    }

    @Test
    void surfaces_shed_what_they_say() {
        Surfaces surfaces = Surfaces.read(DOCUMENTS);

        RoofWater roof = surfaces.roof(surfaces.find("tiles").orElseThrow(), 20);

        assertThat(roof.litres(12 + surfaces.firstFlush().is())).isCloseTo(192, within(1e-9));
        assertThat(surfaces.ids()).contains("tiles", "corrugated-iron", "green");
        assertThat(DOCUMENTS.problems().list()).isEmpty();
    }

    @Test
    void every_figure_named_in_water_json_can_be_read() {
        List<Figure> figures = Stream.of("mulchCut", "mulchDepth", "mulchLasts", "shadeCut", "rootRadius", "rowWidth",
                "firstRootDepth", "accountSpread", "feelSpread", "probeSpread", "driftNotes", "wetThreshold",
                "ripeDose", "weeklyDeep").map(FIGURES::figure).toList();

        assertThat(figures).allMatch(figure -> figure.is() > 0);
        assertThat(DOCUMENTS.problems().list()).isEmpty();
    }

    @Test
    void mulch_wanes_and_thin_mulch_covers_less() {
        MulchCover mulch = MulchCover.of(FIGURES);

        assertThat(mulch.factor(10, 0)).isCloseTo(0.5, within(1e-9));
        assertThat(mulch.factor(2.5, 0)).isCloseTo(0.75, within(1e-9));
        assertThat(mulch.factor(10, 400)).isEqualTo(1);
        assertThat(mulch.factor(10, -1)).isEqualTo(1);
    }

    private static CropWater blackcurrant() {
        Crop crop = new Crops(DOCUMENTS).get("blackcurrant");
        return CropWater.of(crop, FIGURES).orElseThrow();
    }
}

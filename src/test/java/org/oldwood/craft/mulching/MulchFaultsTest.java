package org.oldwood.craft.mulching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.store.Documents;

/** Both sides of every bound of a mulch's arithmetic, by hand. */
class MulchFaultsTest {
    private static final MulchTables TABLES = MulchTables.read(Documents.bundled());
    private static final Mulch STRAW = TABLES.mulch("straw").orElseThrow();
    private static final Mulch COMPOST = TABLES.mulch("garden-compost").orElseThrow();

    private static MulchPlan plan(Mulch mulch, double coveredM2, double now, double wanted, double cubicMetres) {
        return new MulchPlan(mulch, coveredM2, now, wanted, 0, cubicMetres, List.of());
    }

    @ParameterizedTest
    @CsvSource({"0, 0 l", "0.0022, 3 l", "0.0056, 6 l", "0.0199, 20 l", "0.0249, 20 l", "0.994, 990 l",
            "0.9999, 1000 l", "1, 1 m³", "1.249, 1.2 m³", "1.25, 1.3 m³"})
    void a_handful_is_told_to_the_litre_a_heap_to_ten_and_from_a_cubic_metre_to_a_tenth(double cubicMetres,
            String words) {
        assertThat(plan(COMPOST, 1, 0, 5, cubicMetres).volumeWords()).isEqualTo(words);
    }

    @Test
    void its_weight_is_volume_by_density_and_what_is_missing_is_weighed_settled() {
        double density = COMPOST.density().is();

        assertThat(plan(COMPOST, 1, 0, 5, 0.3).kg()).isCloseTo(0.3 * 1000 * density / 1000, within(1e-9));
        assertThat(plan(COMPOST, 1, 2, 7, 0.3).kgPerM2()).isCloseTo(0.05 * density, within(1e-9));
        assertThat(plan(COMPOST, 1, 7, 7, 0.3).kgPerM2()).isZero();
        assertThat(plan(COMPOST, 1, 9, 7, 0.3).kgPerM2()).isZero();
        assertThat(plan(COMPOST, 1, 2, 7, 0.3).litres()).isCloseTo(300, within(1e-9));
    }

    /** Six barrows of 50 l are 300 l; 302 l are six and a trace, 303 l want a seventh; 2 l still want one. */
    @ParameterizedTest
    @CsvSource({"0.3, 6", "0.3024, 6", "0.3026, 7", "0.31, 7", "0.002, 1", "0, 0"})
    void a_twentieth_of_a_load_is_no_load(double cubicMetres, long loads) {
        assertThat(plan(COMPOST, 1, 0, 5, cubicMetres).wholeLoads(50)).isEqualTo(loads);
    }

    @Test
    void only_what_comes_in_bales_has_bales() {
        double bale = STRAW.bale().orElseThrow().kg().is() / STRAW.density().is();

        assertThat(plan(STRAW, 1, 0, 5, 2 * bale).wholeBales()).contains(2L);
        assertThat(plan(STRAW, 1, 0, 5, 2.2 * bale).wholeBales()).contains(3L);
        assertThat(plan(STRAW, 1, 0, 5, 2 * bale).bales().orElseThrow()).isCloseTo(2, within(1e-9));
        assertThat(plan(COMPOST, 1, 0, 5, 1).wholeBales()).isEmpty();
    }

    @Test
    void a_sheet_begun_is_a_sheet() {
        Underlay paper = TABLES.underlay("paper").orElseThrow();
        double one = 1 / paper.sheetsPerM2();

        assertThat(plan(STRAW, 3 * one, 0, 5, 1).sheets(paper)).isEqualTo(3);
        assertThat(plan(STRAW, 3.01 * one, 0, 5, 1).sheets(paper)).isEqualTo(4);
    }

    @Test
    void a_layer_settles_rots_and_is_gone_on_a_day() {
        LocalDate laid = LocalDate.of(2026, 4, 1);
        MulchLayer layer = new MulchLayer(STRAW, 10, laid);
        double settled = 10 / STRAW.layFactor().is();
        double pace = STRAW.decayCmPerYear().is();

        assertThat(layer.settledCm()).isCloseTo(settled, within(1e-9));
        assertThat(layer.depthOn(laid)).isCloseTo(settled, within(1e-9));
        assertThat(layer.depthOn(laid.plusDays(73))).isCloseTo(settled - pace * 73 / 365.25, within(1e-9));
        assertThat(layer.depthOn(laid.plusYears(30))).isZero();
        LocalDate half = layer.reaches(settled / 2).orElseThrow();
        assertThat(layer.depthOn(half)).isLessThanOrEqualTo(settled / 2);
        assertThat(layer.depthOn(half.minusDays(1))).isGreaterThan(settled / 2);
        assertThat(layer.reaches(settled + 1)).contains(laid);
    }

    @Test
    void collars_are_round_and_never_more_than_the_bed() {
        assertThat(MulchVolume.lessCollars(2, 3, 20)).isCloseTo(2 - 3 * Math.PI * 0.04, within(1e-9));
        assertThat(MulchVolume.lessCollars(0.1, 3, 20)).isZero();
    }

    @Test
    void what_lies_there_is_not_laid_again() {
        MulchPlan more = MulchPlan.of(COMPOST, new MulchPlan.Asked(4, 2, 10, "", 2, 5));
        MulchPlan enough = MulchPlan.of(COMPOST, new MulchPlan.Asked(4, 1, 10, "", 6, 5));

        assertThat(more.layCm()).isCloseTo(3 * COMPOST.layFactor().is(), within(1e-9));
        assertThat(more.cubicMetres()).isCloseTo(more.coveredM2() * more.layCm() / 100, within(1e-9));
        assertThat(more.lines()).anyMatch(line -> line.contains("2 collars of 10 cm"));
        assertThat(enough.lines()).anyMatch(line -> line.contains("1 collar of 10 cm"));
        assertThat(enough.cubicMetres()).isZero();
    }
}

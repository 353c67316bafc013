package org.oldwood.craft.mulching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.store.Documents;
import org.oldwood.store.RecordException;

class MulchTest {
    private static final double FOOT = 0.3048;
    private static final double INCH_CM = 2.54;
    private static final double CUBIC_YARD = 27 * FOOT * FOOT * FOOT;
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final MulchTables TABLES = MulchTables.read(DOCUMENTS);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/mulch-volume.csv", useHeadersInDisplayName = true)
    void coverage_as_in_print(String id, String what, double a, double b, double c, double expected, double printedTo,
            String source) {
        double computed = switch (what) {
            case "cubic yards of feet and inches" -> MulchVolume.cubicMetres(a * FOOT * FOOT, b * INCH_CM) / CUBIC_YARD;
            case "circle in feet" -> MulchVolume.circle(a * FOOT) / (FOOT * FOOT);
            case "square feet of a cubic yard" -> CUBIC_YARD / MulchVolume.cubicMetres(FOOT * FOOT, a * INCH_CM);
            case "square metres of a m3" -> 1 / MulchVolume.cubicMetres(1, a);
            case "square metres of a barrow" -> a / 1000 / MulchVolume.cubicMetres(1, b);
            case "sheets per m2" -> MulchVolume.sheetsPerM2(a, b, c);
            case "barrows per m3" -> 1000 / a;
            default -> throw new AssertionError(what);
        };

        assertThat(computed).as(source).isCloseTo(expected, within(printedTo / 2));
    }

    private static MulchPlan plan(String mulch, double areaM2, double now, double wanted) {
        return MulchPlan.of(TABLES.mulch(mulch).orElseThrow(), new MulchPlan.Asked(areaM2, 0, 0, "", now, wanted));
    }

    @Test
    void five_cm_of_compost_on_four_square_metres() {
        double volume = MulchVolume.cubicMetres(4, 5);

        assertThat(volume).isCloseTo(0.20, within(0.005));
        assertThat(volume * 1000 / TABLES.figure("barrow").is()).isCloseTo(2.5, within(0.05));
        assertThat(volume * TABLES.mulch("garden-compost").orElseThrow().density().is()).isCloseTo(119, within(0.5));
    }

    @Test
    void ten_cm_of_straw_on_five_square_metres_is_two_bales() {
        MulchPlan plan = plan("straw", 5, 0, 10);

        assertThat(plan.layCm()).isEqualTo(20);
        assertThat(plan.cubicMetres()).isCloseTo(1, within(0.005));
        assertThat(plan.kg()).isCloseTo(40, within(0.5));
        assertThat(plan.bales().orElseThrow()).isCloseTo(40.0 / 23, within(0.05));
        assertThat(plan.wholeBales()).contains(2L);
    }

    @Test
    void six_sheets_of_newspaper_on_four_square_metres() {
        Underlay paper = TABLES.underlay("paper").orElseThrow();

        assertThat(4 * paper.sheetsPerM2()).isCloseTo(74, within(0.5));
        assertThat(4 * paper.layers().is() * paper.gramsPerM2().orElseThrow().is() / 1000).isCloseTo(1.1, within(0.05));
    }

    @Test
    void a_bale_of_23_kg_comes_apart_into_flakes_that_anybody_can_carry() {
        Mulch.Bale bale = TABLES.mulch("straw").orElseThrow().bale().orElseThrow();

        assertThat(bale.flakeKg(23)).isCloseTo(2.3, within(0.05));
        assertThat(TABLES.remarks(plan("straw", 4, 0, 10)))
                .anyMatch(line -> line.contains("10 (computed) of 2 kg each"));
    }

    /** Theobromine 0.19 to 2.98 %, mild signs in dogs from 20 mg/kg (IVC Journal on cocoa mulch). */
    @Test
    void a_dog_of_10_kg_may_fall_ill_from_7_g_of_the_richest_cocoa_shell() {
        Mulch shell = TABLES.mulch("cocoa-shell").orElseThrow();
        Mulch.Poison poison = shell.poison().orElseThrow();

        assertThat(poison.gramsForSigns(10, poison.percent().high())).isCloseTo(7, within(0.5));
        assertThat(poison.gramsForSigns(10, poison.percent().low())).isCloseTo(105, within(0.5));
        assertThat(TABLES.remarks(plan("cocoa-shell", 4, 0, 5)))
                .anyMatch(line -> line.contains("may fall ill from 7 g"));
    }

    @Test
    void collars_are_left_bare() {
        MulchPlan plan = MulchPlan.of(TABLES.mulch("composted-bark").orElseThrow(),
                new MulchPlan.Asked(10, 4, 10, "", 0, 7.5));

        assertThat(plan.coveredM2()).isCloseTo(10 - 4 * Math.PI * 0.01, within(1e-9));
        assertThat(plan.lines().get(0)).contains("4 collars of 10 cm");
    }

    @Test
    void the_acid_crop_has_the_wider_collar() {
        assertThat(TABLES.collarGap("vaccinium").is()).isEqualTo(15);
        assertThat(TABLES.collarGap("ribes").is()).isEqualTo(10);
        assertThat(TABLES.collarGap("lonicera").is()).isEqualTo(10);
    }

    @Test
    void sawdust_loses_an_inch_a_year() {
        LocalDate laid = LocalDate.of(2026, 4, 1);
        Mulch sawdust = TABLES.mulch("sawdust").orElseThrow();
        MulchLayer layer = new MulchLayer(sawdust, 15 * sawdust.layFactor().is(), laid);

        assertThat(layer.depthOn(laid)).isCloseTo(15, within(1e-9));
        assertThat(layer.depthOn(laid.plusYears(1))).isCloseTo(12.5, within(0.01));
        assertThat(layer.depthOn(laid.plusYears(20))).isZero();
    }

    /**
     * The pace is read for sawdust (Oregon State). A gardening page (b2012overleven) has chips renewed every two to
     * three years, which says nothing of the pace but must fit it.
     */
    @Test
    void chips_as_deep_as_usual_are_gone_when_print_renews_them() {
        Mulch chips = TABLES.mulch("wood-chips").orElseThrow();
        LocalDate laid = LocalDate.of(2026, 4, 1);
        MulchLayer layer = new MulchLayer(chips, chips.depth().is() * chips.layFactor().is(), laid);

        assertThat(layer.reaches(0).orElseThrow()).isBetween(laid.plusYears(2), laid.plusYears(3));
    }

    @Test
    void loads_are_whole_and_a_trace_is_not_worth_another_walk() {
        // straw, laid 20 for 10 cm on 5.75 m2: 46 kg, two bales of 23 kg
        assertThat(plan("straw", 5.75, 0, 10).wholeBales()).contains(2L);
        assertThat(plan("straw", 5.81, 0, 10).wholeBales()).contains(2L);
        assertThat(plan("straw", 6.4, 0, 10).wholeBales()).contains(3L);
        assertThat(plan("garden-compost", 1, 0, 1).wholeLoads(80)).isEqualTo(1);
        assertThat(plan("garden-compost", 1, 0, 1).wholeBales()).isEmpty();
    }

    @Test
    void a_layer_of_75_cm_is_refused() {
        assertThatThrownBy(() -> new MulchPlan.Asked(10, 4, 10, "", 0, 75)).isInstanceOf(RecordException.class)
                .hasMessageContaining("75").hasMessageContaining("centimetres");
    }

    @Test
    void all_bundled_mulches_can_be_read() {
        assertThat(TABLES.mulches()).hasSizeGreaterThan(8);
        assertThat(DOCUMENTS.problems().list()).isEmpty();
    }

    @Property
    void the_layer_is_gone_on_the_day_it_is_said_to_be(@ForAll @DoubleRange(min = 1, max = 30) double laidCm,
            @ForAll @DoubleRange(min = 0, max = 10) double wanted, @ForAll @IntRange(min = 0, max = 9) int which) {
        Mulch mulch = TABLES.mulches().get(which);
        MulchLayer layer = new MulchLayer(mulch, laidCm, LocalDate.of(2026, 4, 1));
        LocalDate day = layer.reaches(wanted).orElseThrow();

        assertThat(layer.depthOn(day)).isLessThanOrEqualTo(wanted + 1e-9);
        if (day.isAfter(layer.laid())) {
            assertThat(layer.depthOn(day.minusDays(1))).isGreaterThanOrEqualTo(wanted - 1e-9);
        }
    }

    @Property
    void more_there_now_never_means_more_to_lay(@ForAll @DoubleRange(min = 0, max = 30) double now,
            @ForAll @DoubleRange(min = 0, max = 30) double more,
            @ForAll @DoubleRange(min = 0.5, max = 100) double areaM2) {
        double less = plan("straw", areaM2, now + more, 10).cubicMetres();

        assertThat(less).isNotNegative();
        assertThat(less).isLessThanOrEqualTo(plan("straw", areaM2, now, 10).cubicMetres());
    }
}

package org.oldwood.craft.feeding.liming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.craft.feeding.Data;
import org.oldwood.store.RecordException;

/**
 * Both sides of every bound of lime and sulphur, by hand from the factors and rows the data holds; faults put into them
 * went unnoticed before.
 */
class LimeEdgesTest {
    /** A sandy loam wants 7 t/ha a unit of pH, clay 8: 700 and 800 g/m². */
    private static LimeCase asked(String texture, double ph, double target, double given) {
        return asked(texture, ph, target, given, false);
    }

    private static LimeCase asked(String texture, double ph, double target, double given, boolean standing) {
        return new LimeCase(Optional.of(texture), OptionalDouble.of(ph), target, new LimeCase.Layer(20, 0), 10,
                standing, given, 0);
    }

    private static PhPlan lime(LimeCase asked) { return LimingTest.plan(asked, "ground-limestone"); }

    private static PhPlan sulphur(LimeCase asked, String acidifier) {
        return SulphurPlan.of(Data.SULPHUR, Data.TABLES.soils(), asked,
                Data.MATERIALS.acidifier(acidifier).orElseThrow(), false);
    }

    private static PhPlan sulphur(LimeCase asked) { return sulphur(asked, "sulphur"); }

    private static boolean says(PhPlan plan, String words) { return plan.notes().toString().contains(words); }

    /** A British garden page: 848 g/m² on peat for the unit that takes 407 on clay; the Irish aim for peat is 5.5. */
    @Test
    void peat_takes_twice_the_lime_of_clay_but_not_beyond_its_own_target() {
        double clay = lime(asked("clay", 4.5, 5.5, 0)).gPerM2();
        PhPlan peat = lime(asked("peat", 4.5, 6.5, 0));

        assertThat(peat.gPerM2() / clay).isCloseTo(848.0 / 407, within(0.1));
        assertThat(says(peat, "little and often")).isTrue();
        assertThat(peat.sources()).contains("irish-farmers-monthly-2018");
        assertThat(lime(asked("peat", 4.5, 5.2, 0)).gPerM2()).isCloseTo(1120, within(1e-6));
        PhPlan enough = lime(asked("peat", 5.5, 6.5, 0));
        assertThat(enough.nothingToDo()).isTrue();
        assertThat(says(enough, "little and often")).isFalse();
    }

    @Test
    void sixty_grams_are_limed_and_less_is_left() {
        assertThat(lime(asked("sandy-loam", 5.5, 6.5, 640)).gPerM2()).isCloseTo(60, within(1e-9));
        PhPlan less = lime(asked("sandy-loam", 5.5, 6.5, 641));
        assertThat(less.gPerM2()).isZero();
        assertThat(says(less, "error of a test")).isTrue();
        assertThat(less.lines()).contains("less 641 g/m² given and not shown by the test = 59 g/m²");
        PhPlan none = lime(asked("sandy-loam", 5.5, 6.5, 700));
        assertThat(none.nothingToDo()).isTrue();
        assertThat(says(none, "error of a test")).isFalse();
    }

    /** The rule that limes asks for as much: what the plan leaves, the calculator leaves too. */
    @Test
    void a_gap_of_two_tenths_is_limed_and_a_smaller_one_is_left() {
        assertThat(lime(asked("clay", 6.3, 6.5, 0)).gPerM2()).isCloseTo(160, within(1e-6));
        PhPlan slight = lime(asked("clay", 6.4, 6.5, 0));
        assertThat(slight.nothingToDo()).isTrue();
        assertThat(says(slight, "error of a test")).isTrue();
        assertThat(says(lime(asked("clay", 6.5, 6.5, 0)), "error of a test")).isFalse();
    }

    @Test
    void one_dose_up_to_the_limit_and_two_above_it() {
        PhPlan at = lime(asked("sandy-loam", 5.5, 6.5, 200, true));
        PhPlan above = lime(asked("sandy-loam", 5.5, 6.5, 0, true));

        assertThat(at.dosesGrams()).containsExactly(5000.0);
        assertThat(above.lines()).contains("at most 500 g/m² at once, so 2 doses of 350 g/m²");
        assertThat(says(above, "Lime on the surface")).isTrue();
        assertThat(says(lime(asked("sandy-loam", 5.5, 6.5, 0)), "Lime on the surface")).isFalse();
    }

    @Test
    void half_is_dug_in_deep_above_750_grams() {
        PhPlan at = lime(asked("clay", 5.5, 6.5, 50));
        PhPlan above = lime(asked("clay", 5.5, 6.5, 49));

        assertThat(at.gPerM2()).isEqualTo(750);
        assertThat(at.dosesGrams()).hasSize(1);
        assertThat(says(at, "half in deep")).isFalse();
        assertThat(above.dosesGrams()).hasSize(2);
        assertThat(says(above, "half in deep")).isTrue();
    }

    /** RB209: manganese harms below pH 5.5, iron and manganese fall short above 7. */
    @ParameterizedTest
    @CsvSource({"5.4, 6.5, true, false", "5.4, 5.5, true, false", "5.0, 5.4, false, false", "5.5, 6.5, false, false",
            "6.0, 7.0, false, false", "6.0, 7.1, false, true",})
    void harm_is_told_on_its_side_of_the_bound(double ph, double target, boolean manganese, boolean short_) {
        PhPlan plan = lime(asked("loam", ph, target, 0));

        assertThat(says(plan, "manganese in the soil may harm")).isEqualTo(manganese);
        assertThat(says(plan, "aim lower")).isEqualTo(short_);
    }

    /** The garden table's row for loam at 5.5 is 391 g/m², and it is for pH 6.5 only. */
    @Test
    void the_other_table_is_quoted_for_its_own_target() {
        assertThat(says(lime(asked("loam", 5.5, 6.5, 0)), "American garden table asks 391 g/m²")).isTrue();
        assertThat(says(lime(asked("loam", 5.5, 6.4, 0)), "American garden table")).isFalse();
        assertThat(says(lime(asked("loam", 6.5, 6.5, 0)), "American garden table")).isFalse();
    }

    @Test
    void limestone_brings_no_magnesia() { assertThat(says(lime(asked("loam", 5.5, 6.5, 0)), "magnesia")).isFalse(); }

    @Test
    void a_ph_and_a_layer_have_their_ends() {
        assertThat(asked("loam", 3, 10, 0).targetPh()).isEqualTo(10);
        for (double ph : new double[]{2.9, 10.1, Double.NaN}) {
            assertThatThrownBy(() -> asked("loam", ph, 6.5, 0)).isInstanceOf(RecordException.class);
        }
        assertThat(layer(0.1, 99.9, 0.1).areaM2()).isEqualTo(0.1);
        assertThatThrownBy(() -> layer(0, 0, 1)).isInstanceOf(RecordException.class);
        assertThatThrownBy(() -> layer(20, 100, 1)).isInstanceOf(RecordException.class);
        assertThatThrownBy(() -> layer(20, -0.1, 1)).isInstanceOf(RecordException.class);
        assertThatThrownBy(() -> layer(20, 0, 0)).isInstanceOf(RecordException.class);
    }

    private static LimeCase layer(double depthCm, double stones, double areaM2) {
        return new LimeCase(Optional.empty(), OptionalDouble.empty(), 6.5, new LimeCase.Layer(depthCm, stones), areaM2,
                true, 0, 0);
    }

    /** Pure quicklime is 100 % CaO, and half a percent is left to rounding. */
    @Test
    void nothing_is_stronger_than_quicklime() {
        assertThat(NeutralisingValue.ofCaO(100).percentCaO()).isCloseTo(100, within(1e-9));
        assertThatThrownBy(() -> NeutralisingValue.ofCaO(101)).isInstanceOf(RecordException.class);
        assertThatThrownBy(() -> new NeutralisingValue(0)).isInstanceOf(RecordException.class);
    }

    /** The scales differ by 1.78; doubt begins at the root of it, 1.34 times off. */
    @Test
    void a_value_on_the_other_scale_is_doubted_both_ways() {
        Lime usual = Data.lime("ground-limestone");

        assertThat(doubt(usual, NeutralisingValue.ofCaO(55))).isEmpty();
        assertThat(doubt(usual, NeutralisingValue.ofCaO(45))).isEmpty();
        assertThat(doubt(usual, NeutralisingValue.ofCaO(90))).isPresent();
        assertThat(doubt(usual, new NeutralisingValue(50)))
                .hasValueSatisfying(words -> assertThat(words).contains("other scale"));
    }

    private static Optional<String> doubt(Lime usual, NeutralisingValue value) {
        return usual.withValue(value).doubtAgainst(usual);
    }

    /** 1030 lb/acre on loam from 5.5 are 115.4 g/m² (1 lb/acre is 0.112085 g/m²). */
    @Test
    void sulphur_given_since_the_test_counts() {
        PhPlan plan = sulphur(asked("loam", 5.5, 4.5, 15));

        assertThat(plan.gPerM2()).isCloseTo(1030 * 0.112085 - 15, within(0.001));
        assertThat(plan.lines()).contains("less 15 g/m² given and not shown by the test");
        assertThat(sulphur(asked("loam", 5.5, 4.5, 200)).nothingToDo()).isTrue();
    }

    /** 98 g/m² a unit on heavier soil, 49 on sand: 1.5 and 1 units of pH. */
    @Test
    void the_other_school_goes_by_the_unit_of_ph() {
        assertThat(says(sulphur(asked("loam", 6.0, 4.5, 0)), "asks 147 g/m²")).isTrue();
        assertThat(says(sulphur(asked("sand", 5.5, 4.5, 0)), "asks 49 g/m²")).isTrue();
        assertThat(sulphur(asked("loam", 4.5, 4.5, 0)).notes()).isEmpty();
    }

    @Test
    void above_ph_6_it_is_hard() {
        assertThat(says(sulphur(asked("loam", 6.0, 4.5, 0)), "it is hard")).isFalse();
        assertThat(says(sulphur(asked("loam", 6.1, 4.5, 0)), "it is hard")).isTrue();
    }

    /** 1540 lb/acre are 172.6 g/m²; above 146 g/m² it goes in two, three months (90 d) apart. */
    @Test
    void sulphur_is_split_above_its_bound() {
        assertThat(sulphur(asked("loam", 6.0, 4.5, 27)).dosesGrams()).hasSize(1);
        PhPlan split = sulphur(asked("loam", 6.0, 4.5, 26));
        assertThat(split.dosesGrams()).hasSize(2);
        assertThat(split.monthsBetween()).isEqualTo(3);
        assertThat(sulphur(asked("loam", 6.0, 4.5, 0, true)).monthsBetween()).isEqualTo(12);
    }

    /** 175 lb/acre are 19.6 g/m², 350 are 39.2: 34 and 5.2 round standing bushes. */
    @Test
    void round_bushes_the_rest_waits_for_the_next_year() {
        PhPlan one = sulphur(asked("sand", 5.0, 4.5, 0, true));
        PhPlan two = sulphur(asked("sand", 5.5, 4.5, 0, true));

        assertThat(one.dosesGrams()).hasSize(1);
        assertThat(one.lines().toString()).doesNotContain("at most");
        assertThat(two.dosesGrams().get(0)).isCloseTo(340, within(1e-9));
        assertThat(two.dosesGrams().get(1)).isCloseTo(52.3, within(0.05));
        assertThat(two.lines().toString()).contains("at most 34 g/m² a year");
    }

    @Test
    void eight_times_the_weight_goes_to_every_square_metre() {
        LimeCase asked = asked("sand", 5.0, 4.5, 0);
        PhPlan iron = sulphur(asked, "ferrous-sulphate");

        assertThat(iron.dosesGrams().get(0)).isCloseTo(175 * 0.112085 * 8 * 10, within(0.01));
        assertThat(iron.lines().toString()).contains("× 8 as");
        assertThat(sulphur(asked).lines().toString()).doesNotContain("×");
    }

    @Test
    void the_table_is_read_to_its_ends_and_not_beyond() {
        assertThat(sulphur(asked("loam", 7.0, 4.5, 0)).refused()).isEmpty();
        assertThat(sulphur(asked("loam", 7.1, 4.5, 0)).refused()).isPresent();
        assertThat(sulphur(asked("loam", 6.0, 4.4, 0)).refused()).isPresent();
        assertThat(sulphur(layer(20, 0, 1)).refused()).isPresent();
    }

    /** 7 t/ha for the upper 20 cm and 5 for the 20 below: half a layer counts half. */
    @Test
    void half_a_layer_wants_half_the_lime() {
        for (double depth : new double[]{30, 10}) {
            PhPlan plan = lime(new LimeCase(Optional.of("sandy-loam"), OptionalDouble.of(5.5), 6.5,
                    new LimeCase.Layer(depth, 0), 10, false, 0, 0));
            assertThat(plan.gPerM2()).isCloseTo(depth == 30 ? 950 : 350, within(1e-9));
        }
    }

    /** Sands: 6 t/ha a unit (RB209 Table 1.2); 6 and half of the 5 for the layer below make 8.5 to 30 cm. */
    @Test
    void ground_of_unknown_texture_is_reckoned_as_sand() {
        LimeCase unknown = new LimeCase(Optional.empty(), OptionalDouble.of(5.5), 6.5, new LimeCase.Layer(30, 0), 10,
                false, 0, 0);
        PhPlan plan = lime(unknown);

        assertThat(plan.gPerM2()).isCloseTo(850, within(1e-9));
        assertThat(says(plan, "reckoned as sand")).isTrue();
        assertThat(says(plan, "Print disagrees")).isFalse();
        assertThat(plan.lines()).contains("factor for 30 cm: 8.5 (for 20 cm: 6)");
        assertThatThrownBy(() -> lime(asked("gravel", 5.5, 6.5, 0))).isInstanceOf(RecordException.class)
                .hasMessageContaining("gravel");
    }

    /** 175 lb/acre on sand from pH 5 are 19.6 g/m². */
    @Test
    void sulphur_too_is_reckoned_as_for_sand() {
        LimeCase unknown = new LimeCase(Optional.empty(), OptionalDouble.of(5.0), 4.5, new LimeCase.Layer(20, 0), 10,
                false, 0, 0);

        assertThat(sulphur(unknown).gPerM2()).isCloseTo(175 * 0.112085, within(0.001));
        assertThat(says(sulphur(unknown), "reckoned as sand")).isTrue();
        assertThatThrownBy(() -> sulphur(asked("gravel", 5.0, 4.5, 0))).isInstanceOf(RecordException.class)
                .hasMessageContaining("gravel");
    }

    /** Loam, 20 cm, no stones, nothing given: 7 t/ha for a unit, and no line of anything else. */
    @Test
    void the_arithmetic_tells_what_there_is_and_no_more() {
        PhPlan plan = lime(asked("loam", 5.5, 6.5, 0));

        assertThat(plan.lines()).containsExactly(
                "7 t/ha per pH unit × (6.5 − 5.5) = 7 t/ha = 700 g/m² of ground limestone",
                "as ground limestone (neutralising value 50 % CaO = 89.2 % CaCO3): × 50 / 50 = 700 g/m²");
        assertThat(says(plan, "a South African table asks 200 g/m²")).isTrue();
        assertThat(lime(asked("loam", 6.5, 6.5, 0)).lines()).hasSize(1);
        assertThat(says(lime(asked("loam", 6.5, 6.5, 0)), "Print disagrees")).isFalse();
        assertThat(sulphur(asked("loam", 5.5, 4.5, 0)).lines())
                .containsExactly("from pH 5.5 to 4.5 on loam: 115 g/m² of sulphur");
    }

    /** A crop of acid soils: never from its floor up, a little at once below it, and never without a test. */
    @Test
    void a_crop_of_acid_soils_is_limed_below_its_floor_alone() {
        double floor = Data.profile("blueberry").limeOnlyBelow().orElseThrow().is();

        assertThat(acid(OptionalDouble.of(floor)).refused())
                .hasValueSatisfying(why -> assertThat(why).contains("yours showed"));
        assertThat(acid(OptionalDouble.empty()).refused())
                .hasValueSatisfying(why -> assertThat(why).endsWith("there is no test."));
        assertThat(acid(OptionalDouble.of(floor - 0.1)).refused()).isEmpty();
    }

    private static PhPlan acid(OptionalDouble ph) {
        LimeCase asked = new LimeCase(Optional.of("loam"), ph, 4.5, new LimeCase.Layer(20, 0), 10, true, 0, 0);
        return LimePlan.of(Data.LIMING, Data.TABLES.soils(), asked, Data.lime("ground-limestone"),
                Optional.of(Data.profile("blueberry")));
    }

    /** Quicklime burns: what is said against it is said wherever it is reckoned, and nothing where nothing is given. */
    @Test
    void what_speaks_against_a_lime_is_said() {
        Lime warned = Data.MATERIALS.limes().stream()
                .filter(each -> each.avoid().isPresent() && !each.is("not-for-gardens")).findFirst().orElseThrow();

        assertThat(LimingTest.plan(asked("loam", 5.5, 6.5, 0), warned.id()).notes())
                .contains(warned.avoid().orElseThrow());
        assertThat(LimingTest.plan(asked("loam", 6.5, 6.5, 0), warned.id()).notes()).isEmpty();
    }
}

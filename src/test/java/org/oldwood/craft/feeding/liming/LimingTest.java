package org.oldwood.craft.feeding.liming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.feeding.Data;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.store.RecordException;

public class LimingTest {
    public static LimeCase asked(String texture, double ph, double target, boolean standing) {
        return new LimeCase(Optional.of(texture), OptionalDouble.of(ph), target, new LimeCase.Layer(20, 0), 10,
                standing, 0, 0);
    }

    public static PhPlan plan(LimeCase asked, String lime) {
        return LimePlan.of(Data.LIMING, Data.TABLES.soils(), asked, Data.lime(lime), Optional.empty());
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/lime-requirement.csv", useHeadersInDisplayName = true)
    void requirement_as_printed(String id, String texture, double ph, double target, double depthCm, double stones,
            double expected, double printedTo, String unit, String source) {
        LimeCase asked = new LimeCase(Optional.of(texture), OptionalDouble.of(ph), target,
                new LimeCase.Layer(depthCm, stones), 10, false, 0, 0);

        double tonnes = plan(asked, "ground-limestone").gPerM2() / 100;

        assertThat(tonnes).as(source).isCloseTo(expected, within(printedTo / 2 + 1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/lime-garden-table.csv", useHeadersInDisplayName = true)
    void garden_table_as_printed(String id, String soilClass, double ph, double expected, double tolerance,
            String source) {
        assertThat(Data.LIMING.gardenTableGPerM2(soilClass, ph).getAsDouble()).as(source).isCloseTo(expected,
                within(tolerance));
    }

    @Test
    void the_garden_table_is_not_stretched() {
        assertThat(Data.LIMING.gardenTableGPerM2("loam", 4.4)).isEmpty();
        assertThat(Data.LIMING.gardenTableGPerM2("loam", 6.1)).isEmpty();
    }

    @Test
    void a_large_need_is_split_and_adds_up() {
        PhPlan plan = plan(asked("sandy-loam", 5.5, 6.5, true), "ground-limestone");

        assertThat(plan.gPerM2()).isCloseTo(700, within(1e-9));
        assertThat(plan.dosesGrams()).containsExactly(3500.0, 3500.0);
        assertThat(plan.totalGrams()).isEqualTo(7000);
    }

    /** What is weighed out adds up to what is told, and none passes the limit: 4.17 m² at 700 g/m² are 2.92 kg. */
    @Test
    void portions_add_up() {
        LimeCase small = new LimeCase(Optional.of("sandy-loam"), OptionalDouble.of(5.5), 6.5, new LimeCase.Layer(20, 0),
                4.17, true, 0, 0);
        PhPlan plan = plan(small, "ground-limestone");

        assertThat(plan.portions()).containsExactly(1500.0, 1500.0);
        assertThat(plan.totalGrams()).isEqualTo(3000);
        assertThat(plan.portions()).allMatch(each -> each <= 500 * 4.17);
    }

    /** RB209 and Penn State split one need over seasons by one test; crops of acid soils are tested each time. */
    @Test
    void doses_go_by_one_test_but_for_crops_of_acid_soils() {
        PhPlan one = plan(asked("sandy-loam", 5.5, 6.5, true), "ground-limestone");
        PhPlan acid = LimePlan.of(Data.LIMING, Data.TABLES.soils(), asked("loam", 4.2, 4.8, true),
                Data.lime("ground-limestone"), Optional.of(Data.profile("blueberry")));

        assertThat(one.apart()).isEqualTo("12 months or more apart, all by the one test");
        assertThat(acid.apart()).isEqualTo("12 months or more apart, each after a new test");
    }

    @Test
    void weaker_lime_is_given_in_proportion() {
        LimeCase asked = asked("sandy-loam", 5.5, 6.5, false);

        assertThat(plan(asked, "sugar-beet-lime").gPerM2()).isCloseTo(700 * 50 / 22.0, within(1e-6));
        assertThat(plan(asked, "hydrated-lime").gPerM2()).isCloseTo(700 * 50 / 70.0, within(1e-6));
    }

    @Test
    void dolomite_says_how_much_magnesia_it_brings() {
        PhPlan plan = plan(asked("sandy-loam", 5.5, 6.5, false), "dolomitic-limestone");

        assertThat(plan.notes()).anyMatch(note -> note.contains("magnesia"));
        assertThat(Data.lime("dolomitic-limestone").mgoIn(1000)).isCloseTo(149, within(1.0));
    }

    @Test
    void no_lime_without_a_test_nor_from_ph_7_nor_burnt() {
        LimeCase untested = new LimeCase(Optional.of("loam"), OptionalDouble.empty(), 6.5, new LimeCase.Layer(20, 0),
                10, true, 0, 0);

        assertThat(plan(untested, "ground-limestone").refused()).isPresent();
        assertThat(plan(asked("loam", 7.0, 7.5, true), "ground-limestone").refused()).isPresent();
        assertThat(plan(asked("loam", 5.5, 6.5, true), "burnt-lime").refused()).isPresent();
        assertThat(plan(asked("loam", 6.5, 6.5, true), "ground-limestone").nothingToDo()).isTrue();
    }

    @Test
    void blueberries_are_limed_only_below_their_floor() {
        Optional<FeedingProfile> blueberry = Optional.of(Data.profile("blueberry"));

        PhPlan at = LimePlan.of(Data.LIMING, Data.TABLES.soils(), asked("loam", 4.5, 4.8, true),
                Data.lime("ground-limestone"), blueberry);
        PhPlan below = LimePlan.of(Data.LIMING, Data.TABLES.soils(), asked("loam", 4.2, 4.8, true),
                Data.lime("ground-limestone"), blueberry);

        assertThat(at.refused()).hasValueSatisfying(why -> assertThat(why).contains("4.5"));
        assertThat(below.refused()).isEmpty();
        assertThat(below.gPerM2()).isGreaterThan(0);
    }

    @Test
    void a_ph_of_14_2_is_refused() {
        assertThatThrownBy(() -> asked("loam", 14.2, 6.5, true)).isInstanceOf(RecordException.class)
                .hasMessageContaining("14.2").hasMessageContaining("3 to 10");
    }

    @Test
    void what_was_given_since_the_test_counts() {
        LimeCase given = new LimeCase(Optional.of("sandy-loam"), OptionalDouble.of(5.5), 6.5, new LimeCase.Layer(20, 0),
                10, true, 300, 0);

        assertThat(plan(given, "ground-limestone").gPerM2()).isCloseTo(400, within(1e-9));
        assertThat(plan(given, "ground-limestone").notes()).as("all doses go by the one test")
                .noneMatch(note -> note.contains("test again before you give more"));
        LimeCase acid = new LimeCase(Optional.of("loam"), OptionalDouble.of(4.2), 4.8, new LimeCase.Layer(20, 0), 10,
                true, 120, 0);
        assertThat(LimePlan.of(Data.LIMING, Data.TABLES.soils(), acid, Data.lime("ground-limestone"),
                Optional.of(Data.profile("blueberry"))).notes())
                .anyMatch(note -> note.contains("test again before you give more"));
    }

    @ParameterizedTest(name = "{0} from {1}")
    @CsvFileSource(resources = "/reference/lime-south-africa.csv", useHeadersInDisplayName = true)
    void lime_for_one_unit_as_in_the_south_african_table(String texture, double from, double to, double expected,
            String source) {
        assertThat(Data.LIMING.southAfrica().gPerM2(texture, from, to).orElseThrow()).as(source).isEqualTo(expected);
        assertThat(Data.LIMING.southAfrica().gPerM2(texture, from - 2, to)).isEmpty();
    }
}

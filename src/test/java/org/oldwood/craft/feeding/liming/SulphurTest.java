package org.oldwood.craft.feeding.liming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.feeding.Data;

class SulphurTest {
    private static PhPlan plan(LimeCase asked, boolean freeLime, String acidifier) {
        return SulphurPlan.of(Data.SULPHUR, Data.TABLES.soils(), asked,
                Data.MATERIALS.acidifier(acidifier).orElseThrow(), freeLime);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/sulphur.csv", useHeadersInDisplayName = true)
    void the_table_as_printed(String id, String soilClass, double ph, double target, double expected, double printedTo,
            String source) {
        assertThat(Data.SULPHUR.gPerM2(soilClass, ph, target).getAsDouble()).as(source).isCloseTo(expected,
                within(printedTo / 2));
    }

    @Test
    void it_is_read_between_rows_and_not_beyond() {
        double between = Data.SULPHUR.gPerM2("loam", 5.75, 4.5).getAsDouble();

        assertThat(between).isBetween(115.0, 173.0);
        assertThat(Data.SULPHUR.gPerM2("loam", 7.1, 4.5)).isEmpty();
        assertThat(Data.SULPHUR.gPerM2("loam", 6.0, 4.4)).isEmpty();
    }

    @Test
    void free_lime_and_a_ph_above_the_table_are_refused() {
        assertThat(plan(LimingTest.asked("loam", 6.0, 4.8, false), true, "sulphur").refused())
                .hasValueSatisfying(why -> assertThat(why).contains("free lime"));
        assertThat(plan(LimingTest.asked("loam", 7.3, 4.8, false), false, "sulphur").refused())
                .hasValueSatisfying(why -> assertThat(why).contains("pH 7"));
    }

    private static double sum(PhPlan plan) { return plan.dosesGrams().stream().mapToDouble(Double::doubleValue).sum(); }

    @Test
    void much_sulphur_is_split_before_planting() {
        PhPlan plan = plan(LimingTest.asked("loam", 6.5, 4.5, false), false, "sulphur");

        assertThat(plan.dosesGrams()).hasSize(2);
        assertThat(sum(plan)).isCloseTo(plan.gPerM2() * 10, within(1e-9));
        assertThat(plan.dosesGrams().get(0) / sum(plan)).isCloseTo(0.67, within(0.001));
    }

    @Test
    void round_bushes_a_year_gets_no_more_than_the_limit() {
        PhPlan plan = plan(LimingTest.asked("loam", 5.5, 4.5, true), false, "sulphur");

        assertThat(plan.dosesGrams()).allMatch(dose -> dose <= 340 + 1e-9).hasSizeGreaterThan(3);
        assertThat(sum(plan)).isCloseTo(plan.gPerM2() * 10, within(1e-6));
        assertThat(plan.portions()).allMatch(dose -> dose <= 340 + 1e-9);
    }

    @Test
    void ferrous_sulphate_takes_eight_times_the_weight() {
        LimeCase asked = LimingTest.asked("sand", 5.5, 4.5, false);

        assertThat(plan(asked, false, "ferrous-sulphate").gPerM2())
                .isCloseTo(8 * plan(asked, false, "sulphur").gPerM2(), within(1e-9));
    }

    @Test
    void soil_that_is_acid_enough_needs_nothing() {
        assertThat(plan(LimingTest.asked("loam", 4.7, 4.8, true), false, "sulphur").nothingToDo()).isTrue();
    }
}

package org.oldwood.craft.mulching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.store.Documents;
import org.oldwood.store.RecordException;

/** The ends of what may be asked, both sides of each; faults put into them went unnoticed before. */
class MulchEdgesTest {
    private static final MulchTables TABLES = MulchTables.read(Documents.bundled());

    @ParameterizedTest
    @CsvSource({"0.01, 0, 0, 0, 60", "4, 0, 0, 0, 0.01", "4, 0, 0, 0, 60", "4, 0, 0, 12, 7",})
    void the_ends_of_the_range_are_in_it(double areaM2, int bushes, double gapCm, double now, double wanted) {
        assertThat(new MulchPlan.Asked(areaM2, bushes, gapCm, "", now, wanted).areaM2()).isEqualTo(areaM2);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0, 5", "-1, 0, 0, 0, 5", "NaN, 0, 0, 0, 5", "4, -1, 0, 0, 5", "4, 0, -0.1, 0, 5",
            "4, 0, 0, -0.1, 5", "4, 0, 0, 0, 0", "4, 0, 0, 0, 60.1", "4, 0, 0, 0, NaN",})
    void what_lies_beyond_is_refused(double areaM2, int bushes, double gapCm, double now, double wanted) {
        assertThatThrownBy(() -> new MulchPlan.Asked(areaM2, bushes, gapCm, "", now, wanted))
                .isInstanceOf(RecordException.class);
    }

    @Test
    void sheets_may_overlap_by_less_than_their_shorter_side() {
        assertThat(MulchVolume.sheetsPerM2(60, 40, 39.9)).isPositive();
        assertThatThrownBy(() -> MulchVolume.sheetsPerM2(60, 40, 40)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Numbers of the sum are cut to three digits, and keep what tells them apart. */
    @Test
    void the_sum_shown_has_the_numbers_it_was_made_of() {
        MulchPlan plan = MulchPlan.of(TABLES.mulches().get(0), new MulchPlan.Asked(123.456, 0, 0, "", 2.345, 12.34));

        assertThat(plan.lines().toString()).contains("123 m²", "12.3 cm wanted − 2.35 cm there now");
    }
}

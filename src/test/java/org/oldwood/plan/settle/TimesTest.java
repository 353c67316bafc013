package org.oldwood.plan.settle;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** To which year's job a day belongs. */
class TimesTest {
    private static final Span MARCH = span("2027-03-01", "2027-03-31");

    private static Span span(String first, String last) {
        return new Span(LocalDate.parse(first), LocalDate.parse(last));
    }

    private static Times march(String notBefore) {
        return new Times(MARCH.plusYears(-1), MARCH, MARCH.plusYears(1), LocalDate.parse(notBefore));
    }

    @ParameterizedTest(name = "{0}: {1} days")
    @CsvSource({"2027-02-26, 3", "2027-02-28, 1", "2027-03-01, 0", "2027-03-31, 0", "2027-04-01, 1", "2027-04-10, 10"})
    void a_day_lies_so_far_off_a_span(String day, long days) {
        assertThat(MARCH.daysTo(LocalDate.parse(day))).isEqualTo(days);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-09-14, false", "2026-09-15, true", "2027-03-15, true", "2027-09-14, true", "2027-09-15, true",
            "2027-09-16, false"})
    void a_day_belongs_to_the_nearest_and_between_two_to_the_earlier(String day, boolean belongs) {
        assertThat(march("0001-01-01").has(LocalDate.parse(day))).isEqualTo(belongs);
    }

    @Test
    void midway_belongs_to_the_one_before() {
        Times times = new Times(span("2026-01-01", "2026-01-10"), span("2026-01-20", "2026-01-31"),
                span("2027-01-20", "2027-01-31"), LocalDate.MIN);

        assertThat(times.has(LocalDate.parse("2026-01-15"))).isFalse();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-01-31, false", "2027-02-01, true"})
    void nothing_counts_before_the_day_that_it_hangs_on(String day, boolean belongs) {
        assertThat(march("2027-02-01").has(LocalDate.parse(day))).isEqualTo(belongs);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-02-28, false", "2027-03-01, true", "2027-03-31, true"})
    void a_part_of_a_season_counts_from_its_first_day(String day, boolean belongs) {
        assertThat(Times.within(MARCH).has(LocalDate.parse(day))).isEqualTo(belongs);
    }

    @Test
    void a_part_of_a_season_comes_again_each_year() {
        assertThat(Times.within(MARCH).before()).isEqualTo(span("2026-03-01", "2026-03-31"));
        assertThat(Times.within(MARCH).after()).isEqualTo(span("2028-03-01", "2028-03-31"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-04-02, 2", "2027-04-02, 2", "2028-02-28, 2", "2027-02-27, 2"})
    void the_nearest_of_three_says_how_far(String day, long days) {
        assertThat(march("0001-01-01").daysTo(LocalDate.parse(day))).isEqualTo(days);
    }
}

package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates are read as {@code java.time} reads them (ISO 8601), which is asked beside ours. */
class IsoDateTest {
    @Test
    void every_day_of_nine_years_is_read_as_the_jdk_reads_it() {
        for (LocalDate day = LocalDate.of(1999, 12, 1); day.getYear() < 2009; day = day.plusDays(1)) {
            String text = day.toString();

            assertThat(IsoDate.find(text)).contains(LocalDate.parse(text));
            assertThat(IsoDate.monthDay(text.substring(5))).contains(MonthDay.parse("--" + text.substring(5)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-1-01", "2026/01/01", "",
            "20260101", "2026-01-0x", "2026-01-010", "-026-01-01", "２０２６-01-01"})
    void what_the_jdk_refuses_is_refused(String text) {
        assertThatThrownBy(() -> LocalDate.parse(text)).isInstanceOf(DateTimeParseException.class);
        assertThat(IsoDate.find(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"02-30", "13-01", "1-01", "0101", "xx-01", "04-31", ""})
    void no_such_day_of_a_year_is_refused(String text) { assertThat(IsoDate.monthDay(text)).isEmpty(); }
}

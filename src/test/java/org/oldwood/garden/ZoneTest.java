package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ZoneTest {
    /** British Summer Time is an hour, New Zealand's thirteen before UTC; Samoa had no 30 December 2011. */
    @ParameterizedTest
    @CsvSource({"Europe/London,    2026-07-01, 2026-07-01T11:00:00Z",
            "Europe/London,    2026-12-01, 2026-12-01T12:00:00Z", "Pacific/Auckland, 2026-12-01, 2026-11-30T23:00:00Z",
            "Pacific/Apia,     2011-12-29, 2011-12-29T22:00:00Z", "Pacific/Apia,     2011-12-30, 2011-12-30T22:00:00Z"})
    void knows_noon_there(String zone, LocalDate day, Instant noon) {
        assertThat(Zone.of(zone).noonOf(day)).isEqualTo(noon);
    }

    @Test
    void finds_what_there_is() {
        assertThat(Zone.find("Europe/London")).isPresent();
        assertThat(Zone.find("Europe/Lundon")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Europe/Nowhere", "Nowhere", "", "PST", "GMT+25"})
    void knows_no_zone_that_the_rules_do_not_know(String name) {
        assertThatThrownBy(() -> Zone.of(name)).isInstanceOf(DateTimeException.class);
    }
}

package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ZoneTest {
    @Test
    void knows_noon_in_every_zone_as_its_rules_have_it() {
        int days = 0;
        // not those that ical4j adds to the registry once it was used
        List<String> names = new ArrayList<>(List.of(TimeZone.getAvailableIDs()));
        names.retainAll(ZoneId.getAvailableZoneIds());
        for (String name : names) {
            Zone zone = Zone.of(name);
            ZoneId rules = ZoneId.of(name);
            LocalDate end = LocalDate.of(2060, 1, 1);
            for (LocalDate day = LocalDate.of(1960, 1, 1); day.isBefore(end); day = day.plusDays(29)) {
                assertThat(zone.noonOf(day))
                        .as("%s %s", name, day)
                        .isEqualTo(day.atTime(12, 0).atZone(rules).toInstant());
                days++;
            }
        }
        assertThat(days).isGreaterThan(500_000);
    }

    @Test
    void knows_the_names_that_the_rules_know_and_no_others() {
        Set<String> rules = ZoneId.getAvailableZoneIds();
        for (String name : TimeZone.getAvailableIDs()) {
            assertThat(Zone.isKnown(name)).as(name).isEqualTo(rules.contains(name));
        }
        assertThat(rules).allMatch(Zone::isKnown);
        assertThat(Zone.isKnown("Europe/Nowhere")).isFalse();
    }

    /** Samoa went over the date line and had no 30 December 2011. */
    @ParameterizedTest
    @ValueSource(strings = {"2011-12-29", "2011-12-30", "2011-12-31"})
    void knows_noon_of_a_day_that_was_left_out(String day) {
        Instant noon = LocalDate.parse(day)
                .atTime(12, 0)
                .atZone(ZoneId.of("Pacific/Apia"))
                .toInstant();

        assertThat(Zone.of("Pacific/Apia").noonOf(LocalDate.parse(day))).isEqualTo(noon);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Europe/Nowhere", "Nowhere", "", "PST", "GMT+25"})
    void knows_no_zone_that_the_rules_do_not_know(String name) {
        assertThatThrownBy(() -> Zone.of(name)).isInstanceOf(DateTimeException.class);
    }
}

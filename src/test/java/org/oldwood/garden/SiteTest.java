package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SiteTest {
    @ParameterizedTest
    @ValueSource(strings = {"Europe/London", "Pacific/Apia", "UTC"})
    void knows_the_zones_that_there_are(String name) {
        assertThat(Site.zone(name).orElseThrow().getId()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Europe/Lundon", "Nowhere", "", "PST", "GMT+25"})
    void knows_no_zone_that_the_rules_do_not_know(String name) { assertThat(Site.zone(name)).isEmpty(); }
}

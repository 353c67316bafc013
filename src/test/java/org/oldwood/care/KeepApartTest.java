package org.oldwood.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.oldwood.store.Documents;

class KeepApartTest {
    private static final String LIMED =
            "'limed','bed':'a','material':'ground-limestone','grams':2000";

    private static KeepApart limed() {
        return KeepApart.read(
                Documents.bundled(),
                SmallGarden.north().note("2026-10-20", LIMED).on("2026-11-25"));
    }

    @Test
    void an_ammonium_feed_waits_after_lime_until_the_last_day_but_not_longer() {
        KeepApart.Clash clash =
                limed().clash("a", LocalDate.of(2026, 10, 21), Set.of("ammonium")).orElseThrow();

        LocalDate free = LocalDate.of(2026, 10, 20).plusDays((long) clash.pair().days().is());
        assertThat(clash.from()).isEqualTo(free);
        assertThat(limed().clash("a", free.minusDays(1), Set.of("ammonium"))).isPresent();
        assertThat(limed().clash("a", free, Set.of("ammonium"))).isEmpty();
    }

    @Test
    void lime_waits_after_an_ammonium_feed_too() {
        KeepApart apart = KeepApart.read(Documents.bundled(), SmallGarden.north().on("2026-11-25"));
        apart.given("a", LocalDate.of(2027, 3, 20), Set.of("ammonium"), "feed");

        assertThat(apart.clash("a", LocalDate.of(2027, 3, 21), Set.of("lime"))).isPresent();
        assertThat(apart.clash("a", LocalDate.of(2027, 3, 1), Set.of("lime")))
                .as("lime shortly before the feed")
                .isPresent();
    }

    @Test
    void another_bed_and_other_materials_are_not_concerned() {
        assertThat(limed().clash("b", LocalDate.of(2026, 10, 21), Set.of("ammonium"))).isEmpty();
        assertThat(limed().clash("a", LocalDate.of(2026, 10, 21), Set.of("potash"))).isEmpty();
    }
}

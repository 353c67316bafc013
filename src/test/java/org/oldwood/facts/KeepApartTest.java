package org.oldwood.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.oldwood.garden.Entry;
import org.oldwood.plan.SmallGarden;
import org.oldwood.store.Documents;

class KeepApartTest {
    private static final String LIMED = "'limed','bed':'a','material':'ground-limestone','grams':2000";

    private static KeepApart limed() {
        return KeepApart.read(Documents.bundled(),
                SmallGarden.north().note("2026-10-20", LIMED).on("2026-11-25").beds().values());
    }

    @Test
    void an_ammonium_feed_waits_after_lime_until_the_last_day_but_not_longer() {
        KeepApart.Clash clash = limed().clash("a", LocalDate.of(2026, 10, 21), Set.of("ammonium")).orElseThrow();

        LocalDate free = LocalDate.of(2026, 10, 20).plusDays((long) clash.pair().days().is());
        assertThat(clash.from()).isEqualTo(free);
        assertThat(limed().clash("a", free.minusDays(1), Set.of("ammonium"))).isPresent();
        assertThat(limed().clash("a", free, Set.of("ammonium"))).isEmpty();
    }

    @Test
    void lime_waits_after_an_ammonium_feed_too() {
        KeepApart apart = KeepApart.read(Documents.bundled(), SmallGarden.north().on("2026-11-25").beds().values());
        apart.given("a", LocalDate.of(2027, 3, 20), Set.of("ammonium"), "feed");

        assertThat(apart.clash("a", LocalDate.of(2027, 3, 21), Set.of("lime"))).isPresent();
        assertThat(apart.clash("a", LocalDate.of(2027, 3, 1), Set.of("lime"))).as("lime shortly before the feed")
                .isPresent();
    }

    @Test
    void another_bed_and_other_materials_are_not_concerned() {
        assertThat(limed().clash("b", LocalDate.of(2026, 10, 21), Set.of("ammonium"))).isEmpty();
        assertThat(limed().clash("a", LocalDate.of(2026, 10, 21), Set.of("potash"))).isEmpty();
    }

    @Test
    void on_one_and_the_same_day_they_are_too_close() {
        LocalDate day = LocalDate.of(2026, 10, 20);

        assertThat(limed().clash("a", day, Set.of("ammonium"))).isPresent();
        assertThat(fed(day).clash("a", day, Set.of("lime"))).isPresent();
    }

    /** The feed is planned: the lime goes as many days before it as is told, or two weeks after. */
    @Test
    void lime_before_a_feed_that_is_planned_keeps_the_days_after_lime() {
        LocalDate day = LocalDate.of(2027, 6, 30);
        LocalDate free = day.minusDays(90);

        assertThat(fed(day).clash("a", free, Set.of("lime"))).isEmpty();
        KeepApart.Clash clash = fed(day).clash("a", free.plusDays(1), Set.of("lime")).orElseThrow();
        assertThat(clash.pair().id()).isEqualTo("lime-then-ammonium");
        assertThat(clash.from()).isEqualTo(LocalDate.of(2027, 7, 14));
    }

    private static KeepApart fed(LocalDate day) {
        KeepApart apart = KeepApart.read(Documents.bundled(), SmallGarden.north().on("2026-11-25").beds().values());
        apart.given("a", day, Set.of("ammonium"), "feed");
        return apart;
    }

    @Test
    void what_was_given_to_one_plant_lies_on_its_bed() {
        SmallGarden garden = SmallGarden.north()
                .note("2020-11-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'")
                .note("2026-10-20", "'fed','plant':'bc-1','material':'ammonium-sulphate','grams':30");
        KeepApart apart = KeepApart.read(Documents.bundled(), garden.on("2026-11-25").beds().values());

        // two weeks from ammonium to lime
        assertThat(apart.clash("a", LocalDate.of(2026, 11, 2), Set.of("lime"))).hasValueSatisfying(
                clash -> assertThat(clash.other()).isEqualTo("fed ammonium-sulphate on 2026-10-20"));
        assertThat(apart.clash("a", LocalDate.of(2026, 11, 3), Set.of("lime"))).isEmpty();
    }

    @Test
    void a_lime_that_is_not_known_is_lime_but_a_feed_that_is_not_known_is_nothing() {
        String other = "'bed':'a','material':'lime-of-the-mill','grams':2000";
        SmallGarden limed = SmallGarden.north().note("2026-10-20", "'limed'," + other);
        SmallGarden fed = SmallGarden.north().note("2026-10-20", "'fed'," + other);
        LocalDate day = LocalDate.of(2026, 10, 21);

        assertThat(read(limed).clash("a", day, Set.of("ammonium"))).isPresent();
        assertThat(read(fed).clash("a", day, Set.of("ammonium"))).isEmpty();
    }

    @Test
    void a_feed_is_held_against_what_lies_there() {
        Entry feed = SmallGarden.north().note("2026-11-01", "'fed','bed':'a','material':'ammonium-sulphate','grams':30")
                .on("2026-11-25").bed("a").orElseThrow().entries().get(0);

        assertThat(limed().clash("a", feed)).isPresent();
        assertThat(limed().clash("b", feed)).isEmpty();
    }

    private static KeepApart read(SmallGarden garden) {
        return KeepApart.read(Documents.bundled(), garden.on("2026-11-25").beds().values());
    }
}

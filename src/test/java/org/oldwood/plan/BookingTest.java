package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Noted;
import org.oldwood.garden.EntryKind;

/** What a task comes to in the journal where it is done. */
class BookingTest {
    private static final String FEED = "feed-first@a.blackcurrant.stool@2027";

    private static SmallGarden garden() {
        return SmallGarden.north(",'materials':['ammonium-sulphate']")
                .note("2018-11-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a','bushes':3")
                .note("2018-11-15", "'planted','plant':'bc-2','crop':'blackcurrant','bed':'a'")
                .note("2024-06-01", "'vigour','bed':'a','growth':'normal'");
    }

    private static Task feed(SmallGarden garden) {
        return garden.plan("2027-03-12").find(FEED).orElseThrow();
    }

    private static double grams(List<Noted> entries) {
        return entries.stream()
                .mapToDouble(noted -> Double.parseDouble(noted.says().get("grams")))
                .sum();
    }

    @Test
    void a_feed_of_all_that_stands_in_the_bed_is_an_entry_of_the_bed() {
        Task task = feed(garden());

        assertThat(Booking.of(task)).singleElement().satisfies(noted -> {
            assertThat(noted.kind()).isEqualTo(EntryKind.FED);
            assertThat(noted.says()).containsEntry("bed", "a").containsEntry("material", "ammonium-sulphate");
        });
        assertThat(grams(Booking.of(task)))
                .isEqualTo(task.amount().orElseThrow().value());
        assertThat(Booking.scales(task)).isTrue();
        assertThat(Booking.plants(task)).containsExactly("bc-1", "bc-2");
        assertThat(Booking.toNote(task)).isEmpty();
    }

    @Test
    void beside_another_crop_each_plant_gets_its_share_by_bushes() {
        Task task = feed(garden().note("2018-11-15", "'planted','plant':'g-1','crop':'gooseberry','bed':'a'"));

        List<Noted> entries = Booking.of(task);
        assertThat(entries).extracting(noted -> noted.says().get("plant")).containsExactly("bc-1", "bc-2");
        assertThat(grams(entries.subList(0, 1))).isCloseTo(3 * grams(entries.subList(1, 2)), within(0.1));
        assertThat(grams(entries)).isCloseTo(task.amount().orElseThrow().value(), within(0.1));
    }

    @Test
    void some_plants_and_another_amount_change_it() {
        Task task = feed(garden());

        assertThat(Booking.of(task, List.of("bc-2"), Optional.empty()))
                .singleElement()
                .satisfies(noted -> {
                    assertThat(noted.says()).containsEntry("plant", "bc-2").doesNotContainKey("bed");
                    assertThat(grams(List.of(noted)))
                            .isCloseTo(task.amount().orElseThrow().value() / 4, within(0.1));
                });
        assertThat(grams(Booking.of(task, List.of("bc-1"), Optional.of(90.0)))).isCloseTo(90, within(0.1));
        assertThat(grams(Booking.of(task, List.of(), Optional.of(120.0)))).isCloseTo(120, within(0.1));
        assertThat(Booking.of(task, List.of("bc-9"), Optional.empty())).isEmpty();
    }

    @Test
    void what_only_a_look_can_tell_is_left_to_note() {
        Task count = garden().plan("2026-12-05").tasks().stream()
                .filter(task -> task.rule().id().equals("count-stems"))
                .findFirst()
                .orElseThrow();

        assertThat(Booking.of(count)).isEmpty();
        assertThat(Booking.scales(count)).isFalse();
        assertThat(Booking.plants(count)).isEmpty();
        assertThat(Booking.toNote(count))
                .hasValueSatisfying(said -> assertThat(said).startsWith("note counted ("));
    }
}

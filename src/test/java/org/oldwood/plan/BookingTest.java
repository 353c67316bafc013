package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Amount;
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

    private static Task feed(SmallGarden garden) { return garden.plan("2027-03-12").find(FEED).orElseThrow(); }

    private static double grams(List<Amount.Noted> entries) {
        return entries.stream().mapToDouble(noted -> Double.parseDouble(noted.says().get("grams"))).sum();
    }

    @Test
    void a_feed_of_all_that_stands_in_the_bed_is_an_entry_of_the_bed() {
        Task task = feed(garden());

        assertThat(Booking.of(task)).singleElement().satisfies(noted -> {
            assertThat(noted.kind()).isEqualTo(EntryKind.FED);
            assertThat(noted.says()).containsEntry("bed", "a").containsEntry("material", "ammonium-sulphate");
        });
        assertThat(grams(Booking.of(task))).isEqualTo(task.amount().orElseThrow().value());
        assertThat(Booking.scales(task)).isTrue();
        assertThat(Booking.plants(task)).containsExactly("bc-1", "bc-2");
        assertThat(Booking.toNote(task)).isEmpty();
    }

    @Test
    void beside_another_crop_each_plant_gets_its_share_by_bushes() {
        Task task = feed(garden().note("2018-11-15", "'planted','plant':'g-1','crop':'gooseberry','bed':'a'"));

        List<Amount.Noted> entries = Booking.of(task);
        assertThat(entries).extracting(noted -> noted.says().get("plant")).containsExactly("bc-1", "bc-2");
        assertThat(grams(entries.subList(0, 1))).isCloseTo(3 * grams(entries.subList(1, 2)), within(0.1));
        assertThat(grams(entries)).isCloseTo(task.amount().orElseThrow().value(), within(0.1));
    }

    @Test
    void some_plants_and_another_amount_change_it() {
        Task task = feed(garden());

        assertThat(Booking.of(task, List.of("bc-2"), Optional.empty())).singleElement().satisfies(noted -> {
            assertThat(noted.says()).containsEntry("plant", "bc-2").doesNotContainKey("bed");
            assertThat(grams(List.of(noted))).isCloseTo(task.amount().orElseThrow().value() / 4, within(0.1));
        });
        assertThat(grams(Booking.of(task, List.of("bc-1"), Optional.of(90.0)))).isCloseTo(90, within(0.1));
        assertThat(grams(Booking.of(task, List.of(), Optional.of(120.0)))).isCloseTo(120, within(0.1));
        assertThat(Booking.of(task, List.of("bc-9"), Optional.empty())).isEmpty();
    }

    @Test
    void what_only_a_look_can_tell_is_left_to_note() {
        Task count = garden().plan("2026-12-05").tasks().stream().filter(task -> task.rule().id().equals("count-stems"))
                .findFirst().orElseThrow();

        assertThat(Booking.of(count)).isEmpty();
        assertThat(Booking.scales(count)).isFalse();
        assertThat(Booking.plants(count)).isEmpty();
        assertThat(Booking.toNote(count)).contains("note counted (plant, stems)");
        Task test = garden().plan("2026-12-05").tasks().stream().filter(task -> task.rule().id().equals("soil-test"))
                .findFirst().orElseThrow();
        assertThat(Booking.toNote(test)).as("a test without its pH tells nothing").contains("note soil-test (bed, ph)");
    }

    /** 3 bushes are fed: the amount that the task still has is all the last one's. */
    @Test
    void what_is_left_is_booked_for_the_plants_that_are_left() {
        Task task = feed(garden().note("2027-03-11", "'done','task':'%s','only':['bc-1']".formatted(FEED)));

        assertThat(Booking.of(task)).singleElement()
                .satisfies(noted -> assertThat(noted.says()).containsEntry("plant", "bc-2").containsEntry("grams",
                        task.amount().orElseThrow().noted().get(0).says().get("grams")));
        assertThat(grams(Booking.of(task, List.of(), Optional.of(33.0)))).isEqualTo(33);
        assertThat(Booking.of(task, List.of("bc-1"), Optional.empty())).isEmpty();
    }

    @Test
    void a_tenth_of_a_gram_at_least_is_booked_and_shares_are_told_to_the_hundredth() {
        Task task = feed(garden());

        assertThat(Booking.of(task, List.of(), Optional.of(0.001))).singleElement()
                .satisfies(noted -> assertThat(noted.says()).containsEntry("grams", "0.1"));
        assertThat(Booking.of(task, List.of("bc-1"), Optional.of(33.333))).singleElement()
                .satisfies(noted -> assertThat(noted.says()).containsEntry("grams", "33.33"));
    }

    @Test
    void a_cut_is_booked_by_its_plant_and_by_the_ages_that_come_out() {
        SmallGarden garden = garden().note("2026-11-20", "'counted','plant':'bc-2','stems':{'1':4,'2':4,'4':3}");
        Task cut = garden.plan("2026-12-05").find("winter-cut@bc-2@2027").orElseThrow();

        assertThat(Booking.of(cut)).singleElement().satisfies(noted -> {
            assertThat(noted.kind()).isEqualTo(EntryKind.PRUNED);
            assertThat(noted.says()).containsEntry("plant", "bc-2").containsEntry("cut", "winter");
            assertThat(noted.says().get("stems")).contains("4=3");
        });
        assertThat(Booking.scales(cut)).isFalse();
        assertThat(Booking.plants(cut)).isEmpty();
        assertThat(Booking.toNote(cut)).isEmpty();
    }

    @Test
    void what_is_done_books_nothing_more() {
        Task done = feed(garden().note("2027-03-11", "'done','task':'%s'".formatted(FEED)));

        assertThat(done.state()).isEqualTo(Task.State.DONE);
        assertThat(Booking.of(done)).isEmpty();
        assertThat(Booking.scales(done)).isFalse();
    }

    @Test
    void work_that_no_entry_tells_of_has_nothing_to_note() {
        Plan plan = garden().plan("2026-12-05");

        assertThat(plan.tasks()).filteredOn(task -> task.rule().doneBy().kinds().isEmpty()).isNotEmpty()
                .allSatisfy(task -> assertThat(Booking.toNote(task)).isEmpty());
        assertThat(plan.tasks())
                .filteredOn(task -> !task.rule().doneBy().kinds().isEmpty() && Booking.of(task).isEmpty()).isNotEmpty()
                .extracting(Booking::toNote)
                .allSatisfy(said -> assertThat(said.orElse("note x (y)")).matches("note [a-z-]+ \\([A-Za-z, ]+\\)"));
    }
}

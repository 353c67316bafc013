package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.store.RecordException;

/** What a second export does to the first: RFC 5545, 3.8.4.7 (UID), 3.8.7.2 to 3.8.7.4. */
class ExportTest {
    private static final Item CUT = Plans.item("cut", "2027-01-10", "2027-02-05");
    private static final Item FEED = Plans.item("feed", "2027-03-01", "2027-03-14");

    @TempDir
    Path folder;

    @Test
    void an_unchanged_plan_writes_the_same_bytes_on_a_later_day() throws IOException {
        Map<String, String> first = written(Plans.TODAY, CUT, FEED);

        Export.Result again = Plans.export(folder, Plans.TODAY.plusDays(9)).pairs(List.of(FEED, CUT), folder,
                Export.Split.ALL);

        assertThat(again.changed()).isEmpty();
        assertThat(again.files()).hasSize(2);
        assertThat(files()).isEqualTo(first);
    }

    @Test
    void a_moved_task_keeps_its_uid_and_is_revised_and_nothing_else_changes() throws IOException {
        written(Plans.TODAY, CUT, FEED);
        Set<String> uids = lines("todos", "UID:");
        String untouched = component("todos", "Cut feed");

        written(Plans.TODAY.plusDays(3), Plans.item("cut", "2027-01-20", "2027-02-09"), FEED);

        assertThat(lines("todos", "UID:")).isEqualTo(uids);
        assertThat(component("todos", "Cut cut")).contains("SEQUENCE:1", "DTSTAMP:20261128T000000Z",
                "LAST-MODIFIED:20261128T000000Z");
        assertThat(component("todos", "Cut feed")).isEqualTo(untouched);
    }

    @Test
    void another_title_is_a_new_time_but_no_new_sequence() throws IOException {
        written(Plans.TODAY, CUT);

        written(Plans.TODAY.plusDays(1), Plans.item("cut", "2027-01-10", "2027-02-05", "Cut the renamed bed"));

        assertThat(component("events", "renamed")).contains("SEQUENCE:0", "DTSTAMP:20261126T000000Z");
    }

    @Test
    void a_round_stays_on_its_day_until_that_is_missed_and_then_moves() throws IOException {
        Map<String, String> first = written(Plans.TODAY, due("2026-11-27"));

        assertThat(written(Plans.TODAY.plusDays(1), due("2026-11-28"))).isEqualTo(first);
        assertThat(written(Plans.TODAY.plusDays(2), due("2026-11-28"))).isEqualTo(first);
        written(Plans.TODAY.plusDays(3), due("2026-11-28"));
        assertThat(component("events", "Cut cut")).contains("DTSTART;VALUE=DATE:20261128", "SEQUENCE:1");
    }

    @Test
    void a_round_whose_last_good_day_is_over_moves_no_more() throws IOException {
        Item late = Plans.item("cut", "2026-11-25", "2026-11-26");
        written(Plans.TODAY, late, FEED);

        written(Plans.TODAY.plusDays(5), late, FEED);

        assertThat(component("events", "Cut cut")).contains("DTSTART;VALUE=DATE:20261125", "SEQUENCE:0");
    }

    private static Item due(String best) {
        LocalDate day = LocalDate.parse(best);
        return CUT.on(new Item.Days(LocalDate.of(2026, 11, 1), LocalDate.of(2027, 2, 15), day));
    }

    @Test
    void a_second_change_on_one_day_is_still_later_than_the_first() throws IOException {
        written(Plans.TODAY, CUT);
        written(Plans.TODAY, Plans.item("cut", "2027-01-20", "2027-02-09"));
        written(Plans.TODAY, Plans.item("cut", "2027-01-21", "2027-02-09"));

        assertThat(component("events", "Cut cut")).contains("SEQUENCE:2", "DTSTAMP:20261125T000002Z");
    }

    @Test
    void a_vanished_task_is_withdrawn_without_alarm_and_comes_back_under_its_uid() throws IOException {
        written(Plans.TODAY, CUT, FEED);
        Set<String> uids = lines("events", "UID:");

        written(Plans.TODAY.plusDays(1), FEED);
        String gone = component("events", "Withdrawn: Cut cut");
        written(Plans.TODAY.plusDays(2), CUT, FEED);
        String back = component("events", "SUMMARY:Cut cut");

        assertThat(gone).contains("STATUS:CANCELLED", "SEQUENCE:1").doesNotContain("VALARM");
        assertThat(back).contains("STATUS:CONFIRMED", "SEQUENCE:2").contains("VALARM");
        assertThat(lines("events", "UID:")).isEqualTo(uids);
    }

    @Test
    void a_withdrawn_task_goes_when_nobody_can_see_its_window_any_more() throws IOException {
        LocalDate lastSeen = CUT.days().last().plusDays(Revision.SEEN_FOR_DAYS);
        written(Plans.TODAY, CUT, FEED);
        written(Plans.TODAY.plusDays(1), FEED);

        written(lastSeen, FEED);
        String still = Files.readString(file("events"));
        written(lastSeen.plusDays(1), FEED);
        String gone = Files.readString(file("events"));

        assertThat(still).contains("Withdrawn: Cut cut");
        assertThat(gone).doesNotContain("Cut cut").contains("Cut feed");
    }

    @Test
    void a_completed_task_is_never_cancelled() throws IOException {
        Item done = CUT.with(Item.Progress.done(LocalDate.of(2026, 11, 24)));
        written(Plans.TODAY, CUT, FEED);

        written(Plans.TODAY.plusDays(1), done, FEED);
        String ticked = component("todos", "Cut cut");
        written(Plans.TODAY.plusDays(2), FEED);

        assertThat(ticked)
                .contains("STATUS:COMPLETED", "COMPLETED:20261124T110000Z", "PERCENT-COMPLETE:100", "SEQUENCE:1")
                .doesNotContain("VALARM");
        assertThat(Files.readString(file("todos"))).doesNotContain("CANCELLED", "Cut cut");
        assertThat(Files.readString(file("events"))).doesNotContain("CANCELLED");
    }

    @Test
    void a_task_whose_days_are_over_is_history_and_not_withdrawn() throws IOException {
        written(Plans.TODAY, CUT, FEED);

        written(CUT.days().last().plusDays(1), FEED);

        assertThat(Files.readString(file("todos"))).doesNotContain("CANCELLED", "Cut cut");
    }

    /** It was open in the last file that somebody imported; two months later nobody looks at it. */
    @Test
    void a_task_noted_after_its_days_is_told_as_done_for_two_months() throws IOException {
        written(Plans.TODAY, CUT, FEED);
        LocalDate last = CUT.days().last();
        Map<String, Item.Progress> came = Map.of(CUT.identity(), Item.Progress.done(last));

        for (int days : new int[]{1, 2, 62}) {
            after(last.plusDays(days), came, FEED);
            assertThat(Files.readString(file("todos"))).as("%d days", days).contains("SUMMARY:Cut cut",
                    "STATUS:COMPLETED", "SEQUENCE:1");
        }
        after(last.plusDays(63), came, FEED);
        assertThat(Files.readString(file("todos"))).doesNotContain("Cut cut");
    }

    @Test
    void a_round_noted_in_part_after_its_days_is_left_as_it_was() throws IOException {
        Item round = new Item("walk", "", List.of("pick", "net"), CUT.words(), CUT.bed(), CUT.days(), 0,
                Item.Progress.OPEN);
        written(Plans.TODAY, round, FEED);
        LocalDate after = CUT.days().last().plusDays(3);
        Map<String, Item.Progress> came = new TreeMap<>(Map.of("pick", Item.Progress.done(after)));

        after(after, came, FEED);
        assertThat(Files.readString(file("todos"))).doesNotContain("Cut cut");
        came.put("net", Item.Progress.SKIPPED);
        after(after, came, FEED);
        assertThat(Files.readString(file("todos"))).contains("SUMMARY:Cut cut", "STATUS:COMPLETED");
    }

    @Test
    void an_empty_plan_leaves_the_files_alone_and_says_so() throws IOException {
        Map<String, String> good = written(Plans.TODAY, CUT);

        assertThatThrownBy(() -> Plans.export(folder).pairs(List.of(), folder, Export.Split.ALL))
                .isInstanceOf(RecordException.class).hasMessageContaining("no task to write");
        assertThat(files()).isEqualTo(good);
    }

    @Test
    void without_its_memory_an_export_still_has_the_same_uids() throws IOException {
        written(Plans.TODAY, CUT, FEED);
        Set<String> uids = lines("todos", "UID:");
        Files.delete(folder.resolve(CalendarState.FILE));

        written(Plans.TODAY.plusDays(1), CUT, FEED);

        assertThat(lines("todos", "UID:")).isEqualTo(uids);
    }

    @Test
    void a_damaged_line_of_the_memory_costs_one_task_its_revision_and_is_told() throws IOException {
        written(Plans.TODAY, CUT, FEED);
        Path state = folder.resolve(CalendarState.FILE);
        List<String> memory = Files.readAllLines(state);
        Files.write(state, List.of(memory.get(0), "{torn", memory.get(2)));

        Export.Result result = Plans.export(folder, Plans.TODAY.plusDays(1)).pairs(List.of(CUT, FEED), folder,
                Export.Split.ALL);

        assertThat(result.notices()).singleElement().asString().contains("calendar-state.jsonl:2");
        assertThat(component("todos", "Cut feed")).contains("DTSTAMP:20261125T000000Z");
        assertThat(component("todos", "Cut cut")).contains("DTSTAMP:20261126T000000Z");
    }

    @Test
    void two_gardens_of_one_name_share_no_uid() throws IOException {
        written(Plans.TODAY, CUT);
        Set<String> ours = lines("events", "UID:");
        clear();

        new Export(Plans.garden(folder, new UUID(7, 7)), Layout.usual(), Plans.TODAY, false).pairs(List.of(CUT), folder,
                Export.Split.ALL);

        assertThat(lines("events", "UID:")).doesNotContainAnyElementsOf(ours);
    }

    @Test
    void a_second_garden_of_one_name_does_not_write_over_the_first() throws IOException {
        Map<String, String> first = written(Plans.TODAY, CUT);
        Path elsewhere = Files.createDirectories(folder.resolve("other-garden"));
        Export other = new Export(Plans.garden(elsewhere, new UUID(7, 7)), Layout.usual(), Plans.TODAY, false);

        assertThatThrownBy(() -> other.pairs(List.of(CUT), folder, Export.Split.ALL))
                .isInstanceOf(RecordException.class).hasMessageContaining("another garden of this name");

        Files.delete(elsewhere);
        assertThat(files()).isEqualTo(first);
    }

    @Test
    void an_event_and_its_todo_have_different_uids() throws IOException {
        written(Plans.TODAY, CUT);

        assertThat(lines("events", "UID:")).doesNotContainAnyElementsOf(lines("todos", "UID:"));
    }

    @Test
    void a_split_writes_one_pair_for_each_bed_or_craft() throws IOException {
        Export.Result byBed = Plans.export(folder).pairs(List.of(CUT), folder, Export.Split.BED);
        Export.Result byCraft = Plans.export(folder).pairs(List.of(CUT), folder, Export.Split.CRAFT);

        assertThat(names(byBed)).containsExactly("school-terrace-row-a-events.ics", "school-terrace-row-a-todos.ics");
        assertThat(names(byCraft)).containsExactly("school-terrace-pruning-events.ics",
                "school-terrace-pruning-todos.ics");
    }

    @Test
    void a_feed_has_no_cancelled_items_and_says_how_often_to_look() throws IOException {
        Path feed = folder.resolve("feed.ics");
        Plans.export(folder).feed(List.of(CUT, FEED), feed);

        Plans.export(folder).feed(List.of(FEED), feed);

        assertThat(Files.readString(feed))
                .contains("REFRESH-INTERVAL;VALUE=DURATION:P1D\r\n", "X-PUBLISHED-TTL:P1D\r\n").contains("Cut feed")
                .doesNotContain("CANCELLED", "Cut cut", "METHOD", "VTODO");
    }

    private Map<String, String> written(LocalDate today, Item... plan) throws IOException {
        Plans.export(folder, today).pairs(List.of(plan), folder, Export.Split.ALL);
        return files();
    }

    private void after(LocalDate today, Map<String, Item.Progress> came, Item... plan) throws IOException {
        Export.Garden garden = Plans.garden(folder);
        new Export(new Export.Garden(garden.id(), garden.name(), garden.zone(), folder, came), Layout.usual(), today,
                false).pairs(List.of(plan), folder, Export.Split.ALL);
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (var list = Files.list(folder)) {
            for (Path file : list.toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return files;
    }

    private void clear() throws IOException {
        for (String name : files().keySet()) {
            Files.delete(folder.resolve(name));
        }
    }

    private static List<String> names(Export.Result result) {
        return result.files().stream().map(path -> path.getFileName().toString()).toList();
    }

    private Path file(String kind) { return folder.resolve("school-terrace-" + kind + ".ics"); }

    private Set<String> lines(String kind, String start) throws IOException {
        return Files.readAllLines(file(kind)).stream().filter(line -> line.startsWith(start)).skip(1)
                .collect(Collectors.toSet());
    }

    /** The component that says {@code words}. */
    private String component(String kind, String words) throws IOException {
        for (String component : Files.readString(file(kind)).split("(?=BEGIN:V(EVENT|TODO))")) {
            if (component.contains(words)) { return component; }
        }
        throw new AssertionError("no component says " + words);
    }
}

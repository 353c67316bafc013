package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be won back from a calendar file after the garden's own memory is lost. */
class AdoptionTest {
    private static final Item CUT = Plans.item("cut", "2027-01-10", "2027-02-05");
    private static final Item MOVED = Plans.item("cut", "2027-01-20", "2027-02-05");
    private static final Item FEED = Plans.item("feed", "2027-03-01", "2027-03-14");

    @TempDir
    Path folder;

    @Test
    void with_the_old_files_the_same_bytes_are_written_again() throws IOException {
        write(Plans.TODAY, CUT, FEED);
        write(Plans.TODAY.plusDays(1), MOVED, FEED);
        String events = Files.readString(file("events"));
        String todos = Files.readString(file("todos"));
        Files.delete(folder.resolve(CalendarState.FILE));

        Adoption.Result result = adopt(Plans.garden(folder), MOVED, FEED);
        write(Plans.TODAY.plusDays(9), MOVED, FEED);

        assertThat(result.items()).isEqualTo(2);
        assertThat(Files.readString(file("events"))).isEqualTo(events).contains("SEQUENCE:1");
        assertThat(Files.readString(file("todos"))).isEqualTo(todos);
    }

    @Test
    void a_task_that_moved_meanwhile_goes_on_from_its_old_revision() throws IOException {
        write(Plans.TODAY, CUT, FEED);
        write(Plans.TODAY.plusDays(1), MOVED, FEED);
        Files.delete(folder.resolve(CalendarState.FILE));

        adopt(Plans.garden(folder), CUT, FEED);
        write(Plans.TODAY.plusDays(9), CUT, FEED);

        assertThat(Files.readString(file("events"))).contains("SEQUENCE:2\r\nDTSTART;VALUE=DATE:20270110");
    }

    @Test
    void uids_of_a_garden_whose_id_was_lost_are_kept_where_one_task_fits() throws IOException {
        Item other = Plans.item("other", "2027-01-12", "2027-02-01", "Cut feed too");
        write(Plans.TODAY, CUT, FEED, other);
        List<String> uids = uids();
        Files.delete(folder.resolve(CalendarState.FILE));
        Export.Garden anew = Plans.garden(folder, new UUID(7, 7));

        adopt(anew, CUT, FEED, other);
        new Export(anew, Layout.usual(), Plans.TODAY.plusDays(9), false).pairs(List.of(CUT, FEED, other), folder,
                Export.Split.ALL);

        assertThat(uids()).containsExactlyElementsOf(uids);
    }

    @Test
    void items_that_fit_no_task_or_two_are_left_alone() throws IOException {
        Item twin = Plans.item("twin", "2027-01-09", "2027-02-06", "Cut cut");
        write(Plans.TODAY, CUT, FEED);
        Export.Garden anew = Plans.garden(folder, new UUID(7, 7));
        Files.delete(folder.resolve(CalendarState.FILE));

        Adoption.Result result = adopt(anew, CUT, twin);

        assertThat(result.items()).isZero();
        assertThat(result.strangers()).isEqualTo(4);
    }

    @Test
    void where_only_one_of_both_files_is_given_the_half_that_would_stand_twice_is_counted() throws IOException {
        write(Plans.TODAY, CUT, FEED);
        Export.Garden anew = Plans.garden(folder, new UUID(7, 7));
        Files.delete(folder.resolve(CalendarState.FILE));

        Adoption one = new Adoption(anew, Layout.usual(), List.of(CUT, FEED));
        assertThat(one.from(Files.newInputStream(file("events")), "events").keep().half()).isEqualTo(2);
        assertThat(adopt(anew, CUT, FEED).half()).isZero();
    }

    private Adoption.Result adopt(Export.Garden garden, Item... plan) throws IOException {
        return new Adoption(garden, Layout.usual(), List.of(plan)).from(Files.newInputStream(file("events")), "events")
                .from(Files.newInputStream(file("todos")), "todos").keep();
    }

    private void write(LocalDate today, Item... plan) throws IOException {
        Plans.export(folder, today).pairs(List.of(plan), folder, Export.Split.ALL);
    }

    private List<String> uids() throws IOException {
        return Files.readAllLines(file("events")).stream().filter(line -> line.startsWith("UID:")).skip(1).toList();
    }

    private Path file(String kind) { return folder.resolve("school-terrace-" + kind + ".ics"); }
}

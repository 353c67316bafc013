package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.calendar.Answer.What;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/** What comes back from a calendar: RFC 5545, 3.6.2, 3.8.1.8, 3.8.1.11, 3.8.2.1. */
class ReadBackTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 2, 10);
    private static final Item CUT = Plans.item("cut", "2027-01-10", "2027-02-05");
    private static final String UID = new Uids(Plans.GARDEN, Map.of()).todo("cut");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"STATUS:COMPLETED|COMPLETED:20270112T153000Z|PERCENT-COMPLETE:100, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED, DONE, 2027-02-10, 100", "COMPLETED:20270112T153000Z, DONE, 2027-01-12, 100",
            "PERCENT-COMPLETE:100|LAST-MODIFIED:20270113T100000Z, DONE, 2027-01-13, 100",
            "status:completed|completed:20270112T153000Z, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED;VALUE=DATE-TIME:20270112T153000Z, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED;VALUE=DATE:20270112, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED:20270112T233000Z, DONE, 2027-01-13, 100",
            "STATUS:COMPLETED|COMPLETED;TZID=America/New_York:20270112T200000, DONE, 2027-01-13, 100",
            "STATUS:COMPLETED|COMPLETED:20270112T233000, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED:20990101T000000Z, DONE, 2027-02-10, 100",
            "STATUS:COMPLETED|COMPLETED:yesterday|LAST-MODIFIED:20270113T100000Z, DONE, 2027-01-13, 100",
            "STATUS:COMPLETED|COMPLETED;TZID=Nowhere/Land:20270112T200000, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED;TZID=W. Europe Standard Time:20270112T233000, DONE, 2027-01-12, 100",
            "STATUS:COMPLETED|COMPLETED:20270230T100000Z, DONE, 2027-02-10, 100",
            "STATUS:COMPLETED|COMPLETED;VALUE=DATE:20270230, DONE, 2027-02-10, 100",
            "STATUS:COMPLETED|DTSTAMP:20261125T000000Z|LAST-MODIFIED:20261125T000000Z, DONE, 2027-02-10, 100",
            "STATUS:IN-PROCESS|PERCENT-COMPLETE:40, UNDER_WAY, 2027-02-10, 40",
            "PERCENT-COMPLETE:40|STATUS:NEEDS-ACTION, UNDER_WAY, 2027-02-10, 40",
            "STATUS:CANCELLED|SEQUENCE:1, SKIPPED, 2027-02-10, 0",
            "STATUS:CANCELLED|PERCENT-COMPLETE:30|LAST-MODIFIED:20270113T100000Z, SKIPPED, 2027-01-13, 30"})
    void every_way_of_saying_it_is_heard(String lines, What what, LocalDate day, int percent) throws IOException {
        ReadBack.Result result = read(todo(UID, lines), CUT);

        assertThat(result.answers()).hasSize(1);
        Answer answer = result.answers().get(0);
        assertThat(answer.identity()).isEqualTo("cut");
        assertThat(answer.what()).isEqualTo(what);
        assertThat(answer.day()).isEqualTo(day);
        assertThat(answer.percent()).isEqualTo(percent);
    }

    @ParameterizedTest
    @CsvSource({"STATUS:NEEDS-ACTION", "PERCENT-COMPLETE:0", "PERCENT-COMPLETE:lots", "STATUS:PONDERING",
            "SUMMARY:Withdrawn: Cut cut|STATUS:CANCELLED"})
    void what_says_nothing_new_gives_no_answer(String lines) throws IOException {
        assertThat(read(todo(UID, lines), CUT).answers()).isEmpty();
    }

    @Test
    void what_the_journal_knows_is_not_said_again() throws IOException {
        Item done = CUT.with(Item.Progress.done(LocalDate.of(2027, 1, 12)));

        assertThat(read(todo(UID, "STATUS:COMPLETED"), done).answers()).isEmpty();
    }

    @Test
    void a_withdrawn_task_that_was_done_all_the_same_counts() throws IOException {
        Item withdrawn = CUT.with(Item.Progress.WITHDRAWN);

        assertThat(read(todo(UID, "STATUS:COMPLETED"), withdrawn).answers()).hasSize(1);
        assertThat(read(todo(UID, "STATUS:CANCELLED"), withdrawn).answers()).isEmpty();
    }

    @Test
    void one_bad_item_and_strangers_do_not_stop_the_rest() throws IOException {
        String bad = "BEGIN:VTODO\nUID;X=\"open:" + UID + "\nSTATUS\nEND:VTODO\n";
        String stranger = "BEGIN:VTODO\nUID:somebody-elses\nSTATUS:COMPLETED\nEND:VTODO\n";
        String file = "BEGIN:VCALENDAR\n" + bad + stranger + item(UID, "STATUS:COMPLETED");

        ReadBack.Result result = read(file + "END:VCALENDAR\n", CUT);

        assertThat(result.answers()).hasSize(1);
        assertThat(result.notices()).anyMatch(n -> n.contains("not this garden's"));
    }

    @Test
    void changed_dates_are_told_and_not_taken_over() throws IOException {
        String lines = "DTSTART;VALUE=DATE:20270120|DUE;VALUE=DATE:20270205|STATUS:NEEDS-ACTION";

        ReadBack.Result result = read(todo(UID, lines), CUT);

        assertThat(result.answers()).isEmpty();
        assertThat(result.notices()).singleElement().asString().contains("other dates");
    }

    @Test
    void an_untouched_copy_from_before_the_plan_moved_is_not_told() throws IOException {
        Plans.export(folder, Plans.TODAY).pairs(List.of(CUT), folder, Export.Split.ALL);
        String before = Files.readString(folder.resolve("school-terrace-todos.ics"));
        Item moved = Plans.item("cut", "2027-01-20", "2027-02-15");
        Item movedAgain = Plans.item("cut", "2027-01-25", "2027-02-20");

        assertThat(read(before, moved).notices()).isEmpty();
        Plans.export(folder, Plans.TODAY.plusDays(3)).pairs(List.of(moved), folder, Export.Split.ALL);
        assertThat(read(before, movedAgain).notices()).isEmpty();
        assertThat(read(before.replace("DUE;VALUE=DATE:20270205", "DUE;VALUE=DATE:20270301")
                .replaceAll("LAST-MODIFIED:.*", "LAST-MODIFIED:20270113T101112Z"), movedAgain).notices())
                .singleElement().asString().contains("other dates");
    }

    @Test
    void our_own_files_say_nothing_that_is_not_known() throws IOException {
        Item done = Plans.item("x", "2027-01-01", "2027-01-01").with(Item.Progress.done(TODAY));
        Plans.export(folder, TODAY).pairs(List.of(CUT, done.with(Item.Progress.OPEN)), folder, Export.Split.ALL);
        Export.Result files = Plans.export(folder, TODAY).pairs(List.of(CUT, done), folder, Export.Split.ALL);
        ReadBack back = new ReadBack(Plans.garden(folder), List.of(CUT, done), Layout.usual(), TODAY);

        for (Path file : files.files()) {
            back.read(Files.newInputStream(file), file.toString());
        }

        assertThat(back.result().answers()).isEmpty();
        assertThat(back.result().notices()).isEmpty();
        assertThat(back.result().problems().isEmpty()).isTrue();
    }

    /** COMPLETED is written for noon in the garden, so it is that day again on reading. */
    @ParameterizedTest
    @CsvSource({"Pacific/Kiritimati", "Pacific/Pago_Pago", "Europe/Berlin", "Australia/Hobart"})
    void a_day_of_completion_survives_writing_and_reading(String zone) throws IOException {
        Export.Garden garden = new Export.Garden(Plans.GARDEN, "g", ZoneId.of(zone), folder.resolve("state"), Map.of());
        LocalDate day = LocalDate.of(2027, 1, 12);
        Files.createDirectories(garden.folder());
        new Export(garden, Layout.usual(), TODAY, false).pairs(List.of(CUT), folder, Export.Split.ALL);
        new Export(garden, Layout.usual(), TODAY, false).pairs(List.of(CUT.with(Item.Progress.done(day))), folder,
                Export.Split.ALL);
        Files.delete(folder.resolve("state").resolve(CalendarState.FILE));

        ReadBack back = new ReadBack(garden, List.of(CUT), Layout.usual(), TODAY);
        back.read(Files.newInputStream(folder.resolve("g-todos.ics")), "g-todos.ics");

        assertThat(back.result().answers()).extracting(Answer::day).containsExactly(day);
    }

    @Test
    void a_cut_short_file_gives_what_was_whole_and_says_so() throws IOException {
        String whole = todo(UID, "STATUS:COMPLETED");

        ReadBack.Result result = read(whole.substring(0, whole.indexOf("END:VTODO")), CUT);

        assertThat(result.answers()).hasSize(1);
        assertThat(result.problems().list()).extracting(Problem::name).contains("calendar-cut-short");
    }

    @ParameterizedTest
    @CsvSource({"''", "'<html>Not found</html>'", "'\u001f\u008b\u0008\u0000'", "'BEGIN:VCARD'"})
    void what_is_no_calendar_is_refused(String text) {
        assertThatThrownBy(() -> read(text, CUT)).isInstanceOf(RecordException.class)
                .hasMessageContaining("Give the .ics file");
    }

    @Test
    void an_endless_file_is_refused_in_bounded_memory() throws IOException {
        InputStream endless = new InputStream() {
            @Override
            public int read() { return 'A'; }

            @Override
            public int read(byte[] to, int from, int count) {
                java.util.Arrays.fill(to, from, from + count, (byte) 'A');
                return count;
            }
        };
        ReadBack back = new ReadBack(Plans.garden(folder), List.of(CUT), Layout.usual(), TODAY);

        assertThatThrownBy(() -> back.read(endless, "endless.ics")).isInstanceOf(RecordException.class)
                .hasMessageContaining("more than 32 MB");
    }

    @Test
    void a_deep_file_is_read_to_its_bound() throws IOException {
        String deep = "BEGIN:VCALENDAR\n" + "BEGIN:VTODO\n".repeat(100_000);

        assertThat(read(deep, CUT).problems().list()).extracting(Problem::name).contains("calendar-too-deep",
                "calendar-cut-short");
    }

    /** 3,000 damaged copies of a good file: cut, with octets changed, doubled or taken out. */
    @Property(tries = 3000)
    void no_damage_makes_it_fail(@ForAll @IntRange(max = 2000) int at, @ForAll @IntRange(max = 4) int kind,
            @ForAll byte octet) throws IOException {
        byte[] damaged = damage(todo(UID, GOOD).getBytes(UTF_8), at, kind, octet);
        ReadBack back = new ReadBack(Plans.garden(Path.of("nowhere")), List.of(CUT), Layout.usual(), TODAY);

        try {
            back.read(new ByteArrayInputStream(damaged), "damaged.ics");
        } catch (RecordException e) {
            assertThat(e.problems()).isNotEmpty();
            return;
        }

        assertThat(back.result().answers().size()).isLessThanOrEqualTo(1);
    }

    private static final String GOOD = "SUMMARY:Größe\\, hard|STATUS:COMPLETED|COMPLETED:20270112T153000Z|PERCENT-COMPLETE:100"
            + "|LAST-MODIFIED:20270112T153000Z|DTSTART;VALUE=DATE:20270110|DUE;VALUE=DATE:20270205";

    private static byte[] damage(byte[] good, int position, int kind, byte octet) {
        int at = position % good.length;
        byte[] bytes = good.clone();
        switch (kind) {
            case 0 -> bytes = java.util.Arrays.copyOf(good, at);
            case 1 -> bytes[at] = octet;
            case 2 -> bytes[at] = (byte) (bytes[at] ^ 0x20);
            case 3 -> System.arraycopy(good, at, bytes, 0, good.length - at);
            default -> java.util.Arrays.fill(bytes, at, Math.min(at + 7, bytes.length), octet);
        }
        return bytes;
    }

    private ReadBack.Result read(String file, Item item) throws IOException {
        return new ReadBack(Plans.garden(folder), List.of(item), Layout.usual(), TODAY)
                .read(new ByteArrayInputStream(file.getBytes(UTF_8)), "todos.ics").result();
    }

    private static String todo(String uid, String lines) {
        return "BEGIN:VCALENDAR\nVERSION:2.0\n" + item(uid, lines) + "END:VCALENDAR\n";
    }

    private static String item(String uid, String lines) {
        return "BEGIN:VTODO\nUID:" + uid + "\n" + lines.replace('|', '\n') + "\nEND:VTODO\n";
    }
}

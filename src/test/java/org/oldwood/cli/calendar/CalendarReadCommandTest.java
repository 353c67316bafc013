package org.oldwood.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** From a garden to its calendar, and back into the journal. */
class CalendarReadCommandTest {
    private static final String TODOS = "terrace-todos.ics";
    private static final String TASK = "soil-test@blackcurrant-bed@2027";

    private static final String MORE = "strike-hardwood@blackcurrant-bed.blackcurrant.stool@2027";

    @TempDir
    Path folder;

    @BeforeEach
    void begin() throws IOException {
        String[] start = {"start", ".", "--name", "Terrace", "--at", "52,-2", "--plants", "blackcurrant=2", "--planted",
                "2021", "--today", "2026-11-25"};
        assertThat(Cli.in(folder).run(start).exit()).isZero();
        assertThat(run("calendar", "--out", ".").exit()).isZero();
        Path file = folder.resolve(TODOS);
        Files.writeString(file, Files.readString(file).replaceFirst("STATUS:NEEDS-ACTION",
                "STATUS:COMPLETED\r\nCOMPLETED:20261124T100000Z"));
    }

    @Test
    void shows_what_it_would_note_and_notes_nothing_without_a_yes() throws IOException {
        Cli.Result result = run("calendar", "read", TODOS);

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("2026-11-24  done", "Soil test");
        assertThat(result.err()).contains("Note these in the journal?", "Nothing was noted");
        assertThat(journal()).doesNotContain(TASK);
    }

    @Test
    void notes_once_what_was_ticked_off() throws IOException {
        Cli.Result first = run("calendar", "read", TODOS, "--yes");
        String noted = journal();
        Cli.Result second = run("calendar", "read", TODOS, "--yes");

        assertThat(first.exit()).isZero();
        assertThat(noted).contains("\"date\":\"2026-11-24\",\"entry\":\"done\",\"task\":\"" + TASK + "\"");
        assertThat(second.err()).contains("nothing new to note");
        assertThat(journal()).isEqualTo(noted);
    }

    @Test
    void notes_after_a_typed_yes() throws IOException {
        Cli.Result result = Cli.in(folder).reading("y\n").run("calendar", "read", TODOS, "--today", "2026-11-25");

        assertThat(result.exit()).isZero();
        assertThat(journal()).contains(TASK);
    }

    /** RFC 5545, 3.8.1.11 and 3.8.1.8: a to-do that is under way stays open. */
    @Test
    void what_is_half_done_is_noted_once_and_goes_out_again_as_under_way() throws IOException {
        Path file = folder.resolve(TODOS);
        tick(file, "STATUS:COMPLETED\r\nCOMPLETED:20261124T100000Z", begun(40));

        Cli.Result first = run("calendar", "read", TODOS, "--yes");
        String noted = journal();
        Cli.Result second = run("calendar", "read", TODOS, "--yes");
        run("calendar", "--out", ".");
        Cli.Result ownFile = run("calendar", "read", TODOS, "--yes");

        assertThat(first.out()).contains("begun", "40 %; it stays open");
        assertThat(noted).contains("\"entry\":\"begun\",\"task\":\"" + TASK + "\",\"percent\":40");
        assertThat(second.err()).contains("nothing new to note");
        assertThat(ownFile.err()).contains("nothing new to note");
        assertThat(Files.readString(file)).contains("STATUS:IN-PROCESS\r\nPERCENT-COMPLETE:40");
        assertThat(run("why", TASK).out()).contains("40 % of it is done");
        tick(file, begun(40), begun(70));
        run("calendar", "read", TODOS, "--yes");
        assertThat(journal()).startsWith(noted).contains("\"percent\":70");
    }

    /** Else work taken back in the journal would be noted again out of the file written before. */
    @ParameterizedTest
    @ValueSource(strings = {"done", "begun"})
    void our_own_file_says_nothing_new_whatever_was_taken_back_since(String kind) throws IOException {
        run("note", kind, TASK);
        run("calendar", "--out", ".");
        assertThat(Files.readString(folder.resolve(TODOS)))
                .contains(kind.equals("done") ? "STATUS:COMPLETED" : "STATUS:IN-PROCESS");
        run("undo");
        String noted = journal();

        assertThat(run("calendar", "read", TODOS, "--yes").err()).contains("nothing new to note");
        assertThat(journal()).isEqualTo(noted);
    }

    private static String begun(int percent) { return "STATUS:IN-PROCESS\r\nPERCENT-COMPLETE:" + percent; }

    private static void tick(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(from, to));
    }

    @Test
    void asks_how_much_it_was_where_an_amount_was_planned() throws IOException {
        String task = tickOneWithAnAmount();

        Cli.Result result = answering("y\n7.5\n");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err()).contains("planned", "How much was it");
        assertThat(journal()).contains(task + "\",\"amount\":7.5");
    }

    @Test
    void an_empty_answer_means_as_planned() throws IOException {
        String task = tickOneWithAnAmount();

        Cli.Result result = answering("y\n\n");

        assertThat(result.exit()).isZero();
        assertThat(journal()).contains(task + "\",\"note\"").doesNotContain("\"amount\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lots", "-3", "NaN", "1e99", "Infinity", "2 kg"})
    void an_amount_that_is_none_notes_nothing_at_all(String typed) throws IOException {
        tickOneWithAnAmount();
        String before = journal();

        Cli.Result result = answering("y\n" + typed + "\n" + typed + "\n");

        assertThat(result.exit()).as(result.err()).isBetween(1, 2);
        assertThat(result.err()).doesNotContain("fault of the program");
        assertThat(journal()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"n\n", "", "\n", "yes please\n"})
    void anything_but_a_y_notes_nothing(String typed) throws IOException {
        String before = journal();

        assertThat(answering(typed).err()).contains("Nothing was noted");
        assertThat(journal()).isEqualTo(before);
    }

    private Cli.Result answering(String typed) {
        return Cli.in(folder).reading(typed).run("calendar", "read", TODOS, "--today", "2026-11-25");
    }

    /** Ticks off a round of one task with an amount; returns the task's id. */
    private String tickOneWithAnAmount() throws IOException {
        Path garden = folder.resolve("garden.json");
        Files.writeString(garden, Files.readString(garden).replaceFirst("\\{", "{\"wishes\": {\"morePlants\": true},"));
        run("calendar", "--out", ".");
        Path file = folder.resolve(TODOS);
        String text = Files.readString(file);
        int amount = text.indexOf("SUMMARY:More");
        int from = text.lastIndexOf("BEGIN:VTODO", amount);
        String part = text.substring(from).replaceFirst("STATUS:NEEDS-ACTION", "STATUS:COMPLETED");
        Files.writeString(file, text.substring(0, from) + part);
        assertThat(run("calendar", "read", TODOS, "--json").out()).contains(MORE);
        return MORE;
    }

    @Test
    void tells_programs_in_json_and_notes_nothing() throws IOException {
        Cli.Result result = run("calendar", "read", TODOS, "--json");

        assertThat(result.out()).contains(TASK, "\"said\": \"done\"", "\"2026-11-24\"");
        assertThat(journal()).doesNotContain(TASK);
    }

    @Test
    void a_file_that_is_no_calendar_leaves_the_journal_untouched() throws IOException {
        String before = journal();

        Cli.Result result = run("calendar", "read", "garden.json", "--yes");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("is not the first line of an iCalendar file");
        assertThat(journal()).isEqualTo(before);
    }

    @Test
    void a_lost_memory_is_won_back_from_the_old_files() throws IOException {
        Path events = folder.resolve("terrace-events.ics");
        Files.copy(events, folder.resolve("old.ics"));
        Files.delete(folder.resolve("calendar-state.jsonl"));

        run("calendar", "--out", ".", "--adopt", "old.ics", "--today", "2026-11-26");

        assertThat(Files.readString(events)).contains("DTSTAMP:20261125T000000Z");
    }

    @Test
    void a_password_file_that_others_can_read_is_refused() throws IOException {
        Path file = Files.writeString(folder.resolve("password"), "secret-word\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));

        Cli.Result result = run("calendar", "publish", "http://127.0.0.1:9/x/", "--user", "ada", "--password-file",
                "password");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("chmod 600").doesNotContain("secret-word");
    }

    @Test
    void without_a_password_nothing_is_sent() {
        Cli.Result result = run("calendar", "publish", "http://127.0.0.1:9/x/", "--user", "ada");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("OLDWOOD_CALENDAR_PASSWORD");
    }

    @Test
    void a_password_that_is_asked_for_is_neither_shown_nor_told() {
        Cli.Result result = Cli.in(folder).typingHidden("secret-word").run("calendar", "publish",
                "http://127.0.0.1:9/x/", "--user", "ada", "--today", "2026-11-25");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("cannot be reached").doesNotContain("secret-word");
        assertThat(result.out()).doesNotContain("secret-word");
    }

    private Cli.Result run(String... args) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--today";
        all[args.length + 1] = "2026-11-25";
        boolean isDated = java.util.Arrays.asList(args).contains("--today");
        return Cli.in(folder).run(isDated ? args : all);
    }

    private String journal() throws IOException { return Files.readString(folder.resolve("journal.jsonl")); }
}

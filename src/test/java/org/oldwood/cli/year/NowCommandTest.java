package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** What to do now, on one screen, and its numbers in other commands. */
class NowCommandTest {
    private static final String SCREEN = ".{0,80}";

    @TempDir
    private Path folder;

    private Cli.Result run(String... args) { return Cli.in(folder.resolve("g")).run(args); }

    private String ok(String... args) {
        Cli.Result result = run(args);
        assertThat(result.exit()).as(String.join(" ", args) + result.err()).isZero();
        return result.out();
    }

    private void start(String at, String today) {
        Cli.Result result = Cli.in(folder).run("start", "g", "--name=Our garden", "--at=" + at, "--planted=2021",
                "--zone=UTC", today,
                "--plants=blackcurrant=4,redcurrant=2,gooseberry=2,summer-raspberry=2,blueberry=1");
        assertThat(result.exit()).as(result.err()).isZero();
    }

    /** A Thursday in each month of a year: always a screen, and until the weekend at least. */
    @ParameterizedTest
    @CsvSource({"'52,-2', 28 Nov, 2026-11-26", "'-41,175', 28 May, 2027-05-27"})
    void a_new_garden_of_eleven_plants_fits_a_screen_all_year(String at, String sunday, String first) {
        start(at, "--today=" + first);
        for (int month = 0; month < 12; month++) {
            String day = java.time.LocalDate.parse(first).plusMonths(month).toString();
            String out = ok("--today=" + day);
            assertThat(out.lines().toList()).hasSizeBetween(3, 24).allMatch(line -> line.matches(SCREEN));
            assertThat(ok("tasks", "--today=" + day).lines().toList()).hasSizeLessThanOrEqualTo(24)
                    .allMatch(line -> line.matches(SCREEN));
        }
        assertThat(ok("--today=" + first)).contains("To do until", "  1  ", "by ");
        assertThat(ok("--today=" + first)).isEqualTo(ok("now", "--today=" + first));
    }

    @Test
    void numbers_of_the_last_list_serve_in_other_commands() throws IOException {
        start("52,-2", "--today=2026-11-26");
        String today = "--today=2026-11-28";
        assertThat(run("note", "done", "1", today).err()).contains("no list was shown");
        assertThat(ok("now", today)).contains("  1  Sat 28 Nov  Clean and sharpen tools");

        assertThat(ok("tasks", "1", today)).contains("tools@2027", "clean-tools@garden@2027");
        assertThat(ok("why", "1", today)).contains("Clean and sharpen", "Sources");
        assertThat(ok("note", "done", "1", today)).contains("done: task clean-tools@garden@2027");
        assertThat(run("note", "done", "1", today).exit()).isEqualTo(2);
        assertThat(run("note", "done", "99", today).err()).contains("goes from 1 to");

        String cut = ok("tasks", "cut", "--today=2027-01-04");
        assertThat(cut).contains("  1  ", "lackcurrants: 4");
        Cli.Result later = run("note", "later", "1", "--until=2027-01-20", "--today=2027-01-05");
        assertThat(later.err()).contains("those of the list of 4 Jan 2027");
        assertThat(ok("tasks", "cut", "--today=2027-01-05")).contains("20 Jan  Count");
        ok("note", "skipped", "cut@2027.blackcurrant", "--today=2027-01-05");
        assertThat(ok("tasks", "cut", "--today=2027-01-05")).doesNotContain("20 Jan  Count");
        assertThat(Files.readString(folder.resolve("g/journal.jsonl"))).contains("\"entry\":\"later\"", "\"days\":15",
                "\"entry\":\"skipped\"");
    }

    @Test
    void a_round_put_off_past_its_time_says_so_and_is_taken_back_whole() throws IOException {
        start("52,-2", "--today=2026-11-26");
        String today = "--today=2026-11-28";
        String before = ok("tasks", "cut", today);

        Cli.Result late = run("note", "later", "cut@2027.blackcurrant", "--until=2027-03-01", today);

        assertThat(late.err().replaceAll("\\s+", " "))
                .containsOnlyOnce("Put off until 1 Mar 2027, but its last good day is 28 Feb 2027")
                .contains("oldwood undo takes them back");
        assertThat(ok("tasks", "cut", today)).isNotEqualTo(before);
        ok("undo", today);
        assertThat(ok("tasks", "cut", today)).isEqualTo(before);
        assertThat(run("note", "later", "cut@2027.blackcurrant", "--until=2027-01-20", today).err())
                .doesNotContain("last good day");
    }

    @Test
    void a_kind_of_work_that_is_never_wanted_is_named_and_not_listed() throws IOException {
        start("52,-2", "--today=2026-11-26");
        String day = "--today=2027-04-20";
        assertThat(ok("tasks", "year", day)).contains("Frost watch");
        assertThat(run("note", "never", "dusting", day).err()).contains("no kind of round \"dusting\"", "frost");
        ok("note", "never", "frost", day);
        assertThat(ok("tasks", "year", day)).doesNotContain("Frost watch");
        assertThat(ok("tasks", day)).contains("not asked for: frost, strike");
        assertThat(ok("tasks", "frost", day)).contains("Frost watch");

        Path file = folder.resolve("g/garden.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\\{",
                "{\"wishes\": {\"morePlants\": true, \"never\": [\"cut\"]},"));
        assertThat(ok("tasks", day)).contains("not asked for: cut, frost");
        Files.writeString(file, Files.readString(file).replace("[\"cut\"]", "[\"cat\"]"));
        assertThat(run("check", day).err()).contains("is not a kind of round that is known: \"cat\"");
        Files.writeString(file, Files.readString(file).replace("[\"cat\"]", "[\"cut\"]"));
        assertThat(ok("tasks", "--json", day)).contains("\"rounds\"", "\"id\": \"cut@2028.blackcurrant\"");
    }

    @Test
    void a_rule_that_is_never_wanted_leaves_its_round() throws IOException {
        start("52,-2", "--today=2026-11-26");
        String day = "--today=2026-11-28";
        assertThat(ok("tasks", "cut", day)).contains("Count, cut and clear blackcurrants");

        ok("note", "never", "clear-prunings", day);

        assertThat(ok("tasks", day)).contains("Count and cut blackcurrants", "not asked for: clear-prunings, strike");
        Path file = folder.resolve("g/journal.jsonl");
        Files.writeString(file, Files.readString(file).replace("clear-prunings", "clear-pruning"));
        assertThat(run("check", day).err()).contains("is not a kind of round that is known: \"clear-pruning\"");
    }

    @Test
    void other_words_for_when_are_understood_or_told() {
        start("52,-2", "--today=2026-11-26");
        String day = "--today=2026-11-28";
        assertThat(ok("tasks", "2027-02", day)).contains(" Feb  ").doesNotContain(" Jan  ");
        assertThat(ok("tasks", "2027-03-01..2027-03-20", day)).contains(" Mar  ").doesNotContain(" Apr  ");
        assertThat(ok("tasks", "week", day)).contains("28 Nov  Clean and sharpen tools");
        assertThat(run("tasks", "weak", day).err()).contains("Did you mean \"week\"?");
        assertThat(run("tasks", "weak", day).exit()).isEqualTo(2);
    }

    /** What cannot be understood is asked again, an empty line is no answer, and without a person nothing is asked. */
    @Test
    void start_asks_a_person_for_wishes_and_writes_what_was_answered() throws IOException {
        String[] start = {"start", "g", "--name=Ours", "--at=52,-2", "--planted=2021", "--zone=UTC",
                "--plants=gooseberry=2"};
        Cli.Result asked = Cli.in(folder).answering("Sat, sunday\n\nbone meal\nbone-meal\nfrost lime\n07:30\nno\n")
                .run(start);
        assertThat(asked.exit()).as(asked.err()).isZero();
        assertThat(asked.err()).contains("not understood: \"bone meal\"");
        String file = Files.readString(folder.resolve("g/garden.json"));
        assertThat(file).contains("\"saturday\"", "\"sunday\"", "\"bone-meal\"", "\"frost\"", "\"07:30\"",
                "\"morePlants\": false").doesNotContain("minutesPerDay");
        assertThat(ok("check")).isEmpty();

        start[1] = "h";
        Cli.Result silent = Cli.in(folder).run(start);
        assertThat(silent.err()).doesNotContain("wishes");
        assertThat(Files.readString(folder.resolve("h/garden.json"))).doesNotContain("wishes", "workDays");
    }
}

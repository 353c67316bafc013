package org.oldwood.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.record.NotingChild;

/** What lies in a garden's folder by accident, or is written in a way that nobody meant. */
class StrangeFilesTest {
    private static final String TODAY = "--today=2026-11-25";

    @TempDir
    Path scratch;

    private Path garden;

    @BeforeEach
    void begin() throws IOException { garden = NotingChild.garden(Files.createDirectory(scratch.resolve("garden"))); }

    @Test
    void stray_files_among_the_data_are_told_by_check_and_stop_nothing() throws IOException {
        write("rules/mine.json~", "{");
        write("rules/README.md", "our rules");
        write("materials/Thumbs.db", "x");
        write("crops/notes.txt", "x");
        Files.createDirectories(garden.resolve("crops/empty"));
        Files.createDirectories(garden.resolve("rules/old"));
        write("rules/.hidden", "x");

        Cli.Result check = run("check", TODAY);

        assertThat(check.exit()).as(check.err()).isZero();
        assertThat(check.err())
                .contains("rules/mine.json~: is no JSON file", "rules/README.md", "materials/Thumbs.db", "rules/old")
                .contains("crops/notes.txt: is no crop", "crops/empty").doesNotContain("hidden");
        for (String command : new String[]{"tasks", "calendar", "shopping", "prune"}) {
            Cli.Result result = run(command, TODAY);
            assertThat(result.exit()).as(command + result.err()).isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "tasks", "calendar", "sheet", "note watered --bed=bed --litres=5"})
    void a_misspelt_time_zone_is_told_everywhere(String command) throws IOException {
        Path file = garden.resolve("garden.json");
        Files.writeString(file,
                Files.readString(file).replaceFirst("\"zone\": *\"[^\"]*\"", "\"zone\": \"Europe/Lundon\""));

        Cli.Result result = run((command + " " + TODAY).split(" "));

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("garden.json:", "is not a time zone that is known: \"Europe/Lundon\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000-01-01", "-0044-03-15", "0021-11-25", "9999-12-31", "+12026-01-01"})
    void a_year_that_is_a_slip_of_the_hand_is_refused(String day) {
        Cli.Result result = run("tasks", "--today=" + day);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("from the years 1800 to 2999");
        assertThat(run("note", "watered", "--bed=bed", "--litres=5", "--date=" + day).exit()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1800-01-01", "2999-12-31"})
    void the_first_and_the_last_day_are_planned(String day) {
        for (String command : new String[]{"tasks", "calendar", "check", "sheet"}) {
            Cli.Result result = run(command, "--today=" + day);
            assertThat(result.err()).as(command).doesNotContain("fault of the program");
        }
    }

    @Test
    void a_clock_of_another_age_is_refused() {
        Cli.Result result = Cli.in(garden).with("SOURCE_DATE_EPOCH", "99999999999").run("tasks");

        assertThat(result.exit()).as(result.err()).isEqualTo(2);
    }

    @Test
    void a_memory_of_calendars_with_odd_years_is_no_fault_of_the_program() throws IOException {
        assertThat(run("calendar", TODAY).exit()).isZero();
        Path state = garden.resolve("calendar-state.jsonl");
        String good = Files.readString(state);
        for (String year : new String[]{"0000", "-001", "9999"}) {
            Files.writeString(state,
                    good.replaceAll("\"2026-", "\"" + year + "-").replaceAll("\"2027-", "\"" + year + "-"));

            assertThat(run("calendar", TODAY).err()).as(year).doesNotContain("fault of the program");
        }
    }

    @Test
    void marks_that_steer_a_screen_do_not_reach_the_page() throws IOException {
        Path file = garden.resolve("garden.json");
        Files.writeString(file,
                Files.readString(file).replaceFirst("\"name\": *\"", "$0Elm\\\\u202e\\\\u009b\\\\u0007 "));

        assertThat(run("sheet", "--out=" + scratch.resolve("page.html"), TODAY).exit()).isZero();

        assertThat(Files.readString(scratch.resolve("page.html"))).contains("Elm\uFFFD\uFFFD\uFFFD")
                .doesNotContain("\u202e", "\u009b", "\u0007");
    }

    @Test
    void octets_that_are_no_text_are_told_with_their_line() throws IOException {
        Path journal = garden.resolve("journal.jsonl");
        int line = Files.readAllLines(journal).size() + 1;
        String noted = run("note", "watered", "--bed=" + bed(), "--litres=5", "--note=gruen", TODAY).err();
        assertThat(noted).contains("noted in");
        Files.write(journal, Files.readString(journal).replace("gruen", "grün").getBytes(ISO_8859_1));

        Cli.Result check = run("check", TODAY);

        assertThat(check.exit()).isZero();
        assertThat(check.err()).contains("journal.jsonl:" + line + ": holds octets that are no text in UTF-8");
        assertThat(run("tasks", TODAY).exit()).isZero();
    }

    @Test
    void a_table_in_another_encoding_is_refused_with_its_line() throws IOException {
        Files.write(garden.resolve("notes.csv"),
                "date,entry,bed,litres,note\n2026-06-20,watered,x,60,ok\n2026-06-21,watered,x,60,grün\n"
                        .getBytes(ISO_8859_1));

        Cli.Result result = run("note", "--csv=notes.csv", TODAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("notes.csv:3: holds octets that are no text in UTF-8");
    }

    @Test
    void what_is_too_deep_names_file_and_line() throws IOException {
        Files.writeString(garden.resolve("garden.json"), "{\n\"a\": " + "[".repeat(5000) + "\n}");

        Cli.Result result = run("check", TODAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("garden.json:2:").doesNotContain("fault of the program");
    }

    @Test
    void where_nobody_can_answer_nothing_is_noted_and_the_option_is_named() throws IOException {
        assertThat(run("calendar", "--out=" + scratch, TODAY).exit()).isZero();
        Path todos = scratch.resolve("terrace-todos.ics");
        Files.writeString(todos, Files.readString(todos).replaceFirst("STATUS:NEEDS-ACTION",
                "STATUS:COMPLETED\r\nCOMPLETED:20261124T120000Z"));
        byte[] before = Files.readAllBytes(garden.resolve("journal.jsonl"));

        Cli.Result result = run("calendar", "read", todos.toString(), TODAY);

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err()).contains("Nobody is there to answer; --yes", "Nothing was noted");
        assertThat(Files.readAllBytes(garden.resolve("journal.jsonl"))).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"weather.csv", "calendar-state.jsonl"})
    void a_folder_in_the_place_of_a_file_is_named(String name) throws IOException {
        Files.createDirectories(garden.resolve(name));

        Cli.Result result = run("calendar", TODAY);

        assertThat(result.exit()).isNotZero();
        assertThat(result.err()).contains(name).doesNotContain("fault of the program", "java.io");
    }

    /** The disk that it leads to may be away: that is no empty record. */
    @ParameterizedTest
    @CsvSource({"weather.csv, calendar", "calendar-state.jsonl, calendar", "journal.jsonl, tasks",
            "journal.jsonl, pack", "journal.jsonl, calendar --feed=journal.jsonl --replace",
            "journal.jsonl, note watered --bed=blackcurrant-bed --litres=5"})
    void a_link_of_the_record_that_leads_nowhere_is_told(String name, String command) throws IOException {
        Files.deleteIfExists(garden.resolve(name));
        Path away = garden.resolveSibling("away.txt");
        Files.createSymbolicLink(garden.resolve(name), away);

        Cli.Result result = run((command + " " + TODAY).split(" ", -1));

        assertThat(result.exit()).isNotZero();
        assertThat(result.err()).contains(name).doesNotContain("fault of the program", "java.");
        assertThat(away).doesNotExist();
        assertThat(garden.resolve("terrace-2026-11-25.zip")).doesNotExist();
    }

    @Test
    void a_calendar_is_not_laid_in_the_place_of_a_weather_file_to_come() {
        Cli.Result result = run("calendar", "--feed=" + garden.resolve("weather.csv"), TODAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("part of the garden's record");
        assertThat(garden.resolve("weather.csv")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"weather.csv", "calendar-state.jsonl", "journal.jsonl", ".journal.jsonl.lock"})
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void what_never_ends_is_refused_at_once(String name) throws IOException {
        Files.deleteIfExists(garden.resolve(name));
        Files.createSymbolicLink(garden.resolve(name), Path.of("/dev/zero"));
        String command = name.endsWith(".lock") ? "note seen --crop=gooseberry --stage=bud-burst" : "calendar";

        Cli.Result result = assertTimeoutPreemptively(Duration.ofSeconds(10),
                () -> run((command + " " + TODAY).split(" ", -1)));

        assertThat(result.exit()).isNotZero();
        assertThat(result.err()).contains(name).doesNotContain("fault of the program", "java.");
    }

    private String bed() throws IOException {
        return Files.readString(garden.resolve("garden.json"))
                .replaceAll("(?s).*\"beds\": *\\[\\s*\\{\\s*\"id\": *\"([^\"]*)\".*", "$1");
    }

    private void write(String name, String text) throws IOException {
        Path file = garden.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardOpenOption.CREATE);
    }

    private Cli.Result run(String... arguments) {
        Cli.Result result = Cli.in(garden).run(arguments);
        return new Cli.Result(result.exit(), result.out(), result.err().replaceAll("\\s+", " "));
    }
}

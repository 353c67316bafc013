package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.record.NotingChild;

/** What commands write takes the place of nothing that they did not write for this garden. */
class OutputsTest {
    @TempDir
    Path scratch;

    private Path garden;

    @BeforeEach
    void begin() throws IOException {
        garden = NotingChild.garden(Files.createDirectory(scratch.resolve("garden")));
        Files.writeString(garden.resolve("weather.csv"), "date,tmin,tmax,rain\n2026-01-01,1,6,0\n");
    }

    @ParameterizedTest
    @CsvSource({"calendar, --feed, journal.jsonl", "calendar, --feed, garden.json", "sheet,    --out,  journal.jsonl",
            "sheet,    --out,  weather.csv", "pack,     --out,  journal.jsonl", "pack,     --out,  garden.json"})
    void the_record_is_never_written_over(String command, String option, String part) throws IOException {
        byte[] before = Files.readAllBytes(garden.resolve(part));
        Files.createLink(garden.resolve("other-name"), garden.resolve(part));

        for (String target : List.of("garden/" + part, "garden/other-name")) {
            assertThat(run(command, option + "=" + target).exit()).isEqualTo(1);
            Cli.Result forced = run(command, option + "=" + target, "--replace");
            assertThat(forced.exit()).isEqualTo(1);
            assertThat(forced.err()).contains("is part of the garden's record", "nothing was written");
        }

        assertThat(Files.readAllBytes(garden.resolve(part))).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"calendar, --feed", "sheet, --out", "pack, --out"})
    void a_stranger_is_replaced_only_where_one_says_so(String command, String option) throws IOException {
        String private_ = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Somebody//Else//EN\r\nEND:VCALENDAR\r\n";
        Path file = Files.writeString(scratch.resolve("mine"), private_);

        Cli.Result refused = run(command, option + "=mine");

        assertThat(refused.exit()).isEqualTo(1);
        assertThat(refused.err()).contains("was not written for this garden", "--replace");
        assertThat(file).hasContent(private_);
        assertThat(run(command, option + "=mine", "--replace").exit()).isZero();
        assertThat(Files.size(file)).isGreaterThan(500);
        assertThat(run(command, option + "=mine").exit()).as("our own is renewed").isZero();
    }

    @Test
    void a_private_calendar_of_the_same_name_is_left_alone() throws IOException {
        Path folder = Files.createDirectory(scratch.resolve("calendars"));
        Path file = Files.writeString(folder.resolve("terrace-events.ics"), "BEGIN:VCALENDAR\nEND:VCALENDAR\n");

        assertThat(run("calendar", "--out=calendars").exit()).isEqualTo(1);

        assertThat(file).hasContent("BEGIN:VCALENDAR\nEND:VCALENDAR\n");
    }

    @Test
    void the_sheet_of_another_garden_is_a_stranger() throws IOException {
        assertThat(run("sheet", "--out=page.html").exit()).isZero();
        String text = Files.readString(garden.resolve("garden.json"));
        Files.writeString(garden.resolve("garden.json"),
                text.replaceFirst("\"id\": *\"........", "\"id\": \"12345678"));

        assertThat(run("sheet", "--out=page.html").err()).contains("was not written for this garden");
    }

    @Test
    void an_archive_holds_the_record_behind_links_and_tells_of_others() throws IOException {
        Path elsewhere = Files.createDirectory(scratch.resolve("synced"));
        Files.move(garden.resolve("journal.jsonl"), elsewhere.resolve("journal.jsonl"));
        Files.createSymbolicLink(garden.resolve("journal.jsonl"), elsewhere.resolve("journal.jsonl"));
        Files.createSymbolicLink(garden.resolve("pictures"), elsewhere);
        Files.createSymbolicLink(garden.resolve("round"), garden);
        Files.writeString(garden.resolve("notes.txt"), "beds");
        Files.createSymbolicLink(garden.resolve("again.txt"), Path.of("notes.txt"));
        Files.createSymbolicLink(scratch.resolve("linked"), garden);

        Cli.Result result = Cli.in(scratch).run("pack", "--garden=linked", "--today=2026-11-25");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err().replaceAll("\\s+", " ")).contains("pictures is a link that leads out",
                "round is a link to a folder");
        try (var zip = new java.util.zip.ZipFile(scratch.resolve("terrace-2026-11-25.zip").toFile())) {
            assertThat(zip.stream().map(each -> each.getName()))
                    .contains("garden.json", "journal.jsonl", "notes.txt", "again.txt")
                    .noneMatch(name -> name.startsWith("pictures") || name.startsWith("round"));
            assertThat(zip.getInputStream(zip.getEntry("journal.jsonl")))
                    .hasBinaryContent(Files.readAllBytes(elsewhere.resolve("journal.jsonl")));
        }
    }

    @Test
    void no_archive_without_a_journal_takes_the_place_of_a_good_one() throws IOException {
        assertThat(run("pack").exit()).isZero();
        byte[] good = Files.readAllBytes(scratch.resolve("terrace-2026-11-25.zip"));
        Files.delete(garden.resolve("journal.jsonl"));
        Files.createDirectory(garden.resolve("journal.jsonl"));

        Cli.Result result = run("pack", "--out=terrace-2026-11-25.zip");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(Files.readAllBytes(scratch.resolve("terrace-2026-11-25.zip"))).isEqualTo(good);
        try (Stream<Path> files = Files.list(scratch)) {
            assertThat(files.map(file -> file.getFileName().toString())).noneMatch(name -> name.startsWith(".oldwood"));
        }
    }

    /** With what was said on one line, wherever it was wrapped. */
    private Cli.Result run(String... arguments) {
        Cli.Result result = Cli.in(scratch)
                .run(Stream.concat(Stream.of(arguments), Stream.of("--garden=garden", "--today=2026-11-25"))
                        .toArray(String[]::new));
        return new Cli.Result(result.exit(), result.out(), result.err().replaceAll("\\s+", " "));
    }
}

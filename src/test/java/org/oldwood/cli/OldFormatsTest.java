package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.garden.GardenReader;

/**
 * Gardens as they were written in every format that there ever was: {@code formats/<format>/}. They are never changed.
 * Each opens, says the same, and goes on.
 */
class OldFormatsTest {
    private static final Path FORMATS = Path.of("src/test/resources/formats");

    @TempDir
    Path folder;

    static List<Path> gardens() throws IOException {
        try (Stream<Path> formats = Files.walk(FORMATS, 2)) {
            return formats.filter(path -> Files.exists(path.resolve("garden.json"))).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("gardens")
    void a_garden_of_an_old_format_opens_and_goes_on(Path garden) throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl")) {
            Files.copy(garden.resolve(name), folder.resolve(name));
        }
        int entries = Files.readAllLines(folder.resolve("journal.jsonl")).size();

        Cli.Result check = Cli.in(folder).run("check", "--today=2026-11-25", "--json");
        Cli.Result tasks = Cli.in(folder).run("tasks", "--each", "--today=2026-11-25");
        String bed = Files.readString(folder.resolve("garden.json"))
                .replaceFirst("(?s).*\"beds\".*?\"id\": *\"([^\"]+)\".*", "$1");
        Cli.Result note = Cli.in(folder).run("note", "watered", "--bed=" + bed, "--litres=5", "--today=2026-11-25");

        assertThat(check.exit()).as(check.out()).isZero();
        assertThat(tasks.exit()).isZero();
        assertThat(tasks.out()).contains("2026", "2027");
        assertThat(note.exit()).as(note.err()).isZero();
        assertThat(Files.readAllLines(folder.resolve("journal.jsonl"))).hasSize(entries + 1);
    }

    @Test
    void every_format_up_to_the_present_is_kept() {
        for (int format = 1; format <= GardenReader.FORMAT; format++) {
            assertThat(FORMATS.resolve(Integer.toString(format))).isDirectory();
        }
    }

    @Test
    void a_later_format_is_told_and_nothing_is_written() throws IOException {
        Path garden = folder.resolve("garden.json");
        Path old = FORMATS.resolve("1/terrace-school/garden.json");
        Files.writeString(garden, Files.readString(old).replaceFirst("\"format\": *1", "\"format\": 2, \"new\": 1"));

        for (String command : List.of("tasks", "note watered --bed=x --litres=1", "check")) {
            Cli.Result result = Cli.in(folder).run((command + " --today=2026-11-25").split(" "));

            assertThat(result.exit()).isEqualTo(1);
            assertThat(result.err()).contains("is 2, but this program knows formats up to 1", "Use a newer Oldwood")
                    .contains("1 problem");
        }
        assertThat(folder.resolve("journal.jsonl")).doesNotExist();
    }
}

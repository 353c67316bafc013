package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.cli.command.Cli;

/** The example in each command's help runs, given inside the folder of a demo garden. */
class ExamplesTest {
    private static final Path DEMO = Path.of("demo-data/terrace-school");

    @TempDir
    Path folder;

    /** All but the page, which stays open until it is stopped: see PageServerTest and GardenDeskTest. */
    static List<String> names() {
        return Commands.names().stream().filter(name -> !name.equals("walk")).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void the_example_in_the_help_runs(String name) throws IOException {
        copyDemo(folder);
        copyDemo(folder.resolve(DEMO));
        Files.writeString(folder.resolve("station.csv"), weather());
        Files.writeString(folder.resolve("notes.csv"),
                "date,entry,task,note\n2026-01-05,skipped,clean-tools@garden@2026,rain\n");
        String help = Cli.in(folder).run(name, "--help").out();

        List<String> words = words(example(help));
        if (!words.contains("--today")) { words.add("--today=2026-11-25"); }
        Cli.Result result = Cli.in(folder).with("HOME", folder.toString()).run(words.toArray(String[]::new));

        assertThat(result.exit()).as(words + "\n" + result.err()).isZero();
    }

    private static String example(String help) {
        int start = help.indexOf("\n  oldwood ", help.indexOf("\nExample:"));
        int end = help.indexOf("\n", start + 1);
        while (help.charAt(end - 1) == '\\') {
            end = help.indexOf("\n", end + 1);
        }
        return help.substring(start + 11, end).replace("\\\n", " ");
    }

    /** Splits as a shell does, as far as our examples need it. */
    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        String[] parts = line.split("\"", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i % 2 == 1) {
                words.add(parts[i]);
            } else {
                Stream.of(parts[i].strip().split(" +")).filter(word -> !word.isEmpty()).forEach(words::add);
            }
        }
        return words;
    }

    /** Two years of days, warm in July; it only has to be readable. */
    private static String weather() {
        StringBuilder csv = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate first = LocalDate.of(2024, 11, 1);
        for (int i = 0; i < 730; i++) {
            LocalDate day = first.plusDays(i);
            long mean = Math.round(10 - 8 * Math.cos((day.getDayOfYear() - 15) * Math.PI / 182.5));
            csv.append(day + "," + (mean - 4) + "," + (mean + 4) + ",1.5\n");
        }
        return csv.toString();
    }

    private static void copyDemo(Path into) throws IOException {
        try (Stream<Path> files = Files.walk(DEMO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = into.resolve(DEMO.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }
}

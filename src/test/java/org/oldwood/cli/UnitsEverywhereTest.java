package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** Whatever a person reads is in their own units; whatever a program reads is not. */
class UnitsEverywhereTest {
    private static final List<String> COMMANDS = List.of("now", "tasks", "tasks year", "water", "water --compare",
            "stages", "chill", "heat", "prune", "feed", "ledger", "shopping", "lime", "acidify", "mulch", "cuttings",
            "stock", "check", "et0", "why --not feed", "suits --at 51.9,-2.6", "note watered --feel ? --bed");

    /** Terms of an equation keep the units in which it is printed; names of ways may hold a unit's name. */
    private static final Pattern METRIC = Pattern.compile(
            "(?<![\\w²³/'-])(°C|mm|cm|m|m²|m³|m2|m3|ml|l|g|kg|litres?|metres?|grams?|km|t/ha|kg/ha|g/m²|g/m2)(?![\\w²³='’.-])");

    private static final Pattern OWN = Pattern
            .compile("\\d (°F|in (?=deep|of|in|on|from|apart)|ft|sq ft|sq yd|yd|oz|lb(?!/acre in"
                    + " print)|gal|pt|qt|cups?|tbsp|tsp|acres)\\b");

    /** A range without its unit behind a figure that was put into another: {@code 17.5 lb expected (3.6 to 10)}. */
    private static final Pattern BARE = Pattern
            .compile("\\d (°F|in|ft|oz|lb|gal|pt|qt)\\b[a-z ]*\\([\\d.]+ to [\\d.]+\\)");

    @TempDir
    Path scratch;

    @BeforeEach
    void copy() throws IOException {
        for (String name : List.of("terrace-school", "fire-station-hedges")) {
            Path from = Path.of("demo-data", name);
            try (Stream<Path> files = Files.walk(from)) {
                for (Path file : files.toList()) {
                    Files.copy(file, scratch.resolve(name).resolve(from.relativize(file).toString()));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"terrace-school, us, 2026-11-28, 22", "fire-station-hedges, imperial, 2026-06-10, 4"})
    void no_output_holds_a_metric_unit(String garden, String units, String day, int commands) throws IOException {
        declare(garden, units);

        for (String command : COMMANDS.subList(0, commands)) {
            String out = run(garden, day, command.split(" ")).out();
            assertThat(out.lines()).as(command).noneMatch(line -> METRIC.matcher(line).find());
            assertThat(out.replaceAll("\\s+", " ")).as(command).doesNotContainPattern(BARE);
        }
        for (Path file : written(garden, day)) {
            assertThat(words(file)).as(file.toString()).doesNotContainPattern(METRIC).doesNotContainPattern(BARE);
        }
    }

    @Test
    void a_metric_garden_reads_no_others() throws IOException {
        for (String command : List.of("feed", "water", "shopping", "stages")) {
            assertThat(run("fire-station-hedges", "2026-06-10", command.split(" ")).out()).as(command)
                    .doesNotContainPattern(OWN);
        }
        for (Path file : written("fire-station-hedges", "2026-06-10")) {
            assertThat(words(file)).as(file.toString()).doesNotContainPattern(OWN);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"feed", "water", "tasks", "stock"})
    void json_is_the_same_in_all_units_and_says_so(String command) {
        String metric = run("terrace-school", "2026-11-28", command, "--json").out();

        assertThat(run("terrace-school", "2026-11-28", command, "--json", "--units", "us").out()).isEqualTo(metric)
                .startsWith("{\n  \"units\": \"SI\",\n");
    }

    @Test
    void what_is_typed_in_own_units_is_noted_in_metric() throws IOException {
        declare("terrace-school", "us");
        List<String> before = journal();

        run("terrace-school", "2026-11-28", "note", "fed", "acid-bed", "--material", "sulphur", "--grams", "4 oz");
        run("terrace-school", "2026-11-28", "note", "watered", "acid-bed", "--litres", "3 gal");
        run("terrace-school", "2026-11-28", "note", "mulched", "acid-bed", "--material", "straw", "--depthCm", "3 in");
        run("terrace-school", "2026-11-28", "note", "picked", "bc-1", "--kg", "2 lb 8 oz");

        assertThat(journal().subList(before.size(), journal().size()).toString()).contains("\"grams\":113.3981",
                "\"litres\":11.3562", "\"depthCm\":7.62", "\"kg\":1.134");
    }

    @Test
    void what_is_no_weight_is_refused_with_what_is() throws IOException {
        List<String> before = journal();

        Cli.Result result = run("terrace-school", "2026-11-28", "note", "fed", "acid-bed", "--material", "sulphur",
                "--grams", "4 ft");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " "))
                .contains("must be a weight such as 250 g, 4 oz or 2 lb 8 oz, but is \"4 ft\"");
        assertThat(run("terrace-school", "2026-11-28", "note", "watered", "acid-bed", "--litres", "3 gal").err())
                .contains("differs between Britain and the");
        assertThat(journal()).isEqualTo(before);
    }

    @Test
    void a_bare_number_is_in_the_gardens_units() throws IOException {
        String metric = run("terrace-school", "2026-11-28", "mulch", "--area", "9.290304", "--depth", "5.08",
                "--material", "wood-chips").out();
        declare("terrace-school", "us");

        Cli.Result us = run("terrace-school", "2026-11-28", "mulch", "--area", "100", "--depth", "2 in", "--material",
                "wood-chips");

        assertThat(us.err()).isEmpty();
        assertThat(us.out()).contains("100 sq ft", "2 in");
        assertThat(metric).contains("9.29 m²", "5.08 cm");
    }

    private List<String> journal() throws IOException {
        return Files.readAllLines(scratch.resolve("terrace-school/journal.jsonl"));
    }

    private void declare(String garden, String units) throws IOException {
        Path file = scratch.resolve(garden).resolve("garden.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{\"units\": \"" + units + "\","));
    }

    private List<Path> written(String garden, String day) throws IOException {
        run(garden, day, "calendar", "--out", "calendars");
        run(garden, day, "sheet", "--full", "--out", "sheet.html");
        try (Stream<Path> files = Files.list(scratch.resolve("calendars"))) {
            return Stream.concat(Stream.of(scratch.resolve("sheet.html")), files.toList().stream()).toList();
        }
    }

    private static String words(Path file) {
        try {
            return Files.readString(file).replaceAll("(?s)<style.*?</style>|<[^>]*>", " ").replace("\r\n ", "")
                    .replace("\\n", "\n").lines()
                    .filter(line -> !line.matches("[A-Z-]+[:;].*") || line.matches("(SUMMARY|DESCRIPTION).*"))
                    .reduce("", (a, b) -> a + "\n" + b);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Cli.Result run(String garden, String day, String... args) {
        List<String> all = Stream.concat(Stream.of(args), Stream.of("--garden", garden, "--today", day)).toList();
        return Cli.in(scratch).run(all.toArray(String[]::new));
    }
}

package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** A garden's own crops, rules and materials, checked as the crafts read them. */
class OwnDataTest {
    private static final Path DATA = Path.of("src/main/resources/org/oldwood");

    @TempDir
    Path folder;

    @BeforeEach
    void begin() { NotingChild.garden(folder); }

    @Test
    void all_bundled_data_as_ones_own_are_found_good() throws IOException {
        try (Stream<Path> files = Files.walk(DATA)) {
            for (Path file : files.filter(OwnDataTest::isDocument).toList()) {
                copy(DATA.relativize(file).toString());
            }
        }

        assertThat(check()).isEqualTo(new Cli.Result(0, "", ""));
    }

    /** What a garden may have of its own; the table of weather stations is read from the program alone. */
    private static boolean isDocument(Path file) {
        return Files.isRegularFile(file) && file.toString().endsWith(".json");
    }

    @ParameterizedTest(name = "{0}: {1} becomes {2}")
    @CsvSource(delimiter = '|', value = {
            "crops/haskap/cuttings.json|\"rooted\":|\"rootet\":|methods[0].rootet is not a key that is known"
                    + " here|Did you mean \"rooted\"?",
            "crops/haskap/cuttings.json|\"is\": 90|\"is\": \"ninety\"|must be a number|Write for example",
            "crops/blackcurrant/pruning.json|\"format\": 1|\"format\": 7|format must be a number from 1 to 1|Write"
                    + " for example",
            "crops/blackcurrant/yield.json|\"unit\"|\"units\"|units is not a key that is known here|Did you mean"
                    + " \"unit\"?",
            "crops/blueberry/yield.json|\"weights\": [0.1|\"weights\": [1000000000|weights must lie, each, from"
                    + " its number|\"least\"",
            "crops/blackcurrant/feeding.json|\"timing\"|\"timming\"|timing is missing|it must be a text",
            "crops/blackcurrant/stages.json|\"format\": 1|\"format\": 1, \"frosts\": {}|frosts is not a key|Did"
                    + " you mean \"frost\"?",
            "crops/blackcurrant/crop.json|\"counted\": \"bush\"|\"counted\": \"tree\"|must be one of bush,"
                    + " row|Known here",
            "rules/pruning.json|\"plant\"|\"plants\"|must be one of plant, stand, bed, lot, garden|Did you mean"
                    + " \"plant\"?",
            "rules/pruning.json|[\"count-stems\"]|[\"count-stem\"]|names no rule that is known: \"count-stem\"|Did"
                    + " you mean \"count-stems\"?",
            "rules/pruning.json|{subject}|{subjekt}|names no placeholder that is known: \"subjekt\"|Did you mean"
                    + " \"subject\"?",
            "rules/pruning.json|[\"count-stems\"]|[\"winter-cut\"]|ring|Take the rule out",
            "rules/feeding.json|{\"fact\": \"latest-feed\"}|{\"fact\": \"latest-fed\"}|names no fact that is"
                    + " known: \"latest-fed\"|Did you mean \"latest-feed\"?",
            "crops/whitecurrant/crop.json|\"redcurrant\"|\"redcurant\"|names no crop that is known:"
                    + " \"redcurant\"|Did you mean \"redcurrant\"?",
            "crops/whitecurrant/crop.json|\"redcurrant\"|\"whitecurrant\"|leads back|sections of its own",
            "rules/pruning.json|\"tools\": [\"blade\"],|\"cautions\": [\"eyess\"],|names no caution that is"
                    + " known|Did you mean \"eyes\"?",
            "materials/feeds.json|\"feeds\"|\"feedz\"|feedz is not a key|Did you mean \"feeds\"?",
            "climates/oxford.json|\"meanMaxC\"|\"meanMax\"|meanMax is not a key|Did you mean \"meanMaxC\"?",
            "crops/blackcurrant/feeding.json|\"timing\": \"|\"timing\": \"x-|asks for what is not there: feeding.json: has no timing|for which other data ask",
            "crops/blackcurrant/feeding.json|\"K2O\": \"|\"K2O\": \"x-|has no table|Did you mean",
            "liming.json|\"gardenTable\"|\"gardentable\"|gardenTable is missing|it must be an object",
            "acidifying.json|\"perUnit\"|\"perunit\"|perUnit is missing|it must be an object",
            "rounds.json|\"kinds\"|\"kind\"|kind is not a key|Did you mean \"kinds\"?",
            "rounds.json|\"by\": \"crop\"|\"by\": \"crops\"|must be one of season, crop, group, bed, week|Did you mean \"crop\"?",
            "rounds.json|[\"clean-tools\"]|[\"clean-tool\"]|names no rule that is known: \"clean-tool\"|Did you mean \"clean-tools\"?",
            "rounds.json|[\"clean-tools\"]|[\"winter-cut\"]|gathers a rule that stands in this file before: \"winter-cut\"|Leave it",
            "countries.json|\"zones\"|\"zonez\"|zonez is not a key|Did you mean \"zones\"?",
            "countries.json|[\"Europe/Andorra\"]|7|must be a list|[",
            "cautions.json|\"tasks\"|\"task\"|task is not a key|Did you mean \"tasks\"?",
            "cautions.json|\"gravity\": 3|\"gravity\": 4|gravity must be a number from 1 to 3|Write for example",
            "cautions.json|[\"GB\"]|[\"-GBR\"]|names no country that is known: \"GBR\"|ISO 3166",
            "cautions.json|\"tasks\": [\"prune\"|\"tasks\": [\"prun\"|names no work that is known: \"prun\"|Did you mean \"prune\"?",
            "unlikely.json|\"figures\"|\"figure\"|figures is missing|it must be an object",
            "crops/blackcurrant/water.json|\"source\": \"|\"source\": \"nobody-|names no source that is known|Add"
                    + " it to a file in sources/"})
    void a_fault_is_told_with_place_and_remedy(String file, String from, String to, String message, String remedy)
            throws IOException {
        copy(file);
        Path own = folder.resolve(file);
        String text = Files.readString(own);
        assertThat(text).contains(from);
        Files.writeString(own, text.replaceFirst(java.util.regex.Pattern.quote(from), to));

        Cli.Result result = check();

        assertThat(result.exit()).isEqualTo(1);
        String said = result.err().replaceAll("\\s+", " ");
        assertThat(said).contains(file + ":").contains(message).contains(remedy);
        assertThat(said).doesNotContain("cannot be understood");
    }

    @ParameterizedTest
    @CsvSource({"crops/blackcurrant/prunning.json, is no section of a crop, pruning",
            "crops/worcesterberry/pruning.json, belongs to a crop that has no crop.json, crop.json"})
    void a_file_that_nobody_would_read_is_told(String file, String message, String remedy) throws IOException {
        Path own = folder.resolve(file);
        Files.createDirectories(own.getParent());
        Files.writeString(own, "{\"format\": 1}");

        Cli.Result result = check();

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err().replaceAll("\\s+", " ")).contains(file, message, remedy);
    }

    @Test
    void a_rule_that_names_what_is_not_there_is_told() throws IOException {
        Files.createDirectories(folder.resolve("rules"));
        Files.writeString(folder.resolve("rules/ours.json"),
                "{\"rules\": [{\"id\": \"ours\", \"craft\": \"pruning\", \"title\": \"Look\","
                        + " \"subject\": \"plant\", \"crops\": [\"blackcurant\"],"
                        + " \"forms\": [\"stol\"], \"amount\": \"winter-cutt\","
                        + " \"opens\": {\"stage\": \"dormant\"}, \"closes\": {\"day\": \"02-01\"},"
                        + " \"when\": [{\"fact\": \"agee\", \"atLeast\": 1}],"
                        + " \"reason\": \"So.\", \"source\": \"memory\", \"seen\": \"memory\"}]}");

        String said = check().err().replaceAll("\\s+", " ");

        assertThat(said).contains("names no crop that is known: \"blackcurant\"")
                .contains("Did you mean \"blackcurrant\"?")
                .contains("names no form that is known: \"stol\"", "Did you mean \"stool\"?")
                .contains("names no amount that is known: \"winter-cutt\"")
                .contains("names no fact that is known: \"agee\"", "Did you mean \"age\"?");
    }

    @Test
    void a_rule_like_another_says_only_what_differs() throws IOException {
        String rule = """
                {"rules": [{"id": "net-off-ours", "like": "%s", "crops": ["haskap"],
                 "closes": {"stage": "ripe", "plusDays": 50}}]}
                """;
        Files.createDirectories(folder.resolve("rules"));
        Files.writeString(folder.resolve("rules/ours.json"), rule.formatted("net-off"));
        assertThat(check().exit()).isZero();

        Files.writeString(folder.resolve("rules/ours.json"), rule.formatted("net-of"));
        assertThat(check().err()).contains("names no rule that is written out: \"net-of\"",
                "Did you mean \"net-off\"?");

        Files.writeString(folder.resolve("rules/ours.json"), rule.formatted("net-off-haskap"));
        assertThat(check().err()).containsPattern("names no rule that is written out:\\s+\"net-off-haskap\"");
    }

    /** Found by damaging file names at random: a NUL, which no file can have in its name. */
    @Test
    void a_name_that_no_file_can_have_is_told_as_one_that_is_not_there() {
        Cli.Result result = Cli.in(folder).run("calendar", "read", "\0nowhere", "--today=2026-11-25");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("is not a file that can be read");
    }

    /** What bad data lead to later is told as what it is, not as a fault of the program. */
    @Test
    void a_command_stopped_by_bad_data_names_them() throws IOException {
        copy("crops/blackcurrant/crop.json");
        Path own = folder.resolve("crops/blackcurrant/crop.json");
        Files.writeString(own, Files.readString(own).replaceFirst("\"forms\": \\[[^]]*]", "\"forms\": []"));

        Cli.Result result = Cli.in(folder).run("tasks", "--today=2026-11-25");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("must name at least one form");
    }

    /** A crop of one's own may have been written when fewer stages were known. */
    @Test
    void a_stage_that_a_crop_does_not_know_falls_on_the_one_before_it() throws IOException {
        copy("crops/haskap/stages.json");
        Path stages = folder.resolve("crops/haskap/stages.json");
        Files.writeString(stages,
                Files.readString(stages).replaceAll("\\s*\"first-leaves\": \\{(\"north.*|[^}]*}[^}]*}\\s*},)", ""));

        String told = Cli.in(folder).run("stages", "haskap", "--json", "--today=2027-01-10").out();

        assertThat(told).containsPattern("first leaves by the calendar.*the crop gives no day of its own for it");
        assertThat(check()).isEqualTo(new Cli.Result(0, "", ""));
    }

    private void copy(String name) throws IOException {
        Path to = folder.resolve(name);
        Files.createDirectories(to.getParent());
        Files.copy(DATA.resolve(name), to);
    }

    private Cli.Result check() { return Cli.in(folder).run("check", "--today=2026-11-25"); }
}

package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.harrel.jsonschema.FormatEvaluatorFactory;
import dev.harrel.jsonschema.JsonNodeFactory;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.cli.command.Cli;

/**
 * The JSON Schemas in {@code docs/} against a validator of other hands (dev.harrel:json-schema, on another JSON reader,
 * Gson): what the program reads without a word they accept, and what they refuse the program refuses too. Formats
 * ({@code date}, {@code uuid}) are asserted.
 */
class SchemaJudgementTest {
    private static final Path RECORDS = Path.of("src/test/resources/schema");
    private static final Path DEMO = Path.of("demo-data/terrace-school");
    private static final URI GARDEN = URI.create("urn:oldwood:garden");
    private static final URI ENTRY = URI.create("urn:oldwood:entry");
    private static final Validator VALIDATOR = validator();

    @TempDir
    Path folder;

    /** A record with one thing wrong: a change to the demo garden, or one line of a journal. */
    private record Fault(String what, JsonObject row) {
        boolean isEntry() { return row.has("entry"); }

        @Override
        public String toString() { return what; }
    }

    private static Validator validator() {
        JsonNodeFactory gson = new GsonNode.Factory();
        Validator validator = new ValidatorFactory().withJsonNodeFactory(gson)
                .withEvaluatorFactory(new FormatEvaluatorFactory()).createValidator();
        validator.registerSchema(GARDEN, read(Path.of("docs/garden.schema.json")));
        validator.registerSchema(ENTRY, read(Path.of("docs/journal.schema.json")));
        return validator;
    }

    static List<Path> gardens() throws IOException {
        try (Stream<Path> all = Stream.concat(Files.walk(Path.of("demo-data"), 1),
                Files.walk(Path.of("src/test/resources/formats"), 2))) {
            return all.filter(path -> Files.exists(path.resolve("garden.json"))).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("gardens")
    void a_garden_that_the_program_reads_is_valid(Path garden) throws IOException {
        assertThat(faults(GARDEN, read(garden.resolve("garden.json")))).isEmpty();
        List<String> lines = Files.readAllLines(garden.resolve("journal.jsonl"));
        assertThat(lines).hasSizeGreaterThan(100);
        for (String line : lines) {
            assertThat(faults(ENTRY, line)).as(line).isEmpty();
        }
    }

    @Test
    void the_gardens_are_both_demo_gardens_and_all_old_ones() throws IOException { assertThat(gardens()).hasSize(4); }

    static List<Fault> refused() throws IOException { return faultsIn("refused.jsonl"); }

    @ParameterizedTest
    @MethodSource("refused")
    void what_is_wrong_in_itself_is_refused_by_schema_and_program(Fault fault) throws IOException {
        lay(fault);

        assertThat(schemaFaults(fault)).isNotEmpty();
        assertThat(programsWord()).isEqualTo(1);
    }

    static List<Fault> laxer() throws IOException { return faultsIn("laxer.jsonl"); }

    /** A schema sees one file or line, and no lists of what is known: here the program is sterner. */
    @ParameterizedTest
    @MethodSource("laxer")
    void what_only_the_whole_record_shows_is_refused_by_the_program_alone(Fault fault) throws IOException {
        lay(fault);

        assertThat(schemaFaults(fault)).isEmpty();
        assertThat(programsWord()).isEqualTo(1);
    }

    private List<String> schemaFaults(Fault fault) throws IOException {
        if (fault.isEntry()) { return faults(ENTRY, fault.row().get("entry").toString()); }
        return faults(GARDEN, read(folder.resolve("garden.json")));
    }

    private int programsWord() { return Cli.in(folder).run("check", "--today=2026-11-25").exit(); }

    /** Lays the demo garden with the fault in it. */
    private void lay(Fault fault) throws IOException {
        String garden = read(DEMO.resolve("garden.json"));
        String journal = read(DEMO.resolve("journal.jsonl"));
        if (fault.isEntry()) {
            journal += fault.row().get("entry") + "\n";
        } else {
            garden = changed(garden, fault.row()).toString();
        }
        Files.writeString(folder.resolve("garden.json"), garden);
        Files.writeString(folder.resolve("journal.jsonl"), journal);
    }

    /** Puts the row's value at its place; takes out what is there where it has none. */
    private static JsonElement changed(String garden, JsonObject row) {
        String place = row.get("garden").getAsString();
        if (place.isEmpty()) { return row.get("value"); }
        JsonElement whole = JsonParser.parseString(garden);
        JsonElement part = whole;
        String[] keys = place.split("/", -1);
        for (int i = 0; i < keys.length - 1; i++) {
            part = step(part, keys[i]);
        }
        String last = keys[keys.length - 1];
        if (part.isJsonArray()) {
            part.getAsJsonArray().set(Integer.parseInt(last), row.get("value"));
        } else if (row.has("value")) {
            part.getAsJsonObject().add(last, row.get("value"));
        } else {
            assertThat(part.getAsJsonObject().remove(last)).as(place).isNotNull();
        }
        return whole;
    }

    private static JsonElement step(JsonElement part, String key) {
        return part.isJsonArray() ? part.getAsJsonArray().get(Integer.parseInt(key)) : part.getAsJsonObject().get(key);
    }

    private static List<String> faults(URI schema, String json) {
        return VALIDATOR.validate(schema, json).getErrors().stream()
                .map(error -> error.getInstanceLocation() + " " + error.getError()).toList();
    }

    private static List<Fault> faultsIn(String name) throws IOException {
        return Files.readAllLines(RECORDS.resolve(name)).stream()
                .map(line -> JsonParser.parseString(line).getAsJsonObject())
                .map(row -> new Fault(row.get("what").getAsString(), row)).toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}

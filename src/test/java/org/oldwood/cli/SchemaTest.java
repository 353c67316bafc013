package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stage;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenReader;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.JsonText;
import org.oldwood.store.Problems;

/**
 * The JSON Schemas in {@code docs/}: the journal's is made from the table of kinds; the garden's names the keys that
 * the reader knows, no more and no fewer.
 */
class SchemaTest {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
    private static final String ID = "^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$";

    @Test
    void the_journals_schema_is_made_from_the_table_of_kinds() throws IOException {
        Path file = Path.of("docs/journal.schema.json");
        if (Boolean.getBoolean("golden.update")) { Files.writeString(file, journalSchema()); }
        assertThat(Files.readString(file)).isEqualTo(journalSchema());
    }

    @Test
    void the_gardens_schema_has_the_keys_that_the_reader_knows() throws IOException {
        Json.Obj schema = read(Files.readString(Path.of("docs/garden.schema.json")));
        Json.Obj keys = object(schema, "properties");
        Json.Obj site = object(object(keys, "site"), "properties");
        Json.Obj bed = object(object(object(keys, "beds"), "items"), "properties");

        assertThat(keys.members().keySet()).isEqualTo(known("", "{%s}"));
        assertThat(site.members().keySet()).isEqualTo(known("site", "{\"site\": {%s}}"));
        assertThat(bed.members().keySet()).isEqualTo(known("beds[0]", "{\"beds\": [{%s}]}"));
    }

    /** Asks the reader which keys it knows, by the list it gives for one that it does not. */
    private static Set<String> known(String path, String around) {
        Problems problems = new Problems();
        GardenReader.read(read(String.format(around, "\"zzzzzzzzzzzzzzzz\": 1")), problems);
        String remedy = problems.list().stream().filter(problem -> problem.name().equals("unknown-key"))
                .filter(problem -> problem.place().path().startsWith(path)).map(problem -> problem.remedy()).findFirst()
                .orElseThrow();
        return new TreeSet<>(List.of(remedy.substring("Known here: ".length()).split(", ")));
    }

    private static Json.Obj read(String text) {
        Problems problems = new Problems();
        Json json = JsonReader.readLine(text, "schema", 1, problems).orElseThrow();
        return (Json.Obj) json;
    }

    private static Json.Obj object(Json.Obj parent, String key) { return (Json.Obj) parent.members().get(key); }

    private static String journalSchema() {
        return JsonText.indented(map("$schema", DIALECT, "title", "One line of an Oldwood garden's journal.jsonl",
                "type", "object", "oneOf", Stream.of(EntryKind.values()).map(SchemaTest::kind).toList()), text -> text)
                + "\n";
    }

    /** Keys and values in turn, in their order. */
    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put(keysAndValues[i].toString(), keysAndValues[i + 1]);
        }
        return map;
    }

    private static Map<String, Object> kind(EntryKind kind) {
        List<String> names = kind.keysInJournals();
        Map<String, Object> properties = map("id", map("type", "string"), "date",
                map("type", "string", "format", "date"), "entry",
                names.size() == 1 ? map("const", kind.key()) : map("enum", names));
        kind.fields().forEach(field -> properties.put(field.key(), field(field)));
        properties.put("note", map("type", "string"));
        List<String> required = new ArrayList<>(List.of("id", "date", "entry"));
        kind.fields().stream().filter(EntryField::required).map(EntryField::key).forEach(required::add);
        Map<String, Object> schema = map("title", kind.meaning(), "type", "object", "properties", properties,
                "required", required);
        if (!kind.oneNeeded().isEmpty()) {
            schema.put("anyOf", kind.oneNeeded().stream().map(key -> map("required", List.of(key))).toList());
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    private static Map<String, Object> field(EntryField field) {
        Map<String, Object> schema = map("description", field.help());
        schema.putAll(switch (field.type()) {
            case NUMBER -> range("number", field);
            case COUNT -> range("integer", field);
            case FLAG -> map("type", "boolean");
            case WORD -> map("enum", field.words());
            case STAGE -> {
                List<String> stages = new ArrayList<>(Stage.keys());
                List.of(Stage.values()).forEach(stage -> stages.add(stage.bbch()));
                yield map("enum", stages);
            }
            case STEMS -> byAge();
            case SOME_STEMS -> map("anyOf", List.of(range("integer", field), byAge()));
            case NEW_ID -> map("type", "string", "pattern", ID);
            case NEW_IDS, PLANTS -> map("type", "array", "items", map("type", "string", "pattern", ID));
            case PLANT, BED, LOT, CROP, MATERIAL, TEXT, TASK, ENTRY -> map("type", "string");
        });
        return schema;
    }

    private static Map<String, Object> byAge() {
        Map<String, Object> counts = map("type", "integer", "minimum", 0, "maximum", 500);
        return map("type", "object", "patternProperties", map("^[0-9]{1,2}\\+?$", counts), "additionalProperties",
                false);
    }

    private static Map<String, Object> range(String type, EntryField field) {
        return map("type", type, "minimum", field.least(), "maximum", field.most());
    }
}

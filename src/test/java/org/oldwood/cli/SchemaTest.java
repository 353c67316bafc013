package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stage;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenReader;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.JsonWriter;
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
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(file, journalSchema());
        }
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
        String remedy = problems.list().stream()
                .filter(problem -> problem.name().equals("unknown-key"))
                .filter(problem -> problem.place().path().startsWith(path))
                .map(problem -> problem.remedy())
                .findFirst()
                .orElseThrow();
        return new TreeSet<>(List.of(remedy.substring("Known here: ".length()).split(", ")));
    }

    private static Json.Obj read(String text) {
        Problems problems = new Problems();
        Json json = JsonReader.readLine(text, "schema", 1, problems).orElseThrow();
        return (Json.Obj) json;
    }

    private static Json.Obj object(Json.Obj parent, String key) {
        return (Json.Obj) parent.members().get(key);
    }

    private static String journalSchema() {
        StringWriter text = new StringWriter();
        JsonWriter json = JsonWriter.indented(text).object();
        json.put("$schema", DIALECT)
                .put("title", "One line of an Oldwood garden's journal.jsonl")
                .put("type", "object");
        json.array("oneOf");
        for (EntryKind kind : EntryKind.values()) {
            kind(json, kind);
        }
        json.endArray().endObject().flush();
        return text + "\n";
    }

    private static void kind(JsonWriter json, EntryKind kind) {
        json.object().put("title", kind.meaning()).put("type", "object").object("properties");
        json.object("id").put("type", "string").endObject();
        json.object("date").put("type", "string").put("format", "date").endObject();
        json.object("entry");
        if (kind.keysInJournals().size() == 1) {
            json.put("const", kind.key()).endObject();
        } else {
            json.put("enum", kind.keysInJournals()).endObject();
        }
        kind.fields().forEach(field -> field(json, field));
        json.object("note").put("type", "string").endObject();
        List<String> required = new ArrayList<>(List.of("id", "date", "entry"));
        kind.fields().stream().filter(EntryField::required).map(EntryField::key).forEach(required::add);
        json.endObject().put("required", required);
        if (!kind.oneNeeded().isEmpty()) {
            json.array("anyOf");
            kind.oneNeeded()
                    .forEach(key -> json.object().put("required", List.of(key)).endObject());
            json.endArray();
        }
        json.put("additionalProperties", false).endObject();
    }

    private static void field(JsonWriter json, EntryField field) {
        json.object(field.key()).put("description", field.help());
        switch (field.type()) {
            case NUMBER -> range(json.put("type", "number"), field);
            case COUNT -> range(json.put("type", "integer"), field);
            case FLAG -> json.put("type", "boolean");
            case WORD -> json.put("enum", field.words());
            case STAGE -> {
                List<String> stages = new ArrayList<>(Stage.keys());
                List.of(Stage.values()).forEach(stage -> stages.add(stage.bbch()));
                json.put("enum", stages);
            }
            case STEMS -> byAge(json);
            case SOME_STEMS -> {
                json.array("anyOf");
                range(json.object().put("type", "integer"), field);
                json.endObject();
                byAge(json.object());
                json.endObject().endArray();
            }
            case NEW_ID -> json.put("type", "string").put("pattern", ID);
            case NEW_IDS, PLANTS -> {
                json.put("type", "array").object("items").put("type", "string").put("pattern", ID);
                json.endObject();
            }
            case PLANT, BED, LOT, CROP, MATERIAL, TEXT, TASK, ENTRY -> json.put("type", "string");
        }
        json.endObject();
    }

    private static void byAge(JsonWriter json) {
        json.put("type", "object").object("patternProperties").object("^[0-9]{1,2}\\+?$");
        json.put("type", "integer").put("minimum", 0).put("maximum", 500);
        json.endObject().endObject().put("additionalProperties", false);
    }

    private static void range(JsonWriter json, EntryField field) {
        json.put("minimum", field.least()).put("maximum", field.most());
    }
}

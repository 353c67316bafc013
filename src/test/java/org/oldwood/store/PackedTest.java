package org.oldwood.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackedTest {
    private static final Path DOCUMENTS = Path.of("src/main/resources/org/oldwood");

    private static byte[] bytes = new byte[0];

    @BeforeAll
    static void packs_the_bundled_documents() throws IOException {
        bytes = Packing.pack(DOCUMENTS);
    }

    @Test
    void gives_every_bundled_document_as_its_json_does() throws IOException {
        Packed packed = Packed.of(bytes);
        int documents = 0;
        for (Path file : files()) {
            String name = DOCUMENTS.relativize(file).toString().replace('\\', '/');

            assertThat(said(packed.read(name))).as(name).isEqualTo(said(fromJson(file, name)));
            documents++;
        }
        assertThat(documents).isGreaterThan(100);
    }

    @Test
    void gives_the_same_value_when_it_is_asked_again() {
        Map<String, Json> members = members(Packed.of(bytes), "rules/index.json");

        assertThat(members.get("rules")).isSameAs(members.get("rules"));
        assertThat(((Json.Arr) members.get("rules")).items().get(0))
                .isSameAs(((Json.Arr) members.get("rules")).items().get(0));
    }

    @Test
    void finds_a_key_whichever_text_asks_for_it(@TempDir Path folder) throws IOException {
        StringBuilder many = new StringBuilder("{\"k0\": 0");
        for (int i = 1; i < 40; i++) {
            many.append(", \"k").append(i).append("\": ").append(i);
        }
        Files.writeString(folder.resolve("many.json"), many + "}");
        Files.writeString(folder.resolve("few.json"), "{\"k0\": 0, \"k1\": [true, false, null]}");
        Packed packed = Packed.of(Packing.pack(folder));

        for (String name : List.of("many.json", "few.json")) {
            Map<String, Json> members = members(packed, name);
            assertThat(((Json.Num) members.get(new StringBuilder("k0").toString())).value())
                    .isZero();
            assertThat(members.get("k99")).isNull();
            assertThat(members.containsKey("k1")).isTrue();
            assertThat(members.containsKey("k")).isFalse();
        }
        assertThat(((Json.Num) members(packed, "many.json").get("k39")).value()).isEqualTo(39);
    }

    @Test
    void reports_an_unknown_key_however_many_there_are(@TempDir Path folder) throws IOException {
        StringBuilder many = new StringBuilder("{\"k0\": 0");
        for (int i = 1; i < 40; i++) {
            many.append(", \"k").append(i).append("\": ").append(i);
        }
        Files.writeString(folder.resolve("many.json"), many + "}");
        Problems problems = new Problems();
        Json json = Packed.of(Packing.pack(folder)).read("many.json");
        Fields fields = Fields.of(json, problems);
        for (int i = 0; i < 39; i++) {
            fields.count("k" + i, 0, 100);
        }

        fields.done();

        assertThat(problems.list()).hasSize(1);
        assertThat(problems.list().get(0).place().path()).isEqualTo("k39");
    }

    @Test
    void has_nothing_under_other_names() {
        assertThat(Packed.of(bytes).read("crops/no-such-crop/crop.json")).isNull();
    }

    @Test
    void takes_nothing_that_was_cut_short_or_is_something_else() {
        assertThat(Packed.of(Arrays.copyOf(bytes, bytes.length - 1))).isNull();
        assertThat(Packed.of(Arrays.copyOf(bytes, 5))).isNull();
        assertThat(Packed.of("{\"format\": 1, \"rules\": []}".getBytes(UTF_8))).isNull();
    }

    @Test
    void gives_the_same_bytes_from_the_same_documents() throws IOException {
        assertThat(Packing.pack(DOCUMENTS)).isEqualTo(bytes);
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(DOCUMENTS)) {
            return files.filter(file -> file.toString().endsWith(".json")).toList();
        }
    }

    private static Json fromJson(Path file, String name) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return JsonReader.read(in, name, new Problems()).orElseThrow();
        }
    }

    private static Map<String, Json> members(Packed packed, String name) {
        return ((Json.Obj) packed.read(name)).members();
    }

    /** Every value with its kind, place and key, in the order of the file. */
    private static List<String> said(Json value) {
        List<String> all = new ArrayList<>();
        say(value, all);
        return all;
    }

    private static void say(Json value, List<String> all) {
        String at = value.place() + " " + value.place().path() + ": ";
        if (value instanceof Json.Obj object) {
            all.add(at + object.members().size() + " members");
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                all.add(member.getKey());
                say(object.members().get(member.getKey()), all);
            }
        } else if (value instanceof Json.Arr array) {
            all.add(at + array.items().size() + " items");
            array.items().forEach(item -> say(item, all));
        } else if (value instanceof Json.Text text) {
            all.add(at + '"' + text.value() + '"');
        } else if (value instanceof Json.Num num) {
            all.add(at + num.value() + " written " + num.written());
        } else {
            all.add(at + value.shown());
        }
    }
}

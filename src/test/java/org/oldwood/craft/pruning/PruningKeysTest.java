package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/**
 * A key that nobody knows is told wherever it stands in a crop's pruning.json, so that a slip of the pen is not lost.
 */
class PruningKeysTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"redcurrant", "blueberry", "summer-raspberry"})
    void a_key_that_nobody_knows_is_told(String crop) throws IOException {
        JsonNode whole;
        try (InputStream in = PruningKeysTest.class
                .getResourceAsStream("/org/oldwood/crops/%s/pruning.json".formatted(crop))) {
            whole = JSON.readTree(in);
        }
        Map<String, ObjectNode> places = new LinkedHashMap<>();
        gather("", whole, places);
        Path file = folder.resolve("crops/%s/pruning.json".formatted(crop));
        Files.createDirectories(file.getParent());
        for (Map.Entry<String, ObjectNode> place : places.entrySet()) {
            place.getValue().put("slip", 1);
            Files.writeString(file, whole.toString());
            place.getValue().remove("slip");
            Problems problems = new Problems();
            Pruning.read(new Crops(Documents.with(folder, problems)).get(crop));

            assertThat(problems.list()).as(place.getKey()).extracting(Problem::name).contains("unknown-key");
        }
    }

    /** One object of each kind of place and set of keys. */
    private static void gather(String at, JsonNode node, Map<String, ObjectNode> places) {
        if (node instanceof ObjectNode object && !at.equals("/forms")) {
            places.putIfAbsent(at + keys(object), object);
        }
        node.properties().forEach(each -> gather(at + "/" + each.getKey(), each.getValue(), places));
        node.elements().forEachRemaining(each -> {
            if (node.isArray()) { gather(at, each, places); }
        });
    }

    private static List<String> keys(ObjectNode object) {
        return object.properties().stream().map(Map.Entry::getKey).toList();
    }
}

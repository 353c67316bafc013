package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;

/**
 * Each figure that keeps from harm, and some that do not, is the one that its source prints; of the first none is
 * without a row.
 */
class SafetyFiguresTest {
    private static final Documents DATA = Documents.bundled();

    /** Where in the data, what is printed, how it was seen, and by whom it is printed. */
    record Row(String path, String value, String mark, String source) {
        @Override
        public String toString() { return "%s (%s)".formatted(path, source); }
    }

    static List<Row> rows() {
        Path reference = Path.of("src/test/resources/reference");
        return Stream.of("safety.txt", "printed.txt").flatMap(file -> lines(reference.resolve(file)))
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\|", -1))
                .map(cell -> new Row(cell[0], cell[1], cell[2], cell[3])).toList();
    }

    static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void it_is_what_its_source_prints(Row row) {
        Json.Obj parent = (Json.Obj) at(row.path.substring(0, row.path.lastIndexOf('/')));
        Json value = parent.members().get(row.path.substring(row.path.lastIndexOf('/') + 1));

        if (value instanceof Json.Num number) {
            assertThat(number.value()).as(row.source).isEqualTo(Double.parseDouble(row.value));
        } else {
            assertThat(value).as(row.source).isInstanceOfSatisfying(Json.Text.class,
                    text -> assertThat(text.value()).isEqualTo(row.value));
        }
        if (!row.mark.isEmpty() && parent.members().get("seen") instanceof Json.Text seen) {
            assertThat(seen.value()).isEqualTo(row.mark);
        }
        assertThat(row.source).isNotBlank();
    }

    /** What cold kills, which materials are kept apart, and which are kept off a crop. */
    @Test
    void every_such_figure_has_a_row() throws IOException {
        Set<String> paths = new TreeSet<>();
        for (String crop : new Crops(DATA).ids()) {
            String file = "crops/%s/stages.json".formatted(crop);
            DATA.read(file).map(json -> ((Json.Obj) json).members().get("frost"))
                    .ifPresent(frost -> numbers(file + "/frost", frost, paths));
        }
        numbers("keep-apart.json", at("keep-apart.json"), paths);
        paths.remove("keep-apart.json/format");

        assertThat(rows().stream().map(Row::path).collect(Collectors.toSet())).containsAll(paths);
        assertThat(paths).hasSizeGreaterThan(70);
    }

    private static void numbers(String path, Json value, Set<String> found) {
        for (Map.Entry<String, Json> each : children(value).toList()) {
            String inner = path + "/" + each.getKey();
            if (each.getValue() instanceof Json.Num) { found.add(inner); }
            numbers(inner, each.getValue(), found);
        }
    }

    static Json at(String path) {
        int end = path.indexOf(".json") + ".json".length();
        Json found = DATA.read(path.substring(0, end)).orElseThrow();
        for (String name : new ArrayList<>(List.of(path.substring(end).split("/", -1)))) {
            if (!name.isEmpty()) {
                found = children(found).filter(each -> each.getKey().equals(name)).findFirst()
                        .orElseThrow(() -> new AssertionError(path + " is not in the data")).getValue();
            }
        }
        return found;
    }

    /** Members by key, items of a list by their id, or by their place where they have none. */
    static Stream<Map.Entry<String, Json>> children(Json value) {
        if (value instanceof Json.Obj object) { return object.members().entrySet().stream(); }
        List<Json> items = value instanceof Json.Arr array ? array.items() : List.of();
        return IntStream.range(0, items.size()).mapToObj(at -> Map.entry(name(items.get(at), at), items.get(at)));
    }

    private static String name(Json item, int at) {
        return item instanceof Json.Obj object && object.members().get("id") instanceof Json.Text id ? id.value()
                : Integer.toString(at);
    }
}

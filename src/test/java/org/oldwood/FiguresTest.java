package org.oldwood;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Seen;
import org.oldwood.store.Json;

/**
 * The data's other figures a second time, so that none changes by accident; those beside the words of their publication
 * stand in {@link PrintedFiguresTest}. A row holds: the place in the data, the numbers there, the mark, the source keys,
 * and what the second reading found.
 *
 * <ul>
 *   <li>{@code noted}: each number is among those noted from that publication when it was read
 *   <li>{@code converted}: it is so after a change of unit, or as the middle of a printed range
 *   <li>{@code once}: read once, not found again
 *   <li>{@code worked out}, {@code remembered}, {@code practice}, {@code ours}: no print gives it; the row holds our
 *       choice
 * </ul>
 */
class FiguresTest {
    private static final Path ROWS = Path.of("src/test/resources/reference/figures");

    private static final Set<String> FOUND = Set.of("noted", "converted", "once", "worked out", "remembered",
            "practice", "ours");

    static List<Path> files() throws IOException { return files(ROWS); }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    static Stream<String[]> rows(Path file) {
        return SafetyFiguresTest.lines(file).filter(line -> !line.startsWith("#")).map(line -> line.split("\\|", -1));
    }

    @ParameterizedTest
    @MethodSource("files")
    void the_data_hold_what_stands_here(Path file) {
        assertThat(others(file)).as("a figure that changes is read again beside its source, and written here too")
                .isEmpty();
    }

    /** The rows that the data do not hold. */
    static List<String> others(Path file) {
        return rows(file).map(
                row -> "%s is %s here, %s in the data".formatted(row[0], row[1], numbers(SafetyFiguresTest.at(row[0]))))
                .filter(line -> !line.matches(".* is (.*) here, \\1 in the data")).toList();
    }

    /** What print gives has a mark that says so, and a source; a choice of ours does not pass for print. */
    @ParameterizedTest
    @MethodSource("files")
    void a_row_says_what_it_rests_on(Path file) {
        rows(file).forEach(row -> {
            assertThat(row).as(row[0]).hasSize(5);
            assertThat(FOUND).as(row[0]).contains(row[4]);
            if (Set.of("noted", "converted", "once").contains(row[4])) {
                assertThat(row[3]).as(row[0]).isNotBlank();
                assertThat(row[2]).as(row[0]).isIn(Seen.READ.key(), Seen.QUOTED.key());
            }
        });
    }

    /** The edges of the rules' windows and the figures of cautions stand in tables of their own. */
    @Test
    void hardly_a_number_of_the_data_is_without_a_row() throws IOException {
        Set<String> held = new TreeSet<>();
        Stream.concat(files().stream(), PrintedFiguresTest.files().stream())
                .forEach(file -> rows(file).map(row -> row[0]).forEach(held::add));
        Set<String> places = new TreeSet<>();
        Path data = Path.of("src/main/resources/org/oldwood");
        try (Stream<Path> all = Files.walk(data)) {
            all.map(path -> data.relativize(path).toString())
                    .filter(name -> name.endsWith(".json") && !name.matches("(sources|climates|page|sheet)/.*"))
                    .forEach(name -> places(name, SafetyFiguresTest.at(name), places));
        }
        places.removeIf(place -> place.matches("cautions\\.json/.*|rules/.*/(opens|closes)"));
        double share = places.stream().filter(held::contains).count() / (double) places.size();

        assertThat(share).isGreaterThan(0.95);
    }

    private static void places(String path, Json value, Set<String> found) {
        if (number(value).isEmpty() && !numbers(value).isEmpty()) { found.add(path); }
        SafetyFiguresTest.children(value).forEach(each -> places(path + "/" + each.getKey(), each.getValue(), found));
    }

    /** The numbers and days of an object by their keys, or those of a list of nothing else, or one alone. */
    private static String numbers(Json value) {
        if (!number(value).isEmpty()) { return number(value); }
        if (value instanceof Json.Arr list) {
            return list.items().isEmpty() || list.items().stream().anyMatch(item -> number(item).isEmpty()) ? ""
                    : "[%s]".formatted(list.items().stream().map(FiguresTest::number).collect(joining(", ")));
        }
        return SafetyFiguresTest.children(value).filter(each -> !each.getKey().equals("format"))
                .map(each -> Map.entry(each.getKey(), number(each.getValue())))
                .filter(each -> !each.getValue().isEmpty())
                .map(each -> "%s %s".formatted(each.getKey(), each.getValue())).collect(joining(", "));
    }

    private static String number(Json value) {
        if (value instanceof Json.Num number) {
            double is = number.value();
            return is == Math.rint(is) ? Long.toString((long) is) : Double.toString(is);
        }
        return value instanceof Json.Text text && text.value().matches("\\d\\d-\\d\\d") ? text.value() : "";
    }
}

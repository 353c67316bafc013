package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A page on what is checked names tests that are there, and the numbers of rows that they hold. */
class ValidationDocTest {
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w*Test)(?:\\.(\\w+))?`");

    private static final Pattern FILE = Pattern.compile("`(?:reference/)?([a-z0-9-]+\\.csv)`");

    /** What other rows are worked out from, and the table that another test writes into its page. */
    private static final Set<String> GROUND = Set.of("normals.csv", "hourly-72-temperatures.csv",
            "observed-stages.csv");

    @ParameterizedTest
    @MethodSource("pages")
    void every_test_named_is_there(Path page) throws IOException {
        Map<String, String> sources = sources();
        List<String> missing = TEST.matcher(Files.readString(page)).results().filter(named -> {
            String source = sources.getOrDefault(named.group(1), "");
            String method = named.group(2);
            return source.isEmpty() || (method != null && !source.contains("void " + method + "("));
        }).map(named -> named.group()).toList();

        assertThat(missing).isEmpty();
    }

    static List<Path> pages() throws IOException { return files(Path.of("docs"), "validation.*\\.md"); }

    /**
     * A row of a page that names a file of published values gives the number of its rows, and says what is computed.
     */
    @Test
    void every_file_of_published_values_is_named_with_its_number_of_rows() throws IOException {
        Map<String, String> told = new HashMap<>();
        for (Path page : pages()) {
            int column = -1;
            for (String line : Files.readAllLines(page)) {
                String[] cells = line.split(" ?\\| ?", -1);
                int rows = List.of(cells).stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList().indexOf("rows");
                column = rows > 0 ? rows : column;
                Matcher file = FILE.matcher(line);
                if (line.startsWith("|") && file.find() && column > 0) {
                    told.put(file.group(1), "%s|%s".formatted(cells[column].replaceFirst("\\D.*", ""), line));
                }
            }
        }
        for (Path file : files(Path.of("src/test/resources/reference"), ".*\\.csv")) {
            String name = file.getFileName().toString();
            if (GROUND.contains(name)) { continue; }
            List<String> rows = Files.readAllLines(file).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank()).skip(1).toList();
            assertThat(told).as("a row on a page of validation").containsKey(name);
            String line = told.getOrDefault(name, "");
            assertThat(line).as(name + ": rows").startsWith(rows.size() + "|");
            if (rows.stream().anyMatch(row -> row.matches(".*[,;] ?computed( ?[,;].*)?"))) {
                assertThat(line).as(name).contains("omputed");
            }
        }
    }

    private static List<Path> files(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(path -> path.getFileName().toString().matches(name)).sorted().toList();
        }
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new HashMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file : files.filter(path -> path.toString().endsWith("Test.java")).toList()) {
                String name = file.getFileName().toString();
                sources.put(name.substring(0, name.length() - 5), Files.readString(file));
            }
        }
        return sources;
    }
}

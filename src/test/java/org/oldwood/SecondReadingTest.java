package org.oldwood;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/**
 * Every row of a table of published values was read a second time by someone who did not write it. A line of
 * {@code second-reading.txt} holds: the table, what it was read beside, its rows (ids, or "others" for all that no other
 * line names), and the sum of those rows as they stood then, so that a row that comes or changes has to be read again.
 * {@code -Dgolden.update=true} writes the counts into their page.
 */
class SecondReadingTest {
    private static final Path RESOURCES = Path.of("src/test/resources");

    private static final Path PAGE = Path.of("docs/validation-trust.md");

    private static final String MARK = "<!-- made by SecondReadingTest -->\n";

    /** What a row can be read beside, as its page tells it. */
    private static final Map<String, String> BESIDE = Map.of("print",
            "the publication's own text, or a stored copy of it", "notes", "the notes taken when it was read", "sum",
            "the sum done again: the row or its table says that it is computed", "choice",
            "nothing: the row says that it is remembered, common practice or ours", "absent",
            "nothing: the row says that its print was not at hand", "totals",
            "the printed totals that the rows add up to");

    private static final Predicate<String[]> SAID_TO_BE_PRINTED = row -> Set.of("noted", "converted", "once")
            .contains(row[4]);

    record Line(String table, String beside, String rows, String sum) {}

    private static List<Line> lines() {
        return SafetyFiguresTest.lines(RESOURCES.resolve("reference/second-reading.txt"))
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\|", -1))
                .map(cell -> new Line(cell[0], cell[1], cell[2], cell[3])).toList();
    }

    private static List<String> tables() throws IOException {
        List<String> tables = new ArrayList<>(List.of("place-checks.csv", "rules/published-windows.csv",
                "reference/safety.txt", "reference/printed.txt", "reference/cautions.txt"));
        PrintedFiguresTest.files().forEach(file -> tables.add("reference/printed/" + file.getFileName()));
        try (Stream<Path> files = Files.list(RESOURCES.resolve("reference"))) {
            files.map(Path::getFileName).map(Path::toString).filter(name -> name.endsWith(".csv"))
                    .forEach(name -> tables.add("reference/" + name));
        }
        return tables;
    }

    /** Rows by their first cell, or by their place ("#3") where that is no id of one row. */
    private static Map<String, String> rows(String table) {
        List<String> all = SafetyFiguresTest.lines(RESOURCES.resolve(table))
                .filter(line -> !line.startsWith("#") && !line.isBlank()).skip(table.endsWith(".csv") ? 1 : 0).toList();
        List<String> ids = all.stream().map(row -> row.split("[,;|]", 2)[0]).toList();
        Set<String> once = new TreeSet<>();
        Set<String> twice = new TreeSet<>();
        ids.forEach(id -> (once.add(id) ? once : twice).add(id));
        Map<String, String> rows = new LinkedHashMap<>();
        for (int at = 0; at < all.size(); at++) {
            String id = ids.get(at);
            rows.put(twice.contains(id) || id.contains(" ") ? "#" + (at + 1) : id, all.get(at));
        }
        return rows;
    }

    private static Map<String, String> rowsOf(Line line) {
        Map<String, String> rows = new LinkedHashMap<>(rows(line.table));
        if (line.rows.equals("others")) {
            lines().stream().filter(other -> other.table.equals(line.table) && !other.rows.equals("others"))
                    .forEach(other -> rows.keySet().removeAll(List.of(other.rows.split(" "))));
        } else {
            rows.keySet().retainAll(List.of(line.rows.split(" ")));
        }
        return rows;
    }

    private static String sum(Collection<String> rows) {
        CRC32 sum = new CRC32();
        sum.update(String.join("\n", rows).getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }

    @Test
    void every_row_was_read_a_second_time_as_it_stands() throws IOException {
        Map<String, Set<String>> unread = new LinkedHashMap<>();
        for (String table : tables()) {
            unread.put(table, new TreeSet<>(rows(table).keySet()));
        }
        List<String> stale = new ArrayList<>();
        for (Line line : lines()) {
            Map<String, String> rows = rowsOf(line);
            assertThat(BESIDE).as(line.table).containsKey(line.beside);
            assertThat(rows).as("rows of " + line).isNotEmpty();
            if (!line.rows.equals("others")) {
                assertThat(rows.keySet()).as(line.table).containsExactlyInAnyOrder(line.rows.split(" "));
            }
            assertThat(unread.get(line.table)).as(line.table + ": a row on two lines").containsAll(rows.keySet());
            unread.get(line.table).removeAll(rows.keySet());
            String sum = sum(rows.values());
            if (!sum.equals(line.sum)) { stale.add("%s, %s: now %s".formatted(line.table, line.beside, sum)); }
        }
        unread.values().removeIf(Set::isEmpty);

        assertThat(unread).as("rows that nobody read a second time").isEmpty();
        assertThat(stale).as("rows that came or changed since: read them beside their source, then write the new sum")
                .isEmpty();
    }

    /** A row that no print was held against does not pass for print. */
    @Test
    void a_row_that_print_does_not_give_says_so() {
        says("sum", "comput|worked out|middle|mean of|from places");
        says("choice", "memory|remembered|practice|ours|assumed");
        says("absent", "print not at hand");
    }

    private static void says(String beside, String words) {
        Predicate<String> said = Pattern.compile(words).asPredicate();
        for (Line line : lines()) {
            if (line.beside.equals(beside)) {
                String head = SafetyFiguresTest.lines(RESOURCES.resolve(line.table))
                        .filter(each -> each.startsWith("#")).collect(joining(" "));
                boolean whole = rowsOf(line).size() == rows(line.table).size()
                        && said.test(head.toLowerCase(Locale.ROOT));
                assertThat(rowsOf(line).values()).as(line.table)
                        .allMatch(row -> whole || said.test(row.toLowerCase(Locale.ROOT)));
            }
        }
    }

    @Test
    void the_page_tells_how_many() throws IOException {
        StringBuilder made = new StringBuilder(MARK + "| read beside | rows |\n|---|---|\n");
        for (String beside : List.of("print", "notes", "sum", "choice", "absent")) {
            long rows = lines().stream().filter(line -> line.beside.equals(beside))
                    .mapToLong(line -> rowsOf(line).size()).sum();
            made.append("| %s | %d |\n".formatted(BESIDE.get(beside), rows));
        }
        made.append("\n| numbers of the data | how many |\n|---|---|\n");
        made.append("| beside print | %d |\n".formatted(numbers(PrintedFiguresTest.files(), row -> true)));
        made.append(
                "| print is said to give them | %d |\n".formatted(numbers(FiguresTest.files(), SAID_TO_BE_PRINTED)));
        made.append(
                "| no print gives them | %d |\n".formatted(numbers(FiguresTest.files(), SAID_TO_BE_PRINTED.negate())));
        String page = Files.readString(PAGE);
        String now = page.replaceFirst("(?s)%s.*?(?=\n\n[^|]|\n?$)".formatted(MARK), made.toString().stripTrailing());
        if (Boolean.getBoolean("golden.update")) { Files.writeString(PAGE, now); }
        assertThat(Files.readString(PAGE)).contains(made.toString().stripTrailing());
    }

    private static long numbers(List<Path> files, Predicate<String[]> which) {
        return files.stream().flatMap(FiguresTest::rows).filter(which)
                .mapToLong(row -> Pattern.compile("-?\\d[\\d.-]*").matcher(row[1]).results().count()).sum();
    }
}

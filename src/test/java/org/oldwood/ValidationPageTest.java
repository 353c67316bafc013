package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/validation.md} is made from the tables that the tests hold the program to, and from the pages beside it.
 * {@code -Dgolden.update=true} writes it anew.
 */
class ValidationPageTest {
    private static final Path PAGE = Path.of("docs/validation.md");

    private static final String MARK = "<!-- made by ValidationPageTest -->\n";

    /** A kind of figure, where it stands in the data, what hangs on it, and what was looked for in vain. */
    record Weighty(String what, String place, String hangs, String sought) {}

    /** By weight on advice, the heaviest first: the order is ours. */
    private static final List<Weighty> WEIGHTY = List.of(
            new Weighty("offsets and sums of stages", "stages\\.json/models/[^/]+/(days|sum)",
                    "the day of nearly all work",
                    "days between buds and leaves of every crop; flower of gooseberry, jostaberry, blackberries"),
            new Weighty("± of stages", "stages\\.json/models/[^/]+/(plusMinus|unseenPlusMinus)",
                    "how wide a window is told",
                    "dates of single years for bush and cane fruit: print has apple, pear and cherry"),
            new Weighty("crop by age of wood", "yield\\.json/wood/(weights|least|most)", "which stems stay",
                    "shares by age of all bushes: print ranks the ages, two trials three years above two"),
            new Weighty("survival in the nursery and after planting out", "survival/(nursery|planting-out)/rate",
                    "how many cuttings to strike", "losses of rooted cuttings and lifted plants of every crop"),
            new Weighty("share of organic nitrogen that counts in the first year", "feeds/.*/firstYear/N",
                    "how much of a meal or manure to give",
                    "nitrogen from bone meal, seaweed meal, blood, fish and bone, cocoa shell"),
            new Weighty("nitrogen under fresh mulch", "mulching\\.json/extraNitrogen\\w*(/\\w+)?", "the spring feed",
                    "under straw"),
            new Weighty("minutes of work", "labour/\\w+", "which work fits into a day",
                    "minutes a bush in gardens; hours a hectare were found for all work but picking"),
            new Weighty("density and decay of mulch", "mulches/.*/(density|decayCmPerYear)", "how much mulch to order",
                    "depth lost by compost, manure, leaf mould; weight of cocoa shell"));

    private static List<String[]> figures() throws IOException {
        List<String[]> figures = new ArrayList<>();
        for (String folder : List.of("figures", "printed")) {
            for (Path file : files(Path.of("src/test/resources/reference", folder), ".*\\.txt")) {
                SafetyFiguresTest.lines(file).filter(line -> !line.startsWith("#")).map(line -> line.split("\\|", -1))
                        .forEach(figures::add);
            }
        }
        return figures;
    }

    private static String page() throws IOException {
        List<String[]> figures = figures();
        StringBuilder page = new StringBuilder(MARK);
        page.append(
                "| calculators of: largest misses, and what is not covered | published rows | of them computed |\n");
        page.append("|---|---|---|\n");
        for (Path beside : files(Path.of("docs"), "validation-.*\\.md")) {
            long[] rows = rows(Files.readString(beside));
            if (rows[0] > 0) {
                String name = beside.getFileName().toString();
                page.append("| [%s](%s) | %d | %d |\n".formatted(name.replaceAll("validation-|\\.md", ""), name,
                        rows[0], rows[1]));
            }
        }
        page.append(
                "\nWhat we assume, by weight on advice (figures by mark, a list of numbers as one; words searched for each, crop by crop: `reference/sought.txt`):\n\n");
        page.append(
                "| figures | what hangs on them | read/worked out/practice/from memory/ours | looked for in vain |\n");
        page.append("|---|---|---|---|\n");
        for (Weighty one : WEIGHTY) {
            page.append("| %s | %s | %d/%d/%d/%d/%d | %s |\n".formatted(one.what, one.hangs,
                    count(figures, one, "read|quoted"), count(figures, one, "computed"),
                    count(figures, one, "common-practice"), count(figures, one, "memory"),
                    count(figures, one, "assumed"), one.sought));
        }
        return page.toString();
    }

    private static long count(List<String[]> figures, Weighty one, String mark) {
        Pattern place = Pattern.compile(one.place + "$");
        return figures.stream().filter(row -> place.matcher(row[0]).find() && row[2].matches(mark)).count();
    }

    /** Rows of the files of published values that a page names, and those of them that say they are computed. */
    private static long[] rows(String page) throws IOException {
        long[] rows = new long[2];
        for (Path file : files(Path.of("src/test/resources/reference"), ".*\\.csv")) {
            Matcher named = Pattern.compile("`(reference/)?%s`".formatted(Pattern.quote(file.getFileName().toString())))
                    .matcher(page);
            if (named.find()) {
                List<String> lines = Files.readAllLines(file).stream()
                        .filter(line -> !line.startsWith("#") && !line.isBlank()).skip(1)
                        // A day of weather is what a total was reckoned from, no value to meet.
                        .filter(line -> !line.matches("\\d{4}-\\d\\d-\\d\\d,.*")).toList();
                rows[0] += lines.size();
                rows[1] += lines.stream().filter(line -> line.matches(".*[,;] ?computed( ?[,;].*)?")).count();
            }
        }
        return rows;
    }

    private static List<Path> files(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches(name)).sorted().toList();
        }
    }

    @Test
    void the_page_tells_what_the_tests_hold() throws IOException {
        String before = Files.readString(PAGE);
        String made = before.substring(0, before.contains(MARK) ? before.indexOf(MARK) : before.length()) + page();
        if (Boolean.getBoolean("golden.update")) { Files.writeString(PAGE, made); }
        assertThat(Files.readString(PAGE)).isEqualTo(made);
    }

    /** A line holds, between tabs, the places, the words searched, and what was found instead. */
    @Test
    void each_weighty_figure_that_no_print_gives_was_sought() throws IOException {
        List<String[]> sought = SafetyFiguresTest.lines(Path.of("src/test/resources/reference/sought.txt"))
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\t", -1)).toList();
        assertThat(sought).allSatisfy(line -> assertThat(line).hasSize(3).doesNotContain(""));
        List<String> places = figures().stream().filter(row -> row[2].matches("memory|assumed")).filter(
                row -> WEIGHTY.stream().anyMatch(one -> Pattern.compile(one.place + "$").matcher(row[0]).find()))
                .map(row -> row[0]).toList();

        assertThat(places).allSatisfy(place -> assertThat(sought.stream().filter(line -> place.matches(line[0])))
                .as("print looked for, for " + place).hasSize(1));
        assertThat(sought).allSatisfy(
                line -> assertThat(places).as("still not found: " + line[0]).anyMatch(place -> place.matches(line[0])));
    }
}

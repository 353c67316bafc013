package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Figures beside what their publication prints, as it was noted when it was read, in the printed unit where that is
 * another. The keys in the fourth column name the publications, whose addresses {@code oldwood sources KEY} tells.
 */
class PrintedFiguresTest {
    private static final Path ROWS = Path.of("src/test/resources/reference/printed");

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)?(?:/\\d+)?");

    /** What was worked out from print, one step after the other. */
    private static final Pattern SUM = Pattern.compile("\\[([^]]+)]");

    private static final Pattern SHARE = Pattern.compile("of (\\d+) % (N|P2O5)");

    /** Inch, foot (cm and m), lb/acre, lb/100 ft², lb/1000 ft², lb/yd³, ounce, pound (g and kg), kg/ha, %, week, month. */
    private static final double[] UNITS = {1, 2.54, 30.48, 0.3048, 0.1121, 4.882, 0.4882, 0.5933, 28.35, 453.6, 0.4536,
            0.1, 10, 100, 0.01, 7, 30, -1};

    static List<Path> files() throws IOException { return FiguresTest.files(ROWS); }

    @ParameterizedTest
    @MethodSource("files")
    void the_data_hold_what_was_printed(Path file) { assertThat(FiguresTest.others(file)).isEmpty(); }

    /** As it stands, after a change of unit, as the middle of two, a sum in brackets, or the nutrient in a fertilizer. */
    @ParameterizedTest
    @MethodSource("files")
    void each_number_follows_from_what_print_says(Path file) {
        FiguresTest.rows(file).forEach(row -> {
            List<Double> printed = printed(row[4]);
            assertThat(row[3]).as(row[0]).isNotBlank();
            assertThat(values(row[1]).filter(
                    is -> printed.stream().noneMatch(each -> Math.abs(each - is) <= 0.026 * Math.abs(is) + 1e-9)))
                    .as("%s: not in \"%s\"", row[0], row[4]).isEmpty();
        });
    }

    /** Numbers, and days by their place in the year. */
    private static Stream<Double> values(String numbers) {
        return Pattern.compile("(?<![\\w-])(\\d\\d-\\d\\d|-?\\d+(?:\\.\\d+)?(?![\\d-]))").matcher(numbers).results()
                .map(MatchResult::group)
                .map(each -> each.matches("\\d\\d-\\d\\d") ? (double) LocalDate.parse("2027-" + each).getDayOfYear()
                        : Double.parseDouble(each));
    }

    private static double sum(String... steps) {
        double sum = Double.parseDouble(steps[0]);
        for (int i = 1; i < steps.length; i += 2) {
            double next = Double.parseDouble(steps[i + 1]);
            sum = switch (steps[i]) {
                case "+" -> sum + next;
                case "-" -> sum - next;
                case "*" -> sum * next;
                case "/" -> sum / next;
                default -> throw new IllegalArgumentException(String.join(" ", steps));
            };
        }
        return sum;
    }

    private static List<Double> printed(String text) {
        List<Double> told = new ArrayList<>();
        Matcher at = NUMBER.matcher(text.replaceAll("(?<=[\\d.])-(?=\\d)", " ").replaceAll("(?<=\\d),(?=\\d{3})", ""));
        while (at.find()) {
            String[] parts = at.group().split("/");
            told.add(Double.valueOf(parts[0]));
            if (parts.length == 2) { told.add(Double.parseDouble(parts[0]) / Double.parseDouble(parts[1])); }
        }
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            for (double unit : UNITS) {
                all.add(told.get(i) * unit);
            }
            all.add((told.get(i) - 32) / 1.8);
            if (i > 0) { all.add((told.get(i) + told.get(i - 1)) / 2); }
        }
        SUM.matcher(text).results().map(sum -> sum.group(1).split(" ")).forEach(steps -> all.add(sum(steps)));
        List<Double> nutrient = SHARE.matcher(text).results().map(share -> Double.parseDouble(share.group(1)) / 100)
                .flatMap(share -> all.stream().map(each -> each * share)).toList();
        all.addAll(nutrient);
        return all;
    }
}

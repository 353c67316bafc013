package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

/**
 * Observed dates against modelled ones. The table is written into the documents; rows that miss stay, with their
 * reason. {@code -Dgolden.update=true} writes it anew.
 */
class ObservedStagesTest {
    private static final Path PAGE = Path.of("docs/validation-season.md");
    private static final String BEGIN = "<!-- observed stages: written by ObservedStagesTest -->";
    /** Rows with a larger error, in days, stand one by one. */
    private static final int NEAR = 5;

    private static final Path REFERENCE = Path.of("src/test/resources/reference");
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final Crops CROPS = new Crops(DOCUMENTS);

    @Test
    void the_page_shows_the_present_errors() throws IOException {
        String table = table();
        String page = Files.readString(PAGE);
        String wanted = page.substring(0, page.indexOf(BEGIN)) + table;
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(PAGE, wanted);
        }

        assertThat(Files.readString(PAGE)).isEqualTo(wanted);
    }

    /**
     * Every crop of every file at hand that has a model stands in the table. Rows that the sums were set from show how
     * well one sum serves many climates; the rest, how well it does in a place that it has not seen.
     */
    @ParameterizedTest
    @CsvSource({"yes, 16, 4", "no, 7, 10"})
    void first_flower_is_met_to_within_the_promised_days(String fitted, int rows, double within) throws IOException {
        List<Integer> errors = new ArrayList<>();
        for (String[] row : rows("observed-stages.csv")) {
            if (row[2].equals("first-flower") && row[8].equals(fitted)) {
                errors.add(Math.abs(error(row)));
            }
        }
        assertThat(errors).hasSize(rows);
        assertThat(errors.stream().mapToInt(each -> each).average().orElseThrow())
                .isLessThan(within);
    }

    private static String table() throws IOException {
        EnumSet<Stage> all = EnumSet.noneOf(Stage.class);
        Map<String, List<String>> near = new LinkedHashMap<>();
        StringBuilder text = new StringBuilder(BEGIN).append("\n\n");
        text.append("| Stage, crop | Seen | Day | Modelled | Error, d | Set from it | If it misses |\n");
        text.append("|---|---|---|---|---|---|---|\n");
        for (String[] row : rows("observed-stages.csv")) {
            Stage stage = Stage.find(row[2]).orElseThrow();
            StageDate date = modelled(row);
            int error = error(row);
            all.add(stage);
            if (Math.abs(error) <= NEAR) {
                near.computeIfAbsent("%s, %s".formatted(stage.words(), row[1]), key -> new ArrayList<>())
                        .add("%+d".formatted(error));
                continue;
            }
            text.append("| %s, %s | %s | %02d-%02d | %s ± %d | %+d | %s | %s |\n"
                    .formatted(
                            stage.words(),
                            row[1],
                            row[5],
                            Integer.parseInt(row[3]),
                            Integer.parseInt(row[4]),
                            date.date().toString().substring(5),
                            date.plusMinusDays(),
                            error,
                            row[8],
                            row[9]));
        }
        text.append("\nWithin %d days: ".formatted(NEAR))
                .append(near.entrySet().stream()
                        .map(each -> each.getKey() + " " + String.join(" ", each.getValue()))
                        .collect(Collectors.joining("; ")))
                .append(".\n");
        text.append("\n| Stage | Set from the row | Rows | Mean absolute error, d | Largest, d | Inside the ± |\n")
                .append("|---|---|---|---|---|---|\n");
        for (Stage stage : all) {
            for (String fitted : List.of("yes", "no")) {
                text.append(summary(stage, fitted));
            }
        }
        return text.toString();
    }

    private static String summary(Stage stage, String fitted) throws IOException {
        List<Integer> errors = new ArrayList<>();
        int inside = 0;
        for (String[] row : rows("observed-stages.csv")) {
            if (row[2].equals(stage.key()) && row[8].equals(fitted)) {
                errors.add(Math.abs(error(row)));
                inside += Math.abs(error(row)) <= modelled(row).plusMinusDays() ? 1 : 0;
            }
        }
        return errors.isEmpty()
                ? ""
                : String.format(
                                Locale.ROOT,
                                "| %s | %s | %d | %.1f | %d | %d |%n",
                                stage.words(),
                                fitted,
                                errors.size(),
                                errors.stream().mapToInt(each -> each).average().orElse(0),
                                errors.stream().mapToInt(each -> each).max().orElse(0),
                                inside)
                        .replace("\r", "");
    }

    private static int error(String[] row) throws IOException {
        LocalDate date = modelled(row).date();
        LocalDate seen = LocalDate.of(date.getYear(), Integer.parseInt(row[3]), Integer.parseInt(row[4]));
        long days = date.toEpochDay() - seen.toEpochDay();
        if (days > 182) {
            days = date.toEpochDay() - seen.plusYears(1).toEpochDay();
        }
        return (int) days;
    }

    private static StageDate modelled(String[] row) throws IOException {
        Climate climate = climate(row[0]);
        double latitude = climate.latitude().orElseThrow();
        Stages stages = new ModelledStages(
                new GardenClimate(latitude, climate, Weather.none(), DOCUMENTS), Sightings.none(), DOCUMENTS);
        return stages.date(
                CROPS.get(row[1]),
                new Season(2027, Hemisphere.of(latitude)),
                Stage.find(row[2]).orElseThrow());
    }

    private static Climate climate(String place) throws IOException {
        for (String[] row : rows("normals.csv")) {
            if (row[0].equals(place)) {
                return new Climate(
                        place,
                        Optional.of(Double.parseDouble(row[1])),
                        months(row[2]),
                        months(row[3]),
                        Optional.empty(),
                        List.of(),
                        "");
            }
        }
        return Climate.bundled(place, DOCUMENTS);
    }

    private static Months months(String text) {
        return Months.of(
                Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray());
    }

    private static List<String[]> rows(String file) throws IOException {
        try (Stream<String> lines = Files.lines(REFERENCE.resolve(file))) {
            return lines.filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(";", -1))
                    .toList();
        }
    }
}

package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.store.Csv;
import org.oldwood.store.Problems;

/** The rounds as a table for a spreadsheet, and what stands beside figures that were not read in print. */
class RoundTableTest {
    @ParameterizedTest
    @CsvSource({"terrace-school,2027-01-05,false", "fire-station-hedges,2027-05-10,true"})
    void holds_each_round_once_with_its_days_as_the_json_has_them(String garden, String today, boolean comma)
            throws IOException {
        String day = "--today=" + today;
        String text = Cli.in(Path.of("demo-data", garden))
                .run("tasks", "year", comma ? "--decimal-comma" : "--csv", day).out();
        JsonNode json = new ObjectMapper()
                .readTree(Cli.in(Path.of("demo-data", garden)).run("tasks", "--json", day).out());
        Problems problems = new Problems();

        Csv table = Csv.read(text, "rounds.csv", problems);

        assertThat(problems.list()).isEmpty();
        assertThat(text).startsWith("\ufeff");
        assertThat(table.semicolons()).isEqualTo(comma);
        List<String> told = StreamSupport.stream(json.get("rounds").spliterator(), false)
                .map(round -> "%s %s".formatted(round.get("id").asText(), round.get("day").asText())).toList();
        assertThat(table.rows()).hasSizeGreaterThan(40);
        assertThat(table.rows())
                .extracting(row -> "%s %s".formatted(row.cell("round").orElseThrow(), row.cell("day").orElseThrow()))
                .doesNotHaveDuplicates().isSubsetOf(told);
    }

    /** No labour figure was read in print, so each list that shows minutes says how they are known; once. */
    @Test
    void minutes_say_how_they_are_known() {
        Cli cli = Cli.in(Path.of("demo-data", "terrace-school"));
        for (List<String> asked : List.of(List.of("tasks"), List.of("now"), List.of("tasks", "cut"))) {
            String out = cli.run(Stream.concat(asked.stream(), Stream.of("--today=2027-01-05")).toArray(String[]::new))
                    .out();
            assertThat(out.split("by your notes, else assumed", -1)).as(asked.toString()).hasSize(2);
        }
        String prune = cli.run("prune", "--today=2027-01-05").out();
        assertThat(prune.lines().filter(line -> line.contains("Time: about")))
                .allMatch(line -> line.contains("by your notes, else assumed"));
    }

    /** Every offset between stages that no source gives says so where it is told. */
    @Test
    void offsets_of_our_own_say_so_beside_the_stage() {
        String out = Cli.in(Path.of("demo-data", "terrace-school"))
                .run("stages", "autumn-raspberry", "--today=2027-01-05").out().replaceAll("\\s+", " ");
        assertThat(out).contains("8 days before bud burst (our assumption)")
                .contains("45 days before ripe for picking (computed)");
    }
}

package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** Journal and stock as tables for a spreadsheet, and back; both demo gardens, both ways of writing decimals. */
class SpreadsheetTest {
    private static final String DAY = "--today=2026-11-28";

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        for (String name : new String[]{"terrace-school", "fire-station-hedges"}) {
            Path demo = Path.of("demo-data").resolve(name);
            if (Files.exists(demo)) {
                Files.createDirectories(folder.resolve(name));
                try (Stream<Path> files = Files.list(demo)) {
                    for (Path file : files.filter(Files::isRegularFile).toList()) {
                        Files.copy(file, folder.resolve(name).resolve(file.getFileName()));
                    }
                }
            }
        }
    }

    private Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    private String ok(String... args) {
        Cli.Result result = run(args);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }

    private String table(String garden, String command, String option) {
        return ok(command, option, "--quiet", "--garden=" + garden, DAY);
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,--csv", "terrace-school,--decimal-comma", "fire-station-hedges,--csv",
            "fire-station-hedges,--decimal-comma"})
    void journal_to_table_to_journal_loses_nothing(String garden, String option) throws IOException {
        String before = ok("tasks", "--json", "--garden=" + garden, DAY);
        Files.writeString(folder.resolve("journal.csv"), table(garden, "journal", option));
        Files.writeString(folder.resolve(garden).resolve("journal.jsonl"), "");

        ok("note", "--csv=journal.csv", "--quiet", "--garden=" + garden, DAY);

        assertThat(table(garden, "journal", option)).isEqualTo(Files.readString(folder.resolve("journal.csv")));
        assertThat(ok("tasks", "--json", "--garden=" + garden, DAY)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,52", "fire-station-hedges,-42"})
    void stock_to_table_to_a_new_garden_loses_nothing(String garden, String latitude) throws IOException {
        String stock = table(garden, "stock", "--csv");
        Files.writeString(folder.resolve("stock.csv"), stock);

        ok("start", "new", "--name=New", "--at=" + latitude + ",0,20", "--stock=stock.csv", "--zone=UTC", DAY);

        assertThat(table("new", "stock", "--csv")).isEqualTo(stock);
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,--csv", "fire-station-hedges,--decimal-comma"})
    void the_years_rounds_come_back_with_ticks(String garden, String option) throws IOException {
        String table = ok("tasks", "year", option, "--garden=" + garden, DAY);
        Path file = Files.writeString(folder.resolve("rounds.csv"), table);
        long before = entries(garden);
        ok("note", "--csv=rounds.csv", "--quiet", "--garden=" + garden, DAY);
        assertThat(entries(garden)).as("nothing was ticked").isEqualTo(before);

        // of the first, this week's walk, something may be left that is not yet due; the second is done as a whole
        String ticked = table.replaceFirst("open", "done").replaceFirst("open", "done");
        Files.writeString(file, ticked);
        ok("note", "--csv=rounds.csv", "--quiet", "--garden=" + garden, DAY);

        long after = entries(garden);
        assertThat(after).isGreaterThan(before);
        ok("note", "--csv=rounds.csv", "--quiet", "--garden=" + garden, DAY);
        assertThat(entries(garden)).as("what is done is passed over").isEqualTo(after);
        String line = ticked.lines().filter(row -> row.contains("done")).skip(1).findFirst().orElseThrow();
        assertThat(ok("tasks", "year", "--finished", option, "--garden=" + garden, DAY).lines())
                .anyMatch(row -> row.contains(line.split("[,;]")[0]) && row.contains("done"));
    }

    private long entries(String garden) throws IOException {
        return Files.readAllLines(folder.resolve(garden).resolve("journal.jsonl")).size();
    }

    @Test
    void a_table_that_comes_back_with_a_line_more_notes_that_line() throws IOException {
        String journal = table("terrace-school", "journal", "--csv");
        int columns = journal.lines().findFirst().orElseThrow().split(",", -1).length;
        Files.writeString(folder.resolve("more.csv"),
                journal + "2026-11-27,inspected" + ",".repeat(columns - 2) + "\n");
        Cli.Result incomplete = run("note", "--csv=more.csv", "--garden=terrace-school", DAY);
        assertThat(incomplete.exit()).isEqualTo(1);
        assertThat(incomplete.err()).contains("plant is missing");

        Files.writeString(folder.resolve("more.csv"), "date,entry,bed,litres\n2026-11-27,watered,upper-terrace,60\n");
        assertThat(ok("note", "--csv=more.csv", "--garden=terrace-school", DAY)).contains("watered");
        String again = table("terrace-school", "journal", "--csv");
        Files.writeString(folder.resolve("again.csv"), again);

        Cli.Result same = run("note", "--csv=again.csv", "--garden=terrace-school", DAY);

        assertThat(same.exit()).isZero();
        assertThat(same.err()).contains("nothing new");
        assertThat(table("terrace-school", "journal", "--csv")).isEqualTo(again);
    }

    @Test
    void what_was_noted_is_not_changed_by_a_table() throws IOException {
        Files.writeString(folder.resolve("changed.csv"),
                "id,date,entry,plant,crop,bed\ne-0001,2012-11-16,planted,bc-old,blackcurrant,upper-terrace\n");

        Cli.Result result = run("note", "--csv=changed.csv", "--garden=terrace-school", DAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("changed.csv:2", "e-0001", "2012-11-15", "oldwood correct e-0001");
    }

    @Test
    void texts_that_a_spreadsheet_would_reckon_with_come_back_as_they_were() throws IOException {
        ok("note", "watered", "upper-terrace", "--litres=60", "--note==1+1, \"said\"", "--garden=terrace-school", DAY);
        String table = table("terrace-school", "journal", "--csv");

        assertThat(table).contains("\"'=1+1, \"\"said\"\"\"");
        Files.writeString(folder.resolve("journal.csv"), table);
        Files.writeString(folder.resolve("terrace-school/journal.jsonl"), "");
        ok("note", "--csv=journal.csv", "--quiet", "--garden=terrace-school", DAY);
        assertThat(ok("journal", "--last=1", "--garden=terrace-school", DAY)).contains("(=1+1, \"said\")");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"date;entry;plant;kg|0,5|0.5", "date;entry;plant;kg|1,125|1.125",
            "date,entry,plant,kg|\"0,5\"|0.5"})
    void a_decimal_comma_is_read(String header, String cell, String kg) throws IOException {
        String sign = header.contains(";") ? ";" : ",";
        Files.writeString(folder.resolve("picked.csv"),
                header + "\n" + String.join(sign, "2026-07-05", "picked", "bc-1", cell) + "\n");

        assertThat(ok("note", "--csv=picked.csv", "--garden=terrace-school", DAY)).contains("kg " + kg);
    }

    @Test
    void a_comma_that_may_part_thousands_is_asked_about() throws IOException {
        Files.writeString(folder.resolve("picked.csv"), "date,entry,plant,kg\n2026-07-05,picked,bc-1,\"1,125\"\n");

        Cli.Result result = run("note", "--csv=picked.csv", "--garden=terrace-school", DAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("picked.csv:2", "kg");
    }
}

package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** A grower who begins a garden, notes nothing, looks what was missed, and puts it right from what is printed. */
class MissedWorkTest {
    @TempDir
    Path scratch;

    @ParameterizedTest(name = "at {0}: begun {1}, looked at {2}")
    @CsvSource({"'52.1,-2.3', 2026-10-01, 2027-05-10, 2027-02-10", "'-41.3,174.8', 2026-04-01, 2026-11-10, 2026-08-10"})
    void what_was_missed_is_noted_by_the_number_that_is_printed(String at, String begun, String later, String done)
            throws IOException {
        String start = "start garden --name=Ours --zone=UTC --planted=2021 --plants=blackcurrant=2 --at=%s --today=%s";
        Cli.in(scratch).with("HOME", scratch.toString()).run(start.formatted(at, begun).split(" "));
        Path garden = scratch.resolve("garden");
        assertThat(Files.readString(garden.resolve("garden.json"))).contains("\"since\": \"" + begun + "\"");
        assertThat(run(garden, begun, "tasks", "missed")).isEmpty();

        String missed = run(garden, later, "tasks", "missed");
        String number = missed.lines().filter(line -> line.contains("Cut the oldest"))
                .map(line -> line.strip().split(" ")[0]).findFirst().orElseThrow(() -> new AssertionError(missed));
        assertThat(run(garden, later, "tasks", "missed", "--each")).contains("winter-cut@blackcurrant-1@")
                .doesNotContain("more kinds");
        run(garden, later, "tasks", "missed");
        run(garden, later, "note", "done", number, "--date=" + done);

        assertThat(run(garden, later, "tasks", "missed", "--each")).doesNotContain("winter-cut@");
        assertThat(Files.readString(garden.resolve("journal.jsonl")))
                .contains("\"date\":\"" + done + "\",\"entry\":\"done\",\"task\":\"winter-cut@blackcurrant-1@")
                .contains("winter-cut@blackcurrant-2@");
        run(garden, later, "note", "skipped", "1");
        assertThat(run(garden, later, "tasks", "missed")).isNotEqualTo(missed);
    }

    @Test
    void the_count_of_missed_work_is_of_the_bed_that_was_asked_for() {
        Cli.in(scratch).with("HOME", scratch.toString()).run(("start garden --name=Ours --zone=UTC --planted=2021 "
                + "--plants=blackcurrant=2,summer-raspberry=9 --at=52.1,-2.3 --today=2026-10-01").split(" "));
        Path garden = scratch.resolve("garden");
        String later = "2027-05-10";
        String all = run(garden, later, "tasks");
        String some = run(garden, later, "tasks", "--bed=blackcurrant-bed");
        long listed = run(garden, later, "tasks", "missed", "--each", "--bed=blackcurrant-bed").lines()
                .filter(line -> line.contains("@blackcurrant-")).count();

        assertThat(listed).isPositive();
        assertThat(some).contains("Missed so far: %d jobs".formatted(listed));
        assertThat(all).contains("Missed so far: ").doesNotContain("Missed so far: %d jobs".formatted(listed));
    }

    /** Neither by the kind of round nor by the rule. */
    @Test
    void what_is_never_wanted_is_not_missed() {
        Cli.in(scratch).with("HOME", scratch.toString()).run(("start garden --name=Ours --zone=UTC --planted=2021 "
                + "--plants=blackcurrant=2,summer-raspberry=9 --at=52.1,-2.3 --today=2026-10-01").split(" "));
        Path garden = scratch.resolve("garden");
        String later = "2027-06-20";
        assertThat(run(garden, later, "tasks", "missed", "--each")).contains("mulch@", "feed-first@", "feed-canes@");
        run(garden, later, "note", "never", "mulch");
        run(garden, later, "note", "never", "feed-first");

        assertThat(run(garden, later, "tasks", "missed", "--each")).contains("feed-canes@").doesNotContain("mulch@",
                "feed-first@");
    }

    private static String run(Path garden, String today, String... command) {
        String[] dated = java.util.Arrays.copyOf(command, command.length + 1);
        dated[command.length] = "--today=" + today;
        Cli.Result result = Cli.in(garden).run(dated);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }
}

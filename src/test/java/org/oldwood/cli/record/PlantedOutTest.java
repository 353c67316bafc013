package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** Cuttings that become bushes: each gets its name, and what is done with them is over. */
class PlantedOutTest {
    @TempDir
    Path scratch;

    private Cli.Result run(String today, String line) {
        return Cli.in(scratch.resolve("ours")).run((line + " --today=" + today).split(" "));
    }

    @BeforeEach
    void garden() {
        Cli.in(scratch).with("HOME", scratch.toString())
                .run(("start ours --name=Ours --zone=UTC --at=53.8,-1.5,90 --planted=2021 --plants=blackcurrant=2"
                        + " --today=2026-11-14").split(" "));
        run("2026-12-05",
                "note struck lot-1 --parent=blackcurrant-1 --method=hardwood --number=12" + " --bed=blackcurrant-bed");
        run("2027-12-02", "note lifted lot-1 --rooted=8");
    }

    @Test
    void how_many_there_are_is_no_name_of_them() throws IOException {
        String before = Files.readString(scratch.resolve("ours/journal.jsonl"));
        Files.writeString(scratch.resolve("ours/six.csv"),
                "date,entry,lot,bed,plants\n2027-12-02,planted-out,lot-1,blackcurrant-bed,6\n");

        Cli.Result typed = run("2027-12-02", "note planted-out lot-1 --bed=blackcurrant-bed --plants=6");
        Cli.Result table = run("2027-12-02", "note --csv=six.csv");

        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).contains("names each new plant");
        assertThat(table.exit()).isEqualTo(1);
        assertThat(table.err()).contains("six.csv:2:").contains("names each new plant");
        assertThat(Files.readString(scratch.resolve("ours/journal.jsonl"))).isEqualTo(before);
    }

    @Test
    void what_was_lifted_is_to_be_planted_and_then_nothing_more_of_that() {
        assertThat(run("2027-12-03", "cuttings").out()).contains("now: plant out").doesNotContain("now: lift");

        assertThat(run("2027-12-02", "cuttings").out()).contains("now: plant out").doesNotContain("now: lift");

        run("2027-12-04", "note planted-out lot-1 --bed=blackcurrant-bed --plants=bn-1,bn-2");

        assertThat(run("2027-12-04", "cuttings").out()).contains("now: cut back");
        assertThat(run("2027-12-05", "cuttings").out()).contains("next: take the flowers off");
    }
}

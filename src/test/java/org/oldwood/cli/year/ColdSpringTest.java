package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** Where buds open in the middle of May, the spring's work on the ground waits for it and is not over by the date. */
class ColdSpringTest {
    @TempDir
    Path scratch;

    @BeforeEach
    void garden() throws IOException {
        Files.writeString(scratch.resolve("stock.csv"), "crop,number,bed,planted\nblueberry,3,bed,2027-05-24\n");
        Cli.in(scratch).with("HOME", scratch.toString()).run("start", "ours", "--name=Ours", "--zone=UTC",
                "--at=45.1,-64.5,20", "--stock=stock.csv", "--today=2027-05-24");
        run("2027-05-24", "note", "soil-test", "bed", "--ph=6.2");
    }

    private String run(String today, String... args) {
        String[] all = new String[args.length + 1];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today=" + today;
        return Cli.in(scratch.resolve("ours")).run(all).out();
    }

    @Test
    void what_is_planted_late_in_may_is_mulched_and_soured_at_once() {
        assertThat(run("2027-05-24", "tasks", "2027-05")).contains("Mulch, bed").contains("Sulphur, bed");
    }

    /** It says itself: after feeding, on ground that is no longer cold. */
    @Test
    void mulch_is_not_laid_before_the_bushes_are_fed() {
        String may = run("2028-03-25", "tasks", "2028-05");

        assertThat(may.indexOf("Feed ")).isPositive().isLessThan(may.indexOf("Mulch"));
        assertThat(may.indexOf("Clear weeds")).isLessThan(may.indexOf("Feed "));
    }

    /** As soon as they are planted: in their first season they live on the few roots they have. */
    @Test
    void the_new_plants_are_watered_from_the_day_they_are_planted() {
        assertThat(run("2027-05-24", "now")).containsPattern("24 May  Water");
    }
}

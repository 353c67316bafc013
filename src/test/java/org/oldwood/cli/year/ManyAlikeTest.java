package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;
import org.oldwood.words.Words;

/** Somebody with many bushes of one kind reads once what is the same of all, in the order in which they stand. */
class ManyAlikeTest {
    @TempDir
    Path scratch;

    private String run(String today, String... args) {
        String[] all = new String[args.length + 1];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today=" + today;
        return Cli.in(scratch.resolve("ours")).run(all).out();
    }

    private void start(String plants, String planted, String today) {
        Cli.in(scratch).with("HOME", scratch.toString())
                .run(("start ours --name=Ours --zone=UTC --at=45.1,-64.5,20 --planted=%s --plants=%s --today=%s")
                        .formatted(planted, plants, today).split(" "));
    }

    @Test
    void a_round_tells_bushes_alike_once() {
        start("blueberry=12", "2024", "2026-11-20");

        String round = run("2027-03-01", "tasks", "cut@2027.blueberry");

        assertThat(round).containsOnlyOnce("Count the stems of blueberry-1 to blueberry-12 by age")
                .containsOnlyOnce("count-stems@").contains(", and 11 like it");
    }

    @Test
    void a_round_goes_from_bush_to_bush_as_they_stand() {
        start("blueberry=12", "2024", "2026-11-20");
        run("2026-12-01", "note", "counted", "blueberry-2", "--stems=1=2,2=1");
        run("2026-12-01", "note", "counted", "blueberry-10", "--stems=1=3,2=1");

        String round = run("2027-03-01", "tasks", "cut@2027.blueberry");

        assertThat(round.indexOf("blueberry-2:")).isPositive().isLessThan(round.indexOf("blueberry-10:"));
        assertThat(round).contains("Count the stems of blueberry-1, blueberry-3 to blueberry-9, blueberry-11 and");
    }

    @Test
    void the_cut_lists_of_bushes_alike_are_one() {
        start("blackcurrant=6", "2020", "2026-11-20");
        for (String bush : List.of("1", "2", "4")) {
            run("2026-12-01", "note", "counted", "blackcurrant-" + bush, "--stems=1=5,2=4,3=3,4+=2");
        }

        String lists = run("2026-12-02", "prune");

        assertThat(lists.lines().filter(line -> line.contains("way: half-young"))).containsExactly(
                "blackcurrant-1 and blackcurrant-2, each (bearing, way: half-young)",
                "blackcurrant-3 (bearing, way: half-young)", "blackcurrant-4 (bearing, way: half-young)",
                "blackcurrant-5 and blackcurrant-6, each (bearing, way: half-young)");
    }

    @Test
    void a_bush_too_young_to_prune_is_not_told_how_many_old_stems_to_leave() {
        start("blueberry=1,haskap=1", "2026", "2026-11-20");

        assertThat(run("2027-03-01", "prune")).contains("Only dead, damaged and diseased wood goes.")
                .doesNotContain("Leave 12").doesNotContain("See how many").doesNotContain("Cut shoots that are weaker")
                .doesNotContain("Take whole branches");
        assertThat(run("2027-03-01", "tasks", "cut@2027.blueberry"))
                .contains("Look over the young blueberry-1: only dead, damaged and diseased wood goes");
    }

    /** The figures of work are of grown bushes. */
    @Test
    void the_cut_at_planting_claims_no_minutes_of_a_grown_bush() {
        start("blueberry=12", "2027", "2027-03-20");

        assertThat(run("2027-03-21", "tasks", "new-plants@2027"))
                .contains("Cut the new blueberry-1 to blueberry-12 back").doesNotContain(" min");
        assertThat(run("2027-03-21", "prune")).doesNotContain("Time: about").doesNotContain("winter's work on all");
    }

    @Test
    void a_last_day_of_the_year_after_tells_its_year() {
        start("blueberry=1", "2027", "2027-05-08");
        run("2027-05-08", "note", "soil-test", "blueberry-bed", "--ph=6.2");
        run("2027-05-08", "note", "acidified", "blueberry-bed", "--material=sulphur", "--grams=100");

        assertThat(run("2027-09-01", "tasks", "retest")).contains("by Jul 2028");
        assertThat(run("2027-09-01", "tasks", "tools")).contains("by 30 Nov").doesNotContain("Nov 2027");
    }

    /** What holds of all stages of a crop is told at the first, but how each is reckoned at each. */
    @Test
    void the_stages_tell_once_that_chill_falls_short() {
        Cli.in(scratch).with("HOME", scratch.toString()).run("start", "ours", "--name=Ours", "--zone=UTC",
                "--at=-39.6,176.8,20", "--planted=2020", "--plants=blackcurrant=2", "--today=2026-06-15");

        assertThat(run("2026-06-15", "stages").replaceAll("\\s+", " ")).containsOnlyOnce("chill falls short")
                .containsOnlyOnce("rows are from cooler").contains("6 days after first flower")
                .contains("13 days after first flower");
    }

    @Test
    void names_that_number_on_are_told_by_their_ends() {
        assertThat(Words.names(List.of("bc-9", "bc-10", "bc-11"))).isEqualTo("bc-9 to bc-11");
        assertThat(Words.names(List.of("bc-1", "bc-2"))).isEqualTo("bc-1 and bc-2");
        assertThat(Words.names(List.of("bc-1", "bc-2", "bc-3", "bc-5", "rc-6")))
                .isEqualTo("bc-1 to bc-3, bc-5 and rc-6");
        assertThat(Words.names(List.of("a", "b", "bed 99999999999", "bed"))).isEqualTo("a, b, bed 99999999999 and bed");
        assertThat(Words.names(List.of())).isEmpty();
    }
}

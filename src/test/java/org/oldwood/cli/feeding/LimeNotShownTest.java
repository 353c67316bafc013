package org.oldwood.cli.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** A test shows no lime that has not worked yet: so much less is given, in the plan, by lime and by why alike. */
class LimeNotShownTest {
    private static final String TODAY = "--today=2026-12-20";

    @TempDir
    Path folder;

    @BeforeEach
    void limed_in_january() {
        run("start", ".", "--name=Lime", "--at=52,-2", "--plants=blackcurrant=4,blueberry=3", "--planted=2021",
                "--today=2025-11-01");
        note("soil-test", "--ph=5.5", "--date=2025-11-10");
        // 12.6 m2: 300 g/m2
        note("limed", "--material=ground-limestone", "--grams=3780", "--date=2026-01-12");
    }

    private void note(String kind, String... more) {
        run(Stream.concat(Stream.of("note", kind, "blackcurrant-bed", "--today=2028-02-01"), Stream.of(more))
                .toArray(String[]::new));
    }

    private String run(String... words) {
        Cli.Result result = Cli.in(folder).run(words);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out().replaceAll("\\s+", " ");
    }

    /** 98 days of 24 months: 300 x (1 - 98 / 730.5) = 260 of 540 g/m2 still works. */
    @Test
    void what_still_works_when_tested_is_taken_off() {
        note("soil-test", "--ph=5.6", "--date=2026-04-20");

        assertThat(run("lime", TODAY)).contains("Still working when tested, as ground limestone: 260 g/m²",
                "is taken to work over 24 months (our assumption)",
                "less 260 g/m² given and not shown by the test = 280 g/m²");
        assertThat(run("why", "lime@blackcurrant-bed@2027", TODAY)).contains("3.5 kg of ground limestone (278 g/m²)",
                "0.9 too low. Still working when tested", "less 260 g/m²");
        assertThat(run("tasks", "--each", TODAY)).contains("3.5 kg of ground limestone (278 g/m²)");
    }

    @Test
    void two_years_after_it_the_test_shows_all() {
        note("soil-test", "--ph=5.6", "--date=2028-01-20");

        assertThat(run("lime", "--today=2028-01-21")).doesNotContain("Still working", "not shown");
    }

    /** Print: not within three months of lime. */
    @Test
    void a_test_too_soon_after_lime_gives_none_and_another_is_asked_for() {
        note("soil-test", "--ph=5.6", "--date=2026-03-01");

        assertThat(run("lime", TODAY)).contains(
                "The test of 2026-03-01 came 48 days after lime; within 90 days it reads wrong: test again first.",
                "Given and not tested since, as ground limestone: 300 g/m²").doesNotContain("in all, in");
        assertThat(run("tasks", "--each", "--today=2026-03-02")).contains("retest-after-lime@blackcurrant-bed@2026");
        assertThat(run("tasks", "--each", TODAY)).doesNotContain("Lime blackcurrant-bed");
        assertThat(run("why", "--not", "lime", "blackcurrant-bed", TODAY)).contains("came 48 days after lime");

        note("soil-test", "--ph=5.8", "--date=2026-05-01");
        assertThat(run("tasks", "--each", "--today=2026-05-02")).doesNotContain("retest-after-lime");
        assertThat(run("lime", TODAY)).doesNotContain("48 days");
    }

    /** Long after the round that asks again for it, a test that misled is asked for again, and once. */
    @Test
    void of_an_old_test_too_soon_after_lime_another_is_asked_for() {
        note("soil-test", "--ph=5.6", "--date=2026-03-01");

        assertThat(run("tasks", "--each", "--today=2027-11-25")).contains("retest-lime-late@blackcurrant-bed@2028")
                .doesNotContain("soil-test@blackcurrant-bed");
        assertThat(run("tasks", "year", "--each", "--today=2026-11-25"))
                .containsOnlyOnce("Test the soil of blackcurrant-bed");
    }

    /** Sulphur works over half a year: 91 days after it half of 100 g on 10.8 m2 is still to come. */
    @Test
    void so_it_is_with_sulphur() {
        String bed = "blueberry-bed";
        run("note", "acidified", bed, "--material=sulphur", "--grams=100", "--date=2026-04-01");
        run("note", "soil-test", bed, "--ph=6", "--date=2026-05-01");
        assertThat(run("acidify", bed, TODAY)).contains("came 30 days after sulphur");

        run("note", "soil-test", bed, "--ph=6", "--date=2026-07-01");
        assertThat(run("acidify", bed, TODAY))
                .contains("Still working when tested, as sulphur: 4.65 g/m²; sulphur is taken to work over 6 months")
                .doesNotContain("test again before");
    }

    @Test
    void a_test_too_soon_after_feed_is_told_where_the_feed_is_reckoned() {
        note("fed", "--material=bone-meal", "--grams=600", "--date=2026-10-01");
        note("soil-test", "--ph=6.5", "--phosphorusIndex=3", "--date=2026-11-01");

        assertThat(run("feed", TODAY)).contains(
                "soil test of 2026-11-01, 1 month old; it reads wrong so soon after the bed was fed on 2026-10-01: test again");
    }

    /** What was given counts against every table: of the South African one's 430 g/m2 for clay loam nothing is left. */
    @Test
    void a_table_that_asks_for_less_than_was_given_asks_for_nothing_more() {
        note("limed", "--material=ground-limestone", "--grams=8000", "--date=2026-12-01");

        assertThat(run("lime", "blackcurrant-bed", TODAY)).contains("Nothing to give").doesNotContain("disagrees");
    }

    /** Left for more than 420 days after the sulphur, the test is asked for each winter until it is noted. */
    @Test
    void a_second_portion_that_waits_for_a_test_is_not_forgotten_with_it() {
        run("note", "soil-test", "blueberry-bed", "--ph=6", "--date=2025-11-10", "--today=2027-06-20");
        run("note", "acidified", "blueberry-bed", "--material=sulphur", "--grams=300", "--date=2026-03-20",
                "--today=2027-06-20");
        String late = "retest-sulphur-late@blueberry-bed";

        assertThat(run("tasks", "year", "--each", "--today=2026-12-20")).contains("retest-after-sulphur@blueberry-bed");
        assertThat(run("tasks", "--each", "--today=2026-12-20")).doesNotContain(late + "@2027 ");
        assertThat(run("tasks", "year", "--each", "--today=2027-06-20")).contains(late + "@2028")
                .doesNotContain("retest-after-sulphur@blueberry-bed");
        assertThat(run("acidify", "blueberry-bed", "--today=2027-06-20"))
                .contains("Next nothing is planned: what was given is not yet tested.");
        run("note", "soil-test", "blueberry-bed", "--ph=5.6", "--today=2027-11-02");
        assertThat(run("tasks", "year", "--each", "--today=2027-11-03")).doesNotContain(late);
    }
}

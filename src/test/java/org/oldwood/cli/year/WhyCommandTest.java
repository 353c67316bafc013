package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** Why a task comes, and why it does not. */
class WhyCommandTest {
    private static final String UNCOUNTED = "the stems were not counted";

    @TempDir
    Path garden;

    /** Two conditions of the winter cut ask for the stems. */
    @Test
    void a_reason_is_told_once_wherever_it_is_told() throws IOException {
        run("start . --name=Ours --zone=UTC --planted=2021 --plants=blackcurrant=1 --at=52.1,-2.3 --today=2026-10-01");

        assertThat(run("why winter-cut@blackcurrant-1@2027 --today=2026-11-25")).containsOnlyOnce(UNCOUNTED);
        String[] seasons = run("why --not winter-cut blackcurrant-1 --today=2026-11-25").split("Season ");
        assertThat(seasons).hasSizeGreaterThan(1);
        for (int i = 1; i < seasons.length; i++) {
            assertThat(seasons[i]).containsOnlyOnce(UNCOUNTED);
        }
        JsonNode tasks = new ObjectMapper().readTree(run("tasks --json --today=2026-11-25")).get("tasks");
        assertThat(tasks).isNotEmpty().allSatisfy(task -> assertThat(task.get("reasons")).doesNotHaveDuplicates());
    }

    /** What tasks printed serves, a stand may be named by its bed or plant, and what is skipped is not called due. */
    @ParameterizedTest
    @CsvSource({"52.1, 2026-11-25, 2027", "-41.3, 2026-05-25, 2026-27"})
    void why_not_takes_a_task_a_bed_or_a_plant_and_knows_what_was_noted(String latitude, String today, String season)
            throws IOException {
        run("start . --name=Ours --zone=UTC --planted=2021 --plants=blackcurrant=2 --today=2026-05-01 --at=" + latitude
                + ",-2.3");
        String task = "feed-first@blackcurrant-bed.blackcurrant.stool@" + season;
        String at = " --today=" + today;

        assertThat(run("why --not " + task + at)).contains("Season " + season).contains(": it is due on")
                .doesNotContain("fires");
        assertThat(run("why --not feed-first blackcurrant-bed" + at)).isEqualTo(run("why --not " + task + at));
        assertThat(run("why --not feed-first blackcurrant-1" + at)).isEqualTo(run("why --not " + task + at));
        run("note skipped --task=" + task + " --date=" + today + at);
        assertThat(run("why --not " + task + at)).contains(": it is noted as skipped.");
        assertThat(run("why --json --not " + task + at)).containsPattern("\"stands\" ?: ?\"noted as skipped\"");
        assertThat(Cli.in(garden).run("why", "--not", "feed-first", "nowhere").err())
                .contains("there is no plant or bed \"nowhere\"");
    }

    /** Refused lime, lime that gives way, a later season's work and skipped cuts: each in its own words. */
    @ParameterizedTest
    @CsvSource({"52.1, 2026-11-25, 2026-11-20, 2027, 24 Nov 2027",
            "-41.3, 2026-05-25, 2026-05-20, 2026-27, 24 May 2027"})
    void why_not_says_what_keeps_it_out_of_the_plan(String latitude, String today, String before, String season,
            String ends) throws IOException {
        run("start . --name=Ours --zone=UTC --planted=2018 --plants=blackcurrant=2 --today=2026-05-01 --at=" + latitude
                + ",-2.3");
        String at = " --today=" + today;
        run("note soil-test blackcurrant-bed --ph=5.2 --date=2020-03-10" + at);
        assertThat(run("why --not lime blackcurrant-bed" + at))
                .contains("it is not due", "  no:  The test of 2020-03-10").doesNotContain("it is due");
        assertThat(run("lime blackcurrant-bed" + at)).containsOnlyOnce("test again").doesNotContain("Next");

        run("note soil-test blackcurrant-bed --ph=5.2 --date=" + before + at);
        run("note fed blackcurrant-bed --material=cattle-manure --grams=9000 --date=" + before + at);
        assertThat(run("why --not lime blackcurrant-bed" + at).replaceAll("\\s+", " "))
                .contains("it is due, but no day is left for it. - Lime blackcurrant-bed gives way to", "keep 90 days")
                .contains("it is due, but that of season %s comes first".formatted(season));
        assertThat(run("why --json --not lime blackcurrant-bed" + at)).contains("\"because\": \"Lime black");
        assertThat(run("why --not feed-second blackcurrant-1" + at).replaceAll("\\s+", " "))
                .contains("it is due, but this plan ends on " + ends);
        run("note skipped winter-cut@blackcurrant-1@" + season + at);
        run("note skipped winter-cut@blackcurrant-2@" + season + at);
        assertThat(run("why --not clear-prunings blackcurrant-bed" + at)).contains("it is due, but what it clears");
    }

    private String run(String line) {
        Cli.Result result = Cli.in(garden).run(line.split(" "));
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }
}

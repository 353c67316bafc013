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

    private String run(String line) {
        Cli.Result result = Cli.in(garden).run(line.split(" "));
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }
}

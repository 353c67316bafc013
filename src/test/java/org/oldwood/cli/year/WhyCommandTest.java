package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

    private String run(String line) {
        Cli.Result result = Cli.in(garden).run(line.split(" "));
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }
}

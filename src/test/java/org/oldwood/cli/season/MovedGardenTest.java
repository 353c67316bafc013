package org.oldwood.cli.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** A garden whose place is corrected: its climate, stages and plan are those of the new place. */
class MovedGardenTest {
    @TempDir
    Path folder;

    @Test
    void a_garden_that_moves_gets_the_dates_and_tasks_of_its_new_place() throws IOException {
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id":"e1","date":"2020-03-15","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a","bushes":2}
                        """);
        at(52.2, 0.1);
        String stages = told("stages");
        String tasks = told("tasks");
        assertThat(stages).contains("Wattisham", "season 2026").doesNotContain("Wellington");

        at(-41.3, 174.8);

        assertThat(told("stages")).contains("Wellington", "season 2025-26").doesNotContain("Wattisham");
        assertThat(told("tasks")).isNotEqualTo(tasks);
        at(52.2, 0.1);
        assertThat(told("stages")).isEqualTo(stages);
        assertThat(told("tasks")).isEqualTo(tasks);
    }

    @Test
    void a_longitude_given_first_is_asked_about() {
        Cli.Result run = Cli.in(folder).run("suits", "blackcurrant", "--at=174.8,-41.3");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("swapped?");
        assertThat(Cli.in(folder).run("suits", "blackcurrant", "--at=46,8,8000").err())
                .contains("--at must be", "for example").doesNotContain("swapped");
    }

    /** Auckland has no winter for currants; Christchurch has. */
    @Test
    void a_place_without_a_winter_will_not_suit() {
        assertThat(Cli.in(folder).run("suits", "blackcurrant", "--at=-36.85,174.75,20").out())
                .contains("will not suit");
        assertThat(Cli.in(folder).run("suits", "blackcurrant", "--at=-43.5,172.6,30").out())
                .doesNotContain("will not suit");
    }

    private void at(double latitude, double longitude)
            throws IOException { Files.writeString(folder.resolve("garden.json"), """
                    {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                     "site": {"latitude": %s, "longitude": %s, "heightM": 20, "zone": "UTC"},
                     "beds": [{"id": "a", "areaM2": 4}]}
                    """.formatted(latitude, longitude)); }

    private String told(String command) {
        Cli.Result run = Cli.in(folder).run(command, "--today", "2026-03-20");
        assertThat(run.exit()).as(run.err()).isZero();
        return run.out();
    }
}

package org.oldwood.plan.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.GardenFolder;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rules;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;

/** In both demo gardens, north and south, rounds hold all open tasks, once each. */
class RoundsTest {
    private static final Rounds ROUNDS = Rounds.read(Documents.bundled());

    private static Plan plan(String garden, LocalDate day) throws IOException {
        GardenFolder folder = GardenFolder.open(Path.of("demo-data", garden));
        return Planning.planner(folder, folder.on(day)).plan();
    }

    @ParameterizedTest
    @CsvSource({
        "terrace-school,2026-11-25",
        "terrace-school,2027-05-10",
        "fire-station-hedges,2026-11-25",
        "fire-station-hedges,2027-05-10"
    })
    void every_open_task_is_in_one_round_on_a_day_of_its_window(String garden, LocalDate day) throws IOException {
        Plan plan = plan(garden, day);
        List<String> gathered = new ArrayList<>();
        for (Round round : ROUNDS.of(plan)) {
            assertThat(round.title()).hasSizeLessThanOrEqualTo(40);
            for (Task task : round.tasks()) {
                gathered.add(task.id());
                assertThat(round.day())
                        .as(task.id())
                        .isBetween(task.window().first(), task.window().last());
            }
        }
        assertThat(gathered)
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(plan.tasks().stream()
                        .filter(task -> task.state() == Task.State.OPEN)
                        .map(Task::id)
                        .toList());
    }

    @Test
    void every_rule_has_one_kind_of_round_and_every_kind_names_rules_that_are_there() {
        List<String> named = Documents.bundled().fields("rounds.json").objects("kinds").stream()
                .flatMap(kind -> kind.texts("rules").stream())
                .toList();
        assertThat(named)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(
                        Rules.read(Documents.bundled()).ids());
    }
}

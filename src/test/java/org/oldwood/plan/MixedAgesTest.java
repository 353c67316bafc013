package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Amount;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.settle.Share;

/** An old bush, one that is still built up, and one set this winter, of one crop in one bed: each has its own cut. */
class MixedAgesTest {
    private static final String DAY = "2028-02-01";

    private final TestGarden garden = new TestGarden(52, "");

    @BeforeEach
    void three() {
        planted("old", "2019-11-20");
        planted("built", "2025-11-20");
        planted("new", "2027-11-27");
    }

    private void planted(String id, String day) {
        garden.note("planted", day, "'plant': '%s', 'crop': 'gooseberry', 'bed': 'ribes', 'form': 'leg'".formatted(id));
    }

    private Task task(String rule) {
        return garden.plan(DAY).tasks().stream().filter(task -> task.rule().id().equals(rule))
                .filter(task -> task.season().year() == 2028).findFirst().orElseThrow();
    }

    private static List<String> plants(Task task) {
        return task.subject().plants().stream().map(PlantState::plant).map(plant -> plant.id()).toList();
    }

    @Test
    void the_cut_of_old_bushes_passes_the_young_by() {
        Task spurs = task("spur-cut-winter-gooseberry");

        assertThat(plants(spurs)).containsExactly("old");
        assertThat(spurs.settled().shares()).extracting(Share::id).containsExactly("old");
        assertThat(spurs.id()).isEqualTo("spur-cut-winter-gooseberry@ribes.gooseberry.leg@2028");
        assertThat(Booking.of(spurs)).singleElement().extracting(Amount.Noted::says).asString().contains("plant=old");
    }

    /** "From the second year, cut this summer's side shoots." */
    @Test
    void the_summer_cut_begins_in_the_second_year() {
        assertThat(plants(task("spur-cut-summer"))).containsExactly("old", "built");
    }

    @Test
    void a_leader_that_builds_a_bush_is_told_one_measure() {
        assertThat(task("build-branches").amount().orElseThrow().lines())
                .anyMatch(line -> line.contains("leader of each branch by half"))
                .noneMatch(line -> line.contains("quarter"));
        assertThat(task("build-branches").rule().text()).doesNotContain("half");
        assertThat(task("spur-cut-winter-gooseberry").amount().orElseThrow().lines())
                .anyMatch(line -> line.contains("by a quarter")).noneMatch(line -> line.contains("half"));
    }
}

package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Json;

/** The two gardens that come with the program can be read, hold together, and are rich enough. */
class DemoGardensTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void reads_without_a_problem_or_a_question(String name) throws IOException {
        GardenFolder folder = open(name);
        GardenState state = folder.on(DAY);
        assertThat(folder.problems().list()).isEmpty();
        assertThat(state.questions()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void holds_at_least_14_plants_of_6_crops_in_3_beds(String name) throws IOException {
        GardenState state = open(name).on(DAY);
        Set<String> crops = new HashSet<>();
        Set<String> beds = new HashSet<>();
        for (PlantState plant : state.standing()) {
            crops.add(plant.plant().crop());
            beds.add(plant.plant().bed());
        }
        assertThat(state.standing()).hasSizeGreaterThanOrEqualTo(14);
        assertThat(crops).hasSizeGreaterThanOrEqualTo(6);
        assertThat(beds).hasSizeGreaterThanOrEqualTo(3);
    }

    /** Each awkward thing that the gardens are there to show. */
    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void has_its_awkward_ones(String name) throws IOException {
        GardenFolder folder = open(name);
        GardenState state = folder.on(DAY);
        assertThat(state.standing()).as("a neglected bush: most stems four seasons old or older").anyMatch(plant -> {
            var ages = plant.stems().in(state.season().year());
            return ages.total() > 10 && ages.from(4) * 2 > ages.total();
        });
        assertThat(folder.journal()).as("a bed limed last month")
                .anyMatch(entry -> entry.kind() == EntryKind.LIMED && entry.date().isAfter(DAY.minusDays(40)));
        assertThat(folder.journal()).as("blueberries' soil that is not acid enough")
                .anyMatch(entry -> entry.kind() == EntryKind.SOIL_TEST && entry.date().getYear() == 2026
                        && blueberriesIn(state, entry.text("bed").orElse(""))
                        && entry.values().get("ph") instanceof Json.Num ph && ph.value() > 5.5);
        assertThat(state.lots().values()).as("a lot of which half failed")
                .anyMatch(lot -> lot.entries().stream().filter(entry -> entry.kind() == EntryKind.CHECKED)
                        .anyMatch(entry -> entry.count("alive").orElse(0) * 2 <= lot.struck()));
    }

    private static boolean blueberriesIn(GardenState state, String bed) {
        return state.standing().stream()
                .anyMatch(plant -> plant.plant().bed().equals(bed) && plant.plant().crop().equals("blueberry"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void plans_work_of_every_craft(String name) throws IOException {
        Plan plan = plan(name);
        Set<String> crafts = new HashSet<>();
        plan.tasks().forEach(task -> crafts.add(task.rule().craft()));
        assertThat(crafts).contains("pruning", "cuttings", "feeding", "mulching", "water", "season", "picking", "soil");
    }

    /** Two tasks that read alike in a calendar leave one guessing which bed is meant. */
    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void tells_all_tasks_of_a_rule_and_season_apart_by_their_titles(String name) throws IOException {
        Map<String, String> firstIds = new HashMap<>();
        for (Task task : plan(name).tasks()) {
            String heading = task.title() + "/" + task.season().label() + "/" + task.ordinal();
            String first = firstIds.putIfAbsent(heading, task.id());
            assertThat(first).as("another task with the title of " + task.id()).isNull();
        }
    }

    /** A last day on its own may be one on which nobody works, and asks for hardly anything. */
    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void ends_no_row_of_repeats_with_less_than_half_of_one(String name) throws IOException {
        Set<String> rows = new HashSet<>();
        List<Task> later = plan(name).tasks().stream().filter(task -> task.rule().repeatDays() > 0)
                .filter(task -> !rows.add(task.id().substring(0, task.id().indexOf('#')))).toList();
        assertThat(later).isNotEmpty();
        for (Task task : later) {
            long days = task.window().first().until(task.window().last(), ChronoUnit.DAYS) + 1;
            assertThat(days * 2).as(task.id()).isGreaterThanOrEqualTo(task.rule().repeatDays());
        }
    }

    private static Plan plan(String name) throws IOException {
        GardenFolder folder = open(name);
        return new Planner(folder.on(DAY), new CalendarStages(), folder.crops(), folder.documents(), new AllCrafts())
                .plan();
    }

    private static GardenFolder open(String name) throws IOException {
        return GardenFolder.open(Path.of("demo-data", name));
    }
}

package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Subject;

class PlannerTest {
    private static final String BUSH = "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'";

    private static Optional<Task> of(Plan plan, String rule) {
        return plan.tasks().stream().filter(task -> task.rule().id().equals(rule)).findFirst();
    }

    private static List<String> rules(Plan plan) {
        return plan.tasks().stream().map(task -> task.rule().id()).distinct().sorted().toList();
    }

    private static SmallGarden counted(SmallGarden garden, String planted, String counted) {
        return garden.note(planted, BUSH).note(counted, "'counted','plant':'bc-1','stems':{'1':5,'2':4,'3':4,'4+':3}");
    }

    @Test
    void a_counted_bush_gets_its_winter_cut_between_leaf_fall_and_bud_swell() {
        Plan plan = counted(SmallGarden.north(), "2020-11-15", "2026-11-10").plan("2026-11-25");

        Task cut = of(plan, "winter-cut").orElseThrow();
        assertThat(cut.id()).isEqualTo("winter-cut@bc-1@2027");
        assertThat(cut.window().first()).isBetween(LocalDate.of(2026, 11, 1), LocalDate.of(2026, 12, 15));
        assertThat(cut.window().last()).isBetween(LocalDate.of(2027, 2, 1), LocalDate.of(2027, 3, 31));
        assertThat(cut.reasons()).isNotEmpty().allMatch(Reason::holds);
        assertThat(cut.sources()).isNotEmpty();
    }

    @Test
    void every_day_lies_in_its_window_and_not_before_today() {
        Plan plan = counted(SmallGarden.north(), "2020-11-15", "2026-11-10").plan("2026-11-25");

        assertThat(plan.tasks()).extracting(Task::id).isNotEmpty().doesNotHaveDuplicates();
        for (Task task : plan.tasks()) {
            if (task.state() == Task.State.OPEN) {
                assertThat(task.day()).as(task.id()).isBetween(task.window().first(), task.window().last())
                        .isAfterOrEqualTo(plan.from());
            }
        }
    }

    @Test
    void the_south_gets_the_same_care_half_a_year_later() {
        Plan north = counted(SmallGarden.north(), "2020-11-15", "2026-11-10").plan("2026-11-25");
        Plan south = counted(SmallGarden.south(), "2020-05-15", "2026-05-10").plan("2026-05-25");

        assertThat(rules(south)).isEqualTo(rules(north));
        for (String rule : rules(north)) {
            Task task = of(north, rule).orElseThrow();
            if (task.rule().repeatDays() == 0) {
                Task mirrored = of(south, rule).orElseThrow();
                assertThat(ChronoUnit.DAYS.between(mirrored.window().first(), task.window().first())).as(task.id())
                        .isCloseTo(184L, within(4L));
            }
        }
        assertThat(of(south, "winter-cut").orElseThrow().id()).isEqualTo("winter-cut@bc-1@2026-27");
    }

    @Test
    void a_cut_that_was_noted_is_done_and_not_asked_for_again() {
        Plan plan = counted(SmallGarden.north(), "2020-11-15", "2026-11-10")
                .note("2026-11-20", "'pruned','plant':'bc-1','stems':{'4+':3}").plan("2026-11-25");

        Task cut = of(plan, "winter-cut").orElseThrow();
        assertThat(cut.state()).isEqualTo(Task.State.DONE);
        assertThat(cut.finished()).contains(LocalDate.of(2026, 11, 20));
    }

    @Test
    void a_task_skipped_by_its_id_is_skipped() {
        Plan plan = counted(SmallGarden.north(), "2020-11-15", "2026-11-10")
                .note("2026-11-20", "'skipped','task':'winter-cut@bc-1@2027','cause':'ill'").plan("2026-11-25");

        assertThat(of(plan, "winter-cut").orElseThrow().state()).isEqualTo(Task.State.SKIPPED);
    }

    @Test
    void what_is_not_known_becomes_a_task_of_its_own() {
        Plan plan = SmallGarden.north().note("2020-11-15", BUSH).plan("2026-11-25");

        assertThat(of(plan, "count-stems")).isPresent();
        assertThat(of(plan, "soil-test")).isPresent();
    }

    @Test
    void why_not_has_an_answer_with_its_values() {
        Planner planner = SmallGarden.north().note("2026-11-15", BUSH).planner("2026-11-25");
        Rule rule = planner.rules().find("winter-cut").orElseThrow();
        Subject bush = planner.subjects().find("bc-1", "plant").orElseThrow();

        List<Verdict> verdicts = planner.explain(rule, bush);

        assertThat(verdicts.get(0).due()).isFalse();
        assertThat(verdicts.get(0).reasons()).anySatisfy(reason -> {
            assertThat(reason.holds()).isFalse();
            assertThat(reason.words()).contains("in season 1 after planting");
        });
    }

    @Test
    void tasks_fall_on_days_one_works() {
        Plan plan = counted(SmallGarden.north(",'workDays':['saturday']"), "2020-11-15", "2026-11-10")
                .plan("2026-11-25");

        List<Task> wide = plan.tasks().stream().filter(task -> task.state() == Task.State.OPEN
                && task.window().first().isAfter(plan.from()) && task.window().days() >= 7).toList();
        assertThat(wide.size()).isPositive();
        assertThat(wide.stream().map(task -> task.day().getDayOfWeek()).distinct()).containsExactly(DayOfWeek.SATURDAY);
    }

    @Test
    void the_same_record_and_day_give_the_same_plan_and_leap_days_break_nothing() {
        SmallGarden garden = counted(SmallGarden.north(), "2020-11-15", "2026-11-10");
        for (String day : List.of("2028-02-28", "2028-02-29", "2028-03-01", "2027-12-31", "2028-01-01")) {
            Plan plan = garden.plan(day);
            assertThat(plan.tasks()).as(day).isNotEmpty();
            assertThat(garden.plan(day).tasks()).extracting(Task::id, Task::day).isEqualTo(plan.tasks().stream()
                    .map(task -> org.assertj.core.groups.Tuple.tuple(task.id(), task.day())).toList());
        }
    }

    @Test
    void a_bush_in_its_first_season_gets_other_work_than_a_bearing_one() {
        Plan young = SmallGarden.north().note("2026-11-15", BUSH).plan("2026-11-25");
        Plan bearing = counted(SmallGarden.north(), "2020-11-15", "2026-11-10").plan("2026-11-25");

        assertThat(young.tasks()).extracting(task -> task.rule().id())
                .isNotEqualTo(bearing.tasks().stream().map(task -> task.rule().id()).toList());
        assertThat(of(young, "winter-cut")).isEmpty();
    }

    @Test
    void stems_turn_a_year_older_at_the_leaf_fall_that_was_seen() {
        String count = "'counted','plant':'bc-1','stems':{'1':5}";
        SmallGarden unseen = SmallGarden.north().note("2020-11-15", BUSH).note("2026-10-28", count);
        SmallGarden seen = SmallGarden.north().note("2020-11-15", BUSH)
                .note("2026-10-20", "'seen','crop':'blackcurrant','stage':'leaf-fall-done'").note("2026-10-28", count);

        assertThat(unseen.on("2026-11-25").plant("bc-1").orElseThrow().stems().in(2027)).hasToString("2=5");
        assertThat(seen.on("2026-11-25").plant("bc-1").orElseThrow().stems().in(2027)).hasToString("1=5");
    }
}

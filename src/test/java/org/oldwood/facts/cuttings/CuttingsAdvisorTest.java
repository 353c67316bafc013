package org.oldwood.facts.cuttings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.facts.record.RecordFacts;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Task;
import org.oldwood.plan.TestGarden;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Season;

/** What the rules hear of lots, of parents and of the plants that lots became. */
class CuttingsAdvisorTest {
    private static final String LOT = "'lot': 'a', 'parent': 'bc', 'method': 'hardwood', 'number': 12, 'bed': 'ribes'";

    private final CuttingsAdvisor advisor = new CuttingsAdvisor();

    private static TestGarden north() { return new TestGarden(52, ""); }

    private static TestGarden south() { return new TestGarden(-42, ""); }

    private static Situation situation(TestGarden garden, String day, String kind, String id) {
        GardenState state = garden.on(day);
        Subject subject = new Subjects(state, TestGarden.CROPS).find(id, kind).orElseThrow();
        LocalDate today = LocalDate.parse(day);
        return new Situation(new Situation.World(state, new CalendarStages(), TestGarden.CROPS, TestGarden.DOCUMENTS),
                subject, Season.containing(today, state.garden().hemisphere()), today);
    }

    private Fact fact(String name, Situation s, String... of) {
        return advisor.fact(name, of.length == 0 ? Optional.empty() : Optional.of(of[0]), s);
    }

    private LocalDate day(String name, Situation s, String... of) { return fact(name, s, of).day().orElseThrow(); }

    @Test
    void a_lots_days_follow_one_another_through_its_first_year() {
        Situation s = situation(north().note("struck", "2025-11-20", LOT), "2025-12-01", "lot", "a");

        assertThat(day("moist-from-date", s)).isBetween("2026-03-01", "2026-04-30");
        assertThat(day("roots-date", s)).isAfter(day("moist-from-date", s));
        assertThat(day("moist-to-date", s)).isAfter(day("roots-date", s));
        // about twelve months after taking
        assertThat(day("lift-date", s)).isBetween("2026-10-15", "2026-12-15");
        assertThat(day("lift-by-date", s)).isBetween("2027-02-15", "2027-04-15");
    }

    @Test
    void the_souths_june_cuttings_root_in_the_summer_of_two_years() {
        Situation s = situation(south().note("struck", "2026-06-10", LOT), "2026-07-01", "lot", "a");

        assertThat(s.season().label()).isEqualTo("2026-27");
        assertThat(day("roots-date", s)).isBetween("2026-10-01", "2026-12-15");
        assertThat(day("lift-date", s)).isBetween("2027-04-15", "2027-06-15");
    }

    @Test
    void the_time_to_strike_is_the_methods_own_and_half_a_year_apart() {
        Situation north = situation(north(), "2026-11-25", "stand", "ribes.blackcurrant.stool");
        Situation south = situation(south(), "2026-05-25", "stand", "ribes.blackcurrant.stool");

        assertThat(day("strike-from-date", north, "hardwood")).isBetween("2026-11-01", "2026-11-30");
        assertThat(day("strike-by-date", north, "hardwood")).isBetween("2027-02-15", "2027-03-31");
        assertThat(day("strike-from-date", south, "hardwood")).isBetween("2026-05-01", "2026-05-31");
        assertThat(fact("strike-from-date", north, "root").known()).isFalse();
    }

    @Test
    void a_stand_gets_numbers_measures_and_the_wood_to_spare() {
        TestGarden garden = north().note("counted", "2026-11-20",
                "'plant': 'bc', 'stems': {'1': 13, '2': 4, '3': 4, '4+': 3}");
        Situation s = situation(garden, "2026-11-25", "stand", "ribes.blackcurrant.stool");

        Amount amount = advisor.amount("cuttings-to-take", s).orElseThrow();

        assertThat(fact("parent-fit", s).text()).contains("yes");
        assertThat(amount.words()).contains(" for 1, ", " for 3, ", " for 10");
        assertThat(String.join("\n", amount.lines())).contains("Measures: 22 cm long (13 to 30, computed)")
                .containsPattern("the wood to spare gives: bc \\d+\\.").contains("A shoot of 59 cm or more gives two");
        assertThat(amount.arithmetic()).anyMatch(line -> line.startsWith("rooting: 77 %"));
        assertThat(amount.sources()).contains("asanica-2017");
    }

    @Test
    void a_sick_parent_gives_nothing_and_the_fact_says_why() {
        TestGarden garden = north().note("inspected", "2026-02-01", "'plant': 'bc', 'finding': 'big-bud'")
                .note("inspected", "2026-11-01", "'plant': 'bc', 'finding': 'healthy'");
        Situation s = situation(garden, "2026-11-25", "stand", "ribes.blackcurrant.stool");

        assertThat(fact("parent-fit", s).text()).contains("no");
        assertThat(fact("parent-fit", s).words()).contains("bc: Big bud", "certified stock");
        assertThat(advisor.amount("cuttings-to-take", s)).isEmpty();
    }

    @Test
    void a_lots_water_is_its_ground_times_the_weeks_need() {
        TestGarden garden = north().note("struck", "2025-11-20", LOT).note("checked", "2026-05-20",
                "'lot': 'a', 'alive': 10");
        Situation s = situation(garden, "2026-06-01", "lot", "a");

        Amount water = advisor.amount("lot-water", s).orElseThrow();

        // 10 cuttings, 15 cm by 40 cm each, 25 mm a week: 10 × 0.06 m² × 25 mm = 15 l
        assertThat(water.value()).isEqualTo(15);
        assertThat(water.arithmetic().get(0)).contains("0.6 m²", "25 mm/wk", "15.0 l");
        assertThat(water.sources()).contains("illinois-small-fruits");
    }

    @Test
    void a_dead_lot_asks_for_nothing() {
        TestGarden garden = north().note("struck", "2025-11-20", LOT).note("checked", "2026-05-20",
                "'lot': 'a', 'alive': 0");
        Situation s = situation(garden, "2026-06-01", "lot", "a");

        for (String name : advisor.amountNames()) {
            assertThat(advisor.amount(name, s)).as(name).isEmpty();
        }
    }

    @Test
    void a_count_is_what_there_is_to_lift() {
        TestGarden garden = north().note("struck", "2025-11-20", LOT).note("checked", "2026-05-20",
                "'lot': 'a', 'alive': 10");

        Task task = garden.task("2026-11-25", "lift@a@2027");

        assertThat(task.title()).isEqualTo("Lift blackcurrant cuttings a");
        assertThat(task.amount().orElseThrow().words()).isEqualTo("10 plants, counted 20 May 2026");
        assertThat(task.amount().orElseThrow().arithmetic()).anyMatch(line -> line.startsWith("10 alive, of whom"));
    }

    /** What goes with every cutting went with those that were struck before it was seen. */
    @Test
    void a_bush_found_sick_after_the_strike_is_told_with_its_cuttings() {
        TestGarden garden = north().note("struck", "2025-11-20", LOT).note("checked", "2026-05-20",
                "'lot': 'a', 'alive': 10");
        garden.note("inspected", "2026-07-01", "'plant': 'bc', 'finding': 'reversion'");

        Task lift = garden.task("2026-11-25", "lift@a@2027");
        assertThat(lift.amount().orElseThrow().words())
                .isEqualTo("10 plants, counted 20 May 2026; their parent bc is not sound");
        assertThat(lift.amount().orElseThrow().lines()).first().asString().contains("goes with every cutting",
                "plant none of them out");
    }

    @Test
    void a_lift_that_was_noted_is_not_asked_for_again_a_year_later() {
        TestGarden garden = north().note("struck", "2024-11-20", LOT).note("lifted", "2025-11-15",
                "'lot': 'a', 'rooted': 9, 'good': 8");

        assertThat(garden.plan("2026-11-25").tasks()).noneMatch(task -> task.rule().id().equals("lift"));
    }

    @Test
    void a_plant_of_a_lot_knows_its_parent_and_is_cut_as_was_chosen() {
        String out = "'lot': 'a', 'bed': 'ribes', 'plants': ['x'], 'form': 'stool'";
        TestGarden hard = north().note("struck", "2025-11-20", LOT).note("planted-out", "2026-11-20", out);
        TestGarden none = north().note("struck", "2025-11-20", LOT + ", 'cut': 'none'").note("planted-out",
                "2026-11-20", out);
        Situation x = situation(hard, "2026-11-25", "plant", "x");

        assertThat(new RecordFacts().fact("origin-own-cutting", Optional.empty(), x).words())
                .contains("own cuttings, a from bc");
        assertThat(fact("planting-cut", x).text()).contains("hard");
        assertThat(fact("flowers-off", x).text()).contains("yes");
        assertThat(hard.plan("2026-11-25").tasks()).anyMatch(task -> task.id().startsWith("first-cut-back@x@"))
                .anyMatch(task -> task.id().equals("strip-flowers-ribes@x@2027"));
        assertThat(none.plan("2026-11-25").tasks()).noneMatch(task -> task.id().startsWith("first-cut-back@x@"))
                .noneMatch(task -> task.id().equals("strip-flowers-ribes@x@2027"));
    }

    @Test
    void a_strike_noted_at_a_parent_is_the_task_done() {
        TestGarden garden = north().note("struck", "2026-11-20", LOT);

        assertThat(garden.task("2026-11-25", "strike-hardwood@ribes.blackcurrant.stool@2027").state())
                .isEqualTo(Task.State.DONE);
    }
}

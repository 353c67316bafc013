package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;

/** A plan stands on itself: later tasks suppose that the earlier ones are done, and say so. */
class AheadTest {
    private static SmallGarden bush() {
        return SmallGarden.north().note("2018-11-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'")
                .note("2026-11-22", "'counted','plant':'bc-1','stems':{'1':3,'2':3,'3':3,'4+':4}");
    }

    private static Optional<Task> find(SmallGarden garden, String today, String id) {
        return garden.plan(today).find(id);
    }

    private static double grams(Task task) {
        return task.amount().orElseThrow().buys().stream().mapToDouble(Purchase::amount).sum();
    }

    /** Uncut, it would have seven spent stems next winter, and be called neglected. */
    @Test
    void next_winters_list_has_not_the_stems_of_this_winters() {
        Plan plan = bush().plan("2026-12-05");

        assertThat(plan.find("winter-cut@bc-1@2027").flatMap(Task::amount).map(Amount::words)).get().asString()
                .contains("of age 4+ (spent)");
        assertThat(plan.find("renovate@bc-1@2028")).isEmpty();
    }

    /** What the plan supposes of a cut is what the record says once it is done so. */
    @Test
    void next_winters_list_is_the_one_after_the_cut_was_done_as_planned() {
        List<String> supposed = ofSeason2028(bush().plan("2026-12-05"));
        Task cut = find(bush(), "2026-12-05", "winter-cut@bc-1@2027").orElseThrow();
        String stems = Booking.of(cut).get(0).says().get("stems").replaceAll("([0-9]+\\+?)=([0-9]+)", "'$1':$2");

        SmallGarden done = bush().note("2026-12-05", "'pruned','plant':'bc-1','cut':'winter','stems':{" + stems + "}");

        // once this winter's cut is done its rule looks a year ahead
        assertThat(ofSeason2028(done.plan("2026-12-05"))).containsAll(supposed);
    }

    private static List<String> ofSeason2028(Plan plan) {
        return plan.tasks().stream().filter(task -> task.id().endsWith("@bc-1@2028"))
                .map(task -> task.id() + ": " + task.amount().map(Amount::words).orElse("")).toList();
    }

    @Test
    void fruited_canes_that_leave_in_march_are_not_counted_again_in_august() {
        SmallGarden garden = SmallGarden.north()
                .note("2020-11-15", "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':4")
                .note("2026-11-20", "'canes','plant':'row','fresh':60,'fruited':20");
        Plan plan = garden.plan("2026-12-05");
        assertThat(plan.find("canes-thin@row@2027").flatMap(Task::amount).map(Amount::words)).get().asString()
                .contains("20");

        assertThat(plan.find("canes-out@row@2027").flatMap(Task::amount).map(Amount::words)).get().asString()
                .doesNotContain("20 counted");
    }

    /** 14 g of nitrogen a square metre in two dressings, whether the first is planned, given or missed. */
    @Test
    void the_second_dressing_is_planned_from_the_start() {
        SmallGarden garden = fed();
        Plan march = garden.plan("2027-03-10");
        double second = grams(march.find("feed-second@a.blackcurrant.stool@2027").orElseThrow());

        assertThat(second).isPositive();
        assertThat(grams(march.find("feed-first@a.blackcurrant.stool@2027").orElseThrow()))
                .isGreaterThanOrEqualTo(second);
    }

    @Test
    void a_first_dressing_that_was_missed_leaves_a_second_that_takes_more() {
        SmallGarden garden = fed();
        double planned = grams(garden.plan("2027-03-10").find("feed-second@a.blackcurrant.stool@2027").orElseThrow());

        Plan may = garden.plan("2027-05-20");

        assertThat(may.missed()).extracting(Missed::task).contains("feed-first@a.blackcurrant.stool@2027");
        assertThat(grams(may.find("feed-second@a.blackcurrant.stool@2027").orElseThrow())).isGreaterThan(planned);
    }

    private static SmallGarden fed() {
        return SmallGarden.north(",'materials':['ammonium-sulphate']")
                .note("2018-11-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a','bushes':4")
                .note("2024-06-01", "'vigour','bed':'a','growth':'normal'");
    }

    /** The first dressing then finds no day far enough from the lime; the second takes all that it may. */
    @Test
    void lime_in_winter_does_not_lose_the_years_nitrogen() {
        double split = grams(fed().plan("2027-03-10").find("feed-second@a.blackcurrant.stool@2027").orElseThrow());
        SmallGarden limed = fed().note("2027-03-05", "'limed','bed':'a','material':'ground-limestone','grams':2000");

        Plan plan = limed.plan("2027-03-10");

        assertThat(plan.tasks()).extracting(Task::id).doesNotContain("feed-first@a.blackcurrant.stool@2027");
        assertThat(grams(plan.find("feed-second@a.blackcurrant.stool@2027").orElseThrow())).isGreaterThan(split);
    }

    @Test
    void a_forgotten_task_is_planned_anew_once_its_day_has_passed() {
        Task later = find(bush(), "2027-01-20", "winter-cut@bc-1@2027").orElseThrow();

        assertThat(later.day()).isAfterOrEqualTo("2027-01-20");
        assertThat(find(bush(), "2027-01-20", "winter-cut@bc-1@2027").flatMap(Task::amount).map(Amount::value))
                .contains(find(bush(), "2026-12-05", "winter-cut@bc-1@2027").flatMap(Task::amount).map(Amount::value)
                        .orElseThrow());
    }

    @Test
    void the_planned_nitrogen_of_both_dressings_is_what_the_need_says() {
        Plan march = fed().plan("2027-03-10");
        double all = List.of("feed-first", "feed-second").stream()
                .mapToDouble(rule -> grams(march.find(rule + "@a.blackcurrant.stool@2027").orElseThrow())).sum();

        // 14 g N/m2 (RB209) at 21 % N on 12 m2
        assertThat(all).isCloseTo(14 * 12 / 0.21, within(20.0));
    }
}

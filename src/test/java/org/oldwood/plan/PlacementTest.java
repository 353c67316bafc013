package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.facts.Amount;
import org.oldwood.facts.OwnRules;

/** Which day a task gets. The first of March 2027 is a Monday. */
class PlacementTest {
    private static final String BUSH = "'planted','plant':'ID','crop':'blackcurrant','bed':'a'";
    private static final String TODAY = "2027-02-20";
    private static final String ALWAYS = "";
    private static final String SATURDAYS = ",'workDays':['saturday']";

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() { rules = new OwnRules(folder); }

    /** A day's tasks are told by their ids up to the first {@code @}. */
    private Map<String, String> days(String more, String today) {
        return days(SmallGarden.north(more), today);
    }

    private Map<String, String> days(SmallGarden garden, String today) {
        Map<String, String> days = new TreeMap<>();
        for (Task task : rules.plan(garden, today).tasks()) {
            days.merge(task.id().substring(0, task.id().lastIndexOf('@')), task.day().toString(),
                    (first, next) -> first);
        }
        return days;
    }

    private List<String> notices(String more) { return rules.plan(SmallGarden.north(more), TODAY).notices(); }

    @Test
    void a_row_of_tasks_waits_for_the_first_whatever_their_names_and_windows() {
        rules.window("z-first", "03-01", "03-31", ",'best':0.5")
                .window("m-second", "02-25", "03-31", ",'after':['z-first']")
                .window("a-third", "02-22", "03-31", ",'after':['m-second']");

        assertThat(days(ALWAYS, TODAY)).containsExactlyInAnyOrderEntriesOf(Map.of("z-first@garden", "2027-03-16",
                "m-second@garden", "2027-03-16", "a-third@garden", "2027-03-16"));
    }

    @Test
    void rules_that_wait_for_each_other_are_both_placed() {
        rules.window("a", "03-01", "03-31", ",'after':['b']").window("b", "03-05", "03-31", ",'after':['a']");

        assertThat(days(ALWAYS, TODAY)).containsOnlyKeys("a@garden", "b@garden");
    }

    @Test
    void work_waits_for_what_comes_first_on_its_bed_and_on_all_that_stands_there() {
        SmallGarden garden = SmallGarden.north().note("2020-11-15", BUSH.replace("ID", "bc-1"))
                .note("2020-11-15", BUSH.replace("ID", "bc-2")).note("2027-02-15", "'done','task':'z-cut@bc-1@2027'");
        rules.rule("z-cut", "plant", OwnRules.span("02-10", "03-31") + ",'best':1")
                .rule("y-weed", "bed", OwnRules.span("03-05", "03-31"))
                .rule("rake", "bed", OwnRules.span("02-01", "04-30") + ",'after':['z-cut']")
                .rule("tie", "plant", OwnRules.span("02-01", "04-30") + ",'after':['y-weed']");

        assertThat(days(garden, TODAY)).containsEntry("z-cut@bc-1", "2027-02-15")
                .containsEntry("z-cut@bc-2", "2027-03-31").containsEntry("rake@a", "2027-03-31")
                .containsEntry("tie@bc-1", "2027-03-05");
    }

    @Test
    void what_must_wait_beyond_its_own_time_stands_on_its_last_day() {
        rules.window("first", "03-20", "03-31", "").window("second", "03-01", "03-10", ",'after':['first']");

        assertThat(days(ALWAYS, TODAY)).containsEntry("second@garden", "2027-03-10");
        // no day lies between the 20th and the 10th, whoever works when
        assertThat(notices(SATURDAYS)).isEmpty();
    }

    @Test
    void the_first_working_day_from_the_best_one_on_is_taken_up_to_the_last_of_the_window() {
        rules.window("to-friday", "03-01", "03-05", "").window("to-saturday", "03-01", "03-06", "")
                .window("from-friday", "03-05", "03-31", "").window("from-saturday", "03-06", "03-31", "");

        assertThat(days(SATURDAYS, TODAY)).containsEntry("to-friday@garden", "2027-03-01")
                .containsEntry("to-saturday@garden", "2027-03-06").containsEntry("from-friday@garden", "2027-03-06")
                .containsEntry("from-saturday@garden", "2027-03-06");
        assertThat(notices(SATURDAYS)).containsExactly(
                "to-friday: no day that you work lies between 2027-03-01 and 2027-03-05; it is put on 2027-03-01.");
        assertThat(rules.plan(SmallGarden.north(SATURDAYS), "2027-03-04").notices()).containsExactly(
                "to-friday: no day that you work lies between 2027-03-04 and 2027-03-05; it is put on 2027-03-04.");
    }

    @Test
    void where_none_comes_after_the_best_day_the_last_working_day_before_it_is_taken() {
        rules.window("from-saturday", "03-06", "03-12", ",'best':1").window("from-sunday", "03-07", "03-12",
                ",'best':1");

        assertThat(days(SATURDAYS, TODAY)).containsEntry("from-saturday@garden", "2027-03-06")
                .containsEntry("from-sunday@garden", "2027-03-12");
        assertThat(days(SATURDAYS, "2027-03-07")).containsEntry("from-saturday@garden", "2027-03-12");
    }

    @Test
    void a_window_that_is_open_begins_today() {
        rules.window("dig", "02-01", "03-31", "");

        assertThat(days(ALWAYS, TODAY)).containsEntry("dig@garden", TODAY);
    }

    @Test
    void a_day_is_filled_to_the_last_minute_and_not_beyond() {
        rules.window("a", "03-01", "03-31", ",'minutes':30").window("b", "03-01", "03-31", ",'minutes':30")
                .window("c", "03-01", "03-31", ",'minutes':31").window("d", "03-01", "03-31", ",'minutes':30");

        // 30 and 30 fill the hour; 31 begins the next day, where 30 more would be a minute too much
        assertThat(days(",'minutesPerDay':60", TODAY)).containsExactlyInAnyOrderEntriesOf(Map.of("a@garden",
                "2027-03-01", "b@garden", "2027-03-01", "c@garden", "2027-03-02", "d@garden", "2027-03-03"));
    }

    @Test
    void a_task_longer_than_a_day_has_one_to_itself() {
        rules.window("a-short", "03-01", "03-31", ",'minutes':10").window("b-long", "03-01", "03-31", ",'minutes':90")
                .window("c-short", "03-02", "03-31", ",'minutes':10");

        assertThat(days(",'minutesPerDay':60", TODAY)).containsEntry("a-short@garden", "2027-03-01")
                .containsEntry("b-long@garden", "2027-03-02").containsEntry("c-short@garden", "2027-03-03");
    }

    @Test
    void what_was_done_today_has_used_the_day() {
        SmallGarden garden = SmallGarden.north(",'minutesPerDay':60").note("2027-03-01",
                "'done','task':'a@garden@2027'");
        rules.window("a", "03-01", "03-31", ",'minutes':50").window("b", "03-01", "03-31", ",'minutes':30");

        assertThat(days(garden, "2027-03-01")).containsEntry("b@garden", "2027-03-02");
    }

    @Test
    void the_window_that_opens_first_has_first_choice() {
        rules.window("a-later", "03-02", "03-31", ",'minutes':60").window("b-sooner", "03-01", "03-03",
                ",'minutes':60,'best':0.5");

        assertThat(days(",'minutesPerDay':60", TODAY)).containsEntry("b-sooner@garden", "2027-03-02")
                .containsEntry("a-later@garden", "2027-03-03");
    }

    @Test
    void a_plan_is_by_day_and_then_by_name() {
        rules.window("c", "03-01", "03-31", "").window("b", "03-02", "03-31", "").window("a", "03-02", "03-31", "");

        assertThat(rules.plan(SmallGarden.north(), TODAY).tasks()).extracting(task -> task.rule().id())
                .containsExactly("c", "a", "b");
    }

    /** Lime, and ten days later at the soonest ammonium; nothing is said of the other order. */
    private OwnRules tenDaysAfterLime() {
        return rules.document("keep-apart.json",
                "{'apart':[{'id':'p','first':'lime','then':'ammonium','days':{'is':10,'unit':'days',"
                        + "'source':'oldwood','seen':'assumed'},'reason':'It turns to gas.'}],'together':[]}");
    }

    private OwnRules onBed(String id, String from, String to, String tag, String more) {
        return rules.rule(id, "bed", OwnRules.span(from, to) + ",'tags':['" + tag + "']" + more);
    }

    @Test
    void what_must_be_kept_apart_moves_to_the_first_day_that_is_far_enough() {
        tenDaysAfterLime();
        onBed("a-lime", "03-01", "03-01", "lime", "");
        onBed("b-feed", "03-01", "03-11", "ammonium", "");

        assertThat(days(ALWAYS, TODAY)).containsEntry("a-lime@a", "2027-03-01").containsEntry("b-feed@a", "2027-03-11");
        assertThat(notices(ALWAYS)).isEmpty();
    }

    /** Feed first, then lime, is the order that works: nothing is left out. */
    @Test
    void where_one_order_leaves_no_day_the_other_is_tried() {
        tenDaysAfterLime();
        onBed("a-lime", "03-01", "03-31", "lime", ",'best':0");
        onBed("b-feed", "03-01", "03-10", "ammonium", "");

        assertThat(days(ALWAYS, TODAY)).containsOnlyKeys("a-lime@a", "b-feed@a");
        assertThat(days(ALWAYS, TODAY).get("a-lime@a")).isGreaterThan(days(ALWAYS, TODAY).get("b-feed@a"));
        assertThat(notices(ALWAYS)).isEmpty();
    }

    @Test
    void where_no_order_works_one_gives_way_and_one_notice_says_why() {
        tenDaysAfterLime();
        onBed("a-lime", "03-01", "03-01", "lime", "");
        onBed("b-feed", "03-01", "03-01", "ammonium", "");

        assertThat(days(ALWAYS, TODAY)).containsOnlyKeys("b-feed@a");
        assertThat(notices(ALWAYS)).singleElement().asString()
                .startsWith("a-lime gives way to \"b-feed, planned for 2027-03-01\": keep ").contains("10 days")
                .contains(
                        " between. It turns to gas. From 2027-03-02 it could be done, but its time ends on 2027-03-01.");
    }

    /** What harms more when it is missed stays; the other says that it gives way. */
    @Test
    void the_less_harmful_to_leave_gives_way() {
        tenDaysAfterLime();
        onBed("a-lime", "03-01", "03-01", "lime", ",'missed':{'then':'lapsed','harm':3,'words':'x','seen':'assumed'}");
        onBed("b-feed", "03-01", "03-10", "ammonium",
                ",'missed':{'then':'lapsed','harm':1,'words':'Next year.','seen':'assumed'}");

        assertThat(days(ALWAYS, TODAY)).containsOnlyKeys("a-lime@a");
        assertThat(notices(ALWAYS)).singleElement().asString().startsWith("b-feed gives way to").endsWith("Next year.");
    }

    @Test
    void what_would_come_too_soon_before_another_goes_behind_it() {
        tenDaysAfterLime();
        onBed("a-feed", "03-01", "03-09", "ammonium", ",'best':1");
        onBed("b-lime", "03-01", "03-31", "lime", "");

        assertThat(days(ALWAYS, TODAY)).containsEntry("a-feed@a", "2027-03-09").containsEntry("b-lime@a", "2027-03-10");
    }

    /** Nothing is said of ammonium first and lime behind it, but of one day it is too close. */
    @Test
    void two_that_want_the_same_day_get_one_each() {
        tenDaysAfterLime();
        onBed("a-feed", "03-01", "03-01", "ammonium", "");
        onBed("b-lime", "03-01", "03-31", "lime", "");

        assertThat(days(ALWAYS, TODAY)).containsEntry("a-feed@a", "2027-03-01").containsEntry("b-lime@a", "2027-03-02");
    }

    @Test
    void ten_days_before_another_is_far_enough() {
        tenDaysAfterLime();
        onBed("a-feed", "03-01", "03-11", "ammonium", ",'best':1");
        onBed("b-lime", "03-01", "03-31", "lime", "");

        assertThat(days(ALWAYS, TODAY)).containsEntry("b-lime@a", "2027-03-01");
    }

    @Test
    void what_was_moved_apart_still_falls_on_a_working_day() {
        tenDaysAfterLime();
        onBed("a-lime", "03-06", "03-06", "lime", "");
        onBed("b-feed", "03-06", "03-31", "ammonium", "");

        // free from Tuesday 16 March
        assertThat(days(SATURDAYS, TODAY)).containsEntry("b-feed@a", "2027-03-20");
    }

    @Test
    void the_tags_of_an_amounts_material_count_too() {
        tenDaysAfterLime();
        Amount amount = Amount.of(100, "g", "100 g", List.of(), List.of()).withMaterial(List.of(), List.of("ammonium"),
                List.of());
        rules.amount("some", Optional.of(amount));
        onBed("a-lime", "03-01", "03-01", "lime", "");
        rules.rule("b-feed", "bed", OwnRules.span("03-01", "03-31") + ",'amount':'some'");

        assertThat(days(ALWAYS, TODAY)).containsEntry("b-feed@a", "2027-03-11");
    }
}

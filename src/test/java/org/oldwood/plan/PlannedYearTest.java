package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.OwnRules;

/** Which tasks a plan holds: this season's or the next one's, what repeats, what is past. */
class PlannedYearTest {
    private static final String BUSH = "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'";

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() { rules = new OwnRules(folder); }

    private static SmallGarden garden() { return SmallGarden.north(); }

    private List<String> ids(SmallGarden garden, String today) {
        return rules.plan(garden, today).tasks().stream().map(Task::id).toList();
    }

    @Test
    void the_best_day_is_a_share_of_the_window() {
        rules.window("first", "03-01", "03-11", "").window("middle", "03-01", "03-11", ",'best':0.5").window("last",
                "03-01", "03-11", ",'best':1");

        Plan plan = rules.plan(garden(), "2027-02-01");

        assertThat(plan.tasks()).extracting(Task::id, task -> task.day().toString()).containsExactly(
                tuple("first@garden@2027", "2027-03-01"), tuple("middle@garden@2027", "2027-03-06"),
                tuple("last@garden@2027", "2027-03-11"));
    }

    @Test
    void a_plan_reaches_a_year_ahead_less_a_day() {
        rules.window("dig", "03-01", "03-05", "");

        assertThat(rules.plan(garden(), "2027-03-06").until()).isEqualTo("2028-03-05");
        // the season's own window is past; the next one opens on 1 March 2028
        assertThat(ids(garden(), "2027-03-06")).containsExactly("dig@garden@2028");
        // done on the last day of February, and the next window opens a day after the plan's end
        SmallGarden done = garden().note("2027-02-28", "'done','task':'dig@garden@2027'");
        assertThat(ids(done, "2027-03-01")).containsExactly("dig@garden@2027");
        assertThat(ids(done, "2027-03-02")).containsExactly("dig@garden@2027", "dig@garden@2028");
    }

    @Test
    void what_is_open_this_season_is_not_planned_for_the_next_one_too() {
        rules.window("dig", "11-05", "11-30", "");

        assertThat(ids(garden(), "2026-11-10")).containsExactly("dig@garden@2027");
    }

    @Test
    void the_last_day_is_still_in_time() {
        rules.rule("muck", "bed", OwnRules.span("03-01", "03-05") + ",'doneBy':['mulched']");

        Plan plan = rules.plan(garden(), "2027-03-05");

        assertThat(plan.tasks()).extracting(Task::id, Task::state, task -> task.day().toString())
                .containsExactly(tuple("muck@a@2027", Task.State.OPEN, "2027-03-05"));
        assertThat(plan.notices()).isEmpty();
    }

    @Test
    void what_was_missed_is_told_where_a_note_could_say_it_was_done() {
        String span = OwnRules.span("03-01", "03-05");
        rules.rule("z", "bed", "'title':'Mulch {bed}'," + span + ",'doneBy':['mulched']")
                .rule("a", "bed", "'title':'Feed {bed}'," + span + ",'doneBy':['fed']").rule("look", "bed", span);

        SmallGarden garden = garden().note("2025-06-01", "'vigour','bed':'a','growth':'normal'");

        assertThat(Missed.lines(rules.plan(garden, "2027-03-06").missed(), 10))
                .containsExactly("Feed Bed A, until 5 Mar 2027.", "Mulch Bed A, until 5 Mar 2027.");
    }

    @Test
    void what_repeats_has_a_number_and_a_part_of_the_window_each() {
        rules.window("weed", "03-01", "03-15", ",'repeatDays':7");

        // 15 days: a week, and a week with the one day that is left
        assertThat(rules.plan(garden(), "2027-02-01").tasks())
                .extracting(Task::id, Task::ordinal, task -> task.window().first().toString(),
                        task -> task.window().last().toString())
                .containsExactly(tuple("weed@garden@2027#1", 1, "2027-03-01", "2027-03-07"),
                        tuple("weed@garden@2027#2", 2, "2027-03-08", "2027-03-15"));
    }

    @Test
    void a_rest_of_more_than_half_a_repeat_is_a_job_of_its_own() {
        rules.window("weed", "03-01", "03-18", ",'repeatDays':7").window("rake", "03-01", "03-17", ",'repeatDays':7");

        // 14 days and 4, and 14 days and 3
        assertThat(ids(garden(), "2027-03-13"))
                .contains("weed@garden@2027#2", "weed@garden@2027#3", "rake@garden@2027#2")
                .doesNotContain("rake@garden@2027#3");
    }

    @Test
    void a_repeat_stays_until_its_last_day_and_keeps_its_number() {
        rules.window("weed", "03-01", "03-21", ",'repeatDays':7");

        assertThat(ids(garden(), "2027-03-07")).containsExactly("weed@garden@2027#1", "weed@garden@2027#2",
                "weed@garden@2027#3");
        assertThat(ids(garden(), "2027-03-08")).containsExactly("weed@garden@2027#2", "weed@garden@2027#3");
    }

    @Test
    void a_repeat_that_opens_after_the_plan_ends_is_left_to_the_next_plan() {
        rules.window("weed", "03-01", "03-21", ",'repeatDays':7");

        // the plan of 8 March 2027 ends on 7 March 2028, when the second repeat is a day off
        SmallGarden done = garden().note("2027-03-08", "'done','task':'weed@garden@2027#2'").note("2027-03-08",
                "'done','task':'weed@garden@2027#3'");
        assertThat(ids(done, "2027-03-08")).containsExactly("weed@garden@2027#2", "weed@garden@2027#3",
                "weed@garden@2028#1");
        assertThat(ids(done, "2027-03-09")).containsExactly("weed@garden@2027#2", "weed@garden@2027#3",
                "weed@garden@2028#1", "weed@garden@2028#2");
    }

    @Test
    void an_entry_does_the_repeat_in_whose_days_it_lies() {
        rules.rule("mow", "bed", OwnRules.span("03-01", "03-21") + ",'repeatDays':7,'doneBy':['fed']");
        SmallGarden fed = garden().note("2027-03-08", "'fed','bed':'a','material':'dried-blood','grams':10");

        assertThat(rules.plan(fed, "2027-03-09").tasks()).extracting(Task::id, Task::state)
                .containsExactly(tuple("mow@a@2027#2", Task.State.DONE), tuple("mow@a@2027#3", Task.State.OPEN));
    }

    @Test
    void a_task_that_was_begun_stays_open_and_tells_how_far_it_is() {
        rules.window("dig", "03-01", "03-31", "").window("hoe", "03-01", "03-31", "");
        SmallGarden begun = garden().note("2027-03-02", "'begun','task':'dig@garden@2027','percent':40")
                .note("2027-03-03", "'begun','task':'hoe@garden@2027'");

        Plan plan = rules.plan(begun, "2027-03-10");

        assertThat(plan.find("dig@garden@2027").orElseThrow().state()).isEqualTo(Task.State.OPEN);
        assertThat(words(plan, "dig@garden@2027")).contains("it was begun on 2027-03-02; 40 % of it is done");
        assertThat(words(plan, "hoe@garden@2027")).contains("it was begun on 2027-03-03");
        begun.note("2027-03-09", "'done','task':'dig@garden@2027'");
        assertThat(words(rules.plan(begun, "2027-03-10"), "dig@garden@2027")).containsExactly("A good reason.");
    }

    private static List<String> words(Plan plan, String id) {
        return plan.find(id).orElseThrow().reasons().stream().map(Reason::words).toList();
    }

    @Test
    void a_task_tells_its_reasons_and_every_source_once() {
        rules.tell("bushes", Fact.number(3, "3 bushes").from(List.of("illinois-raspberries", "oldwood")))
                .amount("some", Optional.of(Amount.of(2, "g", "2 g", List.of(), List.of("shas"))))
                .window("dig", "03-01", "03-31", ",'when':[{'fact':'bushes','atLeast':3}],'amount':'some'");

        Task task = rules.plan(garden(), "2027-02-01").tasks().get(0);

        assertThat(task.reasons().stream().map(Reason::words)).containsExactly("A good reason.", "3 bushes");
        assertThat(task.sources()).containsExactly("oldwood", "illinois-raspberries", "shas");
        assertThat(task.amount()).isPresent();
    }

    @Test
    void a_task_carries_the_warnings_of_its_rule_and_of_its_amounts_material_once() {
        Amount amount = Amount.of(2, "g", "2 g", List.of(), List.of()).withMaterial(List.of("sharp", "dust"), List.of(),
                List.of());
        rules.document("cautions.json",
                "{'cautions':[{'id':'dust','line':'It is dusty.','source':'oldwood'},"
                        + "{'id':'sharp','line':'It is sharp.','source':'oldwood'}]}")
                .amount("some", Optional.of(amount))
                .window("dig", "03-01", "03-31", ",'amount':'some','cautions':['sharp']");

        assertThat(Cautions.lines(rules.plan(garden(), "2027-02-01").tasks().get(0).cautions()))
                .containsExactly("It is dusty.", "It is sharp.");
    }

    @Test
    void a_rules_warning_goes_to_the_crops_and_months_it_is_for() {
        rules.document("cautions.json",
                "{'cautions':[{'id':'thorns','line':'It pricks.','source':'oldwood',"
                        + "'crops':['gooseberry'],'months':{'from':3,'to':3}}]}")
                .rule("tie", "plant", OwnRules.span("03-25", "04-07") + ",'repeatDays':7,'cautions':['thorns']");
        String gooseberry = BUSH.replace("blackcurrant", "gooseberry");
        SmallGarden garden = garden().note("2020-11-15", BUSH).note("2020-11-15", gooseberry.replace("bc-1", "go-1"))
                .note("2020-11-15", gooseberry.replace("bc-1", "go-2"));

        // the first repeat ends on 31 March, the second begins on 1 April
        assertThat(rules.plan(garden, "2027-02-01").tasks())
                .extracting(Task::id, task -> Cautions.lines(task.cautions()))
                .containsExactly(tuple("tie@bc-1@2027#1", List.of()), tuple("tie@go-1@2027#1", List.of("It pricks.")),
                        tuple("tie@go-2@2027#1", List.of("It pricks.")), tuple("tie@bc-1@2027#2", List.of()),
                        tuple("tie@go-1@2027#2", List.of()), tuple("tie@go-2@2027#2", List.of()));
    }

    @Test
    void a_task_of_an_amount_of_which_there_is_none_is_not_planned() {
        rules.amount("none", Optional.empty()).window("feed", "03-01", "03-31", ",'amount':'none'").window("dig",
                "03-01", "03-31", "");

        assertThat(ids(garden(), "2027-02-01")).containsExactly("dig@garden@2027");
    }

    @Test
    void what_was_done_stands_without_an_amount_on_the_day_it_was_done() {
        rules.amount("none", Optional.empty()).window("feed", "03-01", "03-31", ",'amount':'none'");
        SmallGarden done = garden().note("2027-03-04", "'done','task':'feed@garden@2027'");

        assertThat(rules.plan(done, "2027-03-10").tasks())
                .extracting(Task::id, Task::state, Task::day, Task::finished, Task::amount).first()
                .isEqualTo(tuple("feed@garden@2027", Task.State.DONE, LocalDate.of(2027, 3, 4),
                        Optional.of(LocalDate.of(2027, 3, 4)), Optional.empty()));
    }

    /** A window that a craft works out belongs to the season it opens in, the last one's too. */
    @Test
    void a_window_by_a_fact_belongs_to_the_season_it_opens_in() {
        rules.tell("from", Fact.day(LocalDate.of(2026, 10, 20), "from"))
                .tell("to", Fact.day(LocalDate.of(2026, 11, 20), "to"))
                .rule("water", "'opens':{'fact':'from'},'closes':{'fact':'to'}");

        assertThat(ids(garden(), "2026-10-15")).containsExactly("water@garden@2026");
        assertThat(ids(garden(), "2026-11-20")).containsExactly("water@garden@2026");
        assertThat(ids(garden(), "2026-11-21")).isEmpty();
        rules.tell("from", Fact.day(LocalDate.of(2026, 11, 1), "from"));
        assertThat(ids(garden(), "2026-10-15")).containsExactly("water@garden@2027");
    }

    @Test
    void repeats_in_a_window_by_a_fact_are_numbered_by_their_week_of_the_season() {
        rules.tell("from", Fact.day(LocalDate.of(2026, 11, 15), "from"))
                .tell("to", Fact.day(LocalDate.of(2026, 11, 28), "to"))
                .rule("water", "'opens':{'fact':'from'},'closes':{'fact':'to'},'repeatDays':7");

        // the season begins on 1 November: the 15th is the first day of its third week
        assertThat(ids(garden(), "2026-11-10")).containsExactly("water@garden@2027#3", "water@garden@2027#4");
    }

    @Test
    void a_window_by_an_entry_opens_with_the_last_one_of_its_kind() {
        rules.rule("look", "bed", "'opens':{'entry':'limed','plusDays':90},'closes':{'entry':'limed','plusDays':150}");
        String limed = "'limed','bed':'a','material':'ground-limestone','grams':2000";
        SmallGarden garden = garden().note("2025-10-01", limed).note("2026-10-20", limed);

        Task task = rules.plan(garden, "2026-11-25").tasks().get(0);

        assertThat(task.window().first()).isEqualTo("2027-01-18");
        assertThat(task.window().last()).isEqualTo("2027-03-19");
        assertThat(task.window().words())
                .isEqualTo("opens 90 days after limed on 2026-10-20; closes 150 days after limed on 2026-10-20");
        assertThat(ids(garden(), "2026-11-25")).isEmpty();
    }

    /** In the season before this one the window would be empty; that settles nothing. */
    @Test
    void a_window_that_closes_by_an_entry_may_open_in_this_season_only() {
        String limed = "'limed','bed':'a','material':'ground-limestone','grams':2000";
        SmallGarden garden = garden().note("2026-12-01", limed);
        rules.tell("from",
                situation -> situation.season().year() < 2027 ? Fact.unknown("from")
                        : Fact.day(LocalDate.of(2027, 3, 1), "from"))
                .rule("by-fact", "bed", "'opens':{'fact':'from'},'closes':{'entry':'limed','plusDays':150}")
                .rule("cut-short", "bed",
                        "'opens':{'entry':'limed'},'closes':{'entry':'limed','plusDays':150},'noLaterThan':{'day':'04-01'}");

        assertThat(ids(garden, "2026-12-15")).containsExactly("cut-short@a@2027", "by-fact@a@2027");
    }
}

package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.OwnRules;
import org.oldwood.facts.Situation;
import org.oldwood.garden.EntryKind;

/** Which entries say that a task was done. */
class SettlerTest {
    private static final String BUSH = "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'";
    private static final String FED = "'fed','bed':'a','material':'dried-blood','grams':10";

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() { rules = new OwnRules(folder); }

    private static SmallGarden garden() { return SmallGarden.north().note("2020-11-15", BUSH); }

    private Optional<Task.State> state(SmallGarden garden, String today, String id) {
        return rules.plan(garden, today).find(id).map(Task::state);
    }

    /** A job of March: halfway between two years' windows lies the edge, in the middle of September. */
    @ParameterizedTest(name = "fed on {0}: {1}")
    @CsvSource({"2026-09-14, 2026", "2026-09-15, 2027", "2026-10-31, 2027", "2026-11-01, 2027", "2027-09-14, 2027"})
    void an_entry_does_the_task_that_it_falls_nearest_to(String fedOn, int season) {
        rules.rule("feed", "bed", OwnRules.span("03-01", "03-31") + ",'doneBy':['mulched','fed']");

        assertThat(done(garden().note(fedOn, FED), fedOn)).isEqualTo("feed@a@" + season);
    }

    /** The same job in September: of two as near it did the earlier one, late. */
    @ParameterizedTest(name = "fed on {0}: {1}")
    @CsvSource({"2027-03-17, 2026-27", "2027-03-18, 2027-28", "2027-04-30, 2027-28", "2027-05-01, 2027-28"})
    void the_edge_turns_round_in_the_south(String fedOn, String season) {
        rules.rule("feed", "bed", OwnRules.span("03-01", "03-31") + ",'doneBy':['mulched','fed']");
        SmallGarden garden = SmallGarden.south().note("2020-05-15", BUSH).note(fedOn, FED);

        assertThat(done(garden, fedOn)).isEqualTo("feed@a@" + season);
    }

    private String done(SmallGarden garden, String today) {
        Task task = rules.planner(garden, today).plan().tasks().stream().filter(one -> one.state() == Task.State.DONE)
                .findFirst().orElseThrow();
        assertThat(task.finished()).contains(LocalDate.parse(today));
        return task.id();
    }

    /** A window that a craft works out is taken to come each year. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-09-14, OPEN", "2026-09-15, DONE", "2027-03-10, DONE"})
    void what_was_done_before_a_stands_window_counts_from_halfway(String fedOn, Task.State state) {
        opensOnTheFirstOfMarch("stand", "");

        assertThat(state(garden().note(fedOn, FED), "2027-03-10", "feed@a.blackcurrant.stool@2027")).contains(state);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-01-29, OPEN", "2027-01-30, DONE", "2027-03-10, DONE"})
    void a_rule_may_say_how_early_is_too_early(String fedOn, Task.State state) {
        opensOnTheFirstOfMarch("stand", ",'doneWhen':{'earlyDays':30}");

        assertThat(state(garden().note(fedOn, FED), "2027-03-10", "feed@a.blackcurrant.stool@2027")).contains(state);
    }

    private void opensOnTheFirstOfMarch(String subject, String more) {
        rules.tell("from", Fact.day(LocalDate.of(2027, 3, 1), "from"))
                .tell("to", Fact.day(LocalDate.of(2027, 3, 31), "to"))
                .rule("feed", subject, "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed']" + more);
    }

    @Test
    void what_was_done_after_a_window_by_a_fact_counts_until_today() {
        opensOnTheFirstOfMarch("bed", "");

        assertThat(state(garden().note("2027-04-05", FED), "2027-04-05", "feed@a@2027")).contains(Task.State.DONE);
    }

    /** The window opened in the season before, which ended on 31 October. */
    @Test
    void a_window_that_reaches_over_the_seasons_end_takes_what_was_done_after_it() {
        rules.tell("from", Fact.day(LocalDate.of(2026, 10, 20), "from"))
                .tell("to", Fact.day(LocalDate.of(2026, 11, 20), "to"))
                .rule("feed", "bed", "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed']");

        assertThat(state(garden().note("2026-11-05", FED), "2026-11-10", "feed@a@2026")).contains(Task.State.DONE);
    }

    /** A test of the soil before it was limed is not the test after it. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-01-09, OPEN", "2027-01-10, DONE", "2027-05-01, DONE"})
    void what_hangs_on_an_entry_is_not_done_before_it(String fedOn, Task.State state) {
        rules.rule("again", "bed",
                "'opens':{'entry':'limed','plusDays':90},'closes':{'entry':'limed','plusDays':150},'doneBy':['fed']");
        SmallGarden garden = garden().note("2027-01-10", "'limed','bed':'a','material':'ground-limestone','grams':10")
                .note(fedOn, FED);

        assertThat(state(garden, "2027-05-02", "again@a@2027")).contains(state);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~',
            value = {"'cut':'winter' | DONE", "'cut':'summer' | OPEN", "'tips':2 | DONE"})
    void an_entry_that_says_another_cut_does_not_count(String said, Task.State state) {
        rules.rule("cut", "plant",
                OwnRules.span("12-01", "02-28") + ",'doneBy':['pruned'],'doneFields':{'cut':'winter'}");
        SmallGarden garden = garden().note("2026-12-05", "'pruned','plant':'bc-1'," + said);

        assertThat(state(garden, "2026-12-10", "cut@bc-1@2027")).contains(state);
    }

    @Test
    void a_note_by_the_tasks_id_counts_before_any_other_entry() {
        rules.rule("feed", "bed", OwnRules.span("03-01", "03-31") + ",'doneBy':['fed']");
        SmallGarden garden = garden().note("2027-03-02", FED).note("2027-03-05", "'skipped','task':'feed@a@2027'");

        Task task = rules.plan(garden, "2027-03-10").find("feed@a@2027").orElseThrow();

        assertThat(task.state()).isEqualTo(Task.State.SKIPPED);
        assertThat(task.finished()).contains(LocalDate.of(2027, 3, 5));
    }

    /** Doses left to give: so many less as have been given. */
    private void due(String subject, int atFirst) {
        rules.tell("left", situation -> Fact.number(atFirst - given(situation), "so many left")).rule("give", subject,
                OwnRules.span("03-01", "03-31") + ",'when':[{'fact':'left','atLeast':1}],'doneBy':['fed','checked']");
    }

    private static long given(Situation situation) {
        return situation.subject().entries().stream()
                .filter(entry -> entry.kind() == EntryKind.FED || entry.kind() == EntryKind.CHECKED).count();
    }

    /** After the dose nothing is left to give: the subject before it tells that it was the task. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"bed, a", "stand, a.blackcurrant.stool", "lot, lot-1",})
    void the_last_dose_is_the_task_it_did(String subject, String id) {
        due(subject, 1);

        assertThat(state(given(), "2027-03-10", "give@" + id + "@2027")).contains(Task.State.DONE);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"bed, a", "stand, a.blackcurrant.stool", "lot, lot-1",})
    void a_dose_that_nothing_asked_for_did_no_task(String subject, String id) {
        due(subject, 0);

        assertThat(state(given(), "2027-03-10", "give@" + id + "@2027")).isEmpty();
    }

    private static SmallGarden given() {
        return garden()
                .note("2026-11-20", "'struck','lot':'lot-1','parent':'bc-1','method':'hardwood','number':9,'bed':'a'")
                .note("2027-03-04", FED).note("2027-03-05", "'checked','lot':'lot-1','alive':8");
    }

    /** Before the dose the window was far ahead: it was not the dose that the window is for. */
    @Test
    void a_dose_long_before_the_window_that_was_then_open_did_no_task() {
        rules.tell("from",
                situation -> Fact.day(given(situation) > 0 ? LocalDate.of(2027, 3, 1) : LocalDate.of(2027, 6, 1),
                        "from"))
                .tell("to", Fact.day(LocalDate.of(2027, 6, 30), "to"))
                .tell("left", situation -> Fact.number(1 - given(situation), "left"))
                .rule("feed", "stand", "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed'],"
                        + "'doneWhen':{'earlyDays':30},'when':[{'fact':'left','atLeast':1}]");

        assertThat(rules.plan(garden().note("2027-03-04", FED), "2027-03-10").tasks()).isEmpty();
        assertThat(rules.plan(garden().note("2027-05-02", FED), "2027-05-10").tasks()).extracting(Task::state)
                .containsExactly(Task.State.DONE);
    }

    /** Two jobs that the same kind of entry does: it did the one whose time lies nearest. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-03-10, early", "2027-04-14, early", "2027-04-16, late", "2027-05-20, late"})
    void of_two_jobs_that_an_entry_may_have_done_it_did_the_nearer(String day, String which) {
        rules.rule("early", "plant", OwnRules.span("03-01", "03-31") + ",'doneBy':['pruned']").rule("late", "plant",
                OwnRules.span("05-01", "05-31") + ",'doneBy':['pruned']");

        Plan plan = rules.plan(garden().note(day, "'pruned','plant':'bc-1','tips':2"), day);

        assertThat(plan.tasks()).filteredOn(task -> task.state() == Task.State.DONE).extracting(Task::id)
                .containsExactly(which + "@bc-1@2027");
    }

    /** An entry that says which work it was did that one, however far its time lies. */
    @Test
    void an_entry_that_says_which_it_was_did_no_other() {
        rules.rule("winter", "plant",
                OwnRules.span("01-01", "02-28") + ",'doneBy':['pruned'],'doneFields':{'cut':'winter'}").rule("summer",
                        "plant",
                        OwnRules.span("05-01", "05-31") + ",'doneBy':['pruned'],'doneFields':{'cut':'summer'}");
        SmallGarden garden = garden().note("2027-04-25", "'pruned','plant':'bc-1','cut':'winter','tips':2");

        assertThat(state(garden, "2027-04-26", "summer@bc-1@2027")).contains(Task.State.OPEN);
        assertThat(state(garden, "2027-04-26", "winter@bc-1@2027")).contains(Task.State.DONE);
    }

    /** Rules of other crops, of beds, or that other kinds of entry do, are no rivals. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~',
            value = {"plant | ,'doneBy':['pruned'],'crops':['gooseberry']",
                    "plant | ,'doneBy':['pruned'],'forms':['cordon']", "plant | ,'doneBy':['picked']", "plant | ",
                    "garden | ,'doneBy':['pruned']"})
    void what_cannot_have_been_meant_takes_no_entry_away(String subject, String other) {
        rules.rule("early", "plant", OwnRules.span("03-01", "03-31") + ",'doneBy':['pruned']").rule("other", subject,
                OwnRules.span("05-01", "05-31") + (other == null ? "" : other));

        assertThat(
                state(garden().note("2027-04-25", "'pruned','plant':'bc-1','tips':2"), "2027-04-26", "early@bc-1@2027"))
                .contains(Task.State.DONE);
    }

    /** The craft reckons what is left: 10 before, so many once fed. */
    @ParameterizedTest(name = "{0} left: {1}")
    @CsvSource({"10, OPEN", "4, OPEN", "1, DONE"})
    void the_craft_is_asked_before_and_now(int left, Task.State state) {
        rules.amount("some",
                situation -> Amount.of(given(situation) == 0 ? 10 : left, "g", "so much", List.of(), List.of()))
                .rule("feed", "bed", OwnRules.span("03-01", "03-31")
                        + ",'amount':'some','doneBy':['fed'],'doneWhen':{'percent':90}");
        SmallGarden garden = garden().note("2027-03-04", FED);

        Task task = rules.plan(garden, "2027-03-10").find("feed@a@2027").orElseThrow();

        assertThat(task.state()).isEqualTo(state);
        assertThat(task.title().contains("% done")).isEqualTo(state == Task.State.OPEN);
    }
}

package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Fact;
import org.oldwood.facts.OwnRules;
import org.oldwood.facts.Situation;
import org.oldwood.garden.EntryKind;

/** Which entries say that a task was done. */
class FinishedTest {
    private static final String BUSH = "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'";
    private static final String FED = "'fed','bed':'a','material':'dried-blood','grams':10";

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() {
        rules = new OwnRules(folder);
    }

    private static SmallGarden garden() {
        return SmallGarden.north().note("2020-11-15", BUSH);
    }

    private Optional<Task.State> state(SmallGarden garden, String today, String id) {
        return rules.plan(garden, today).find(id).map(Task::state);
    }

    /** Season 2027 is from 1 November 2026 to 31 October 2027. */
    @ParameterizedTest(name = "fed on {0}: {1}")
    @CsvSource({"2026-10-31, 2026", "2026-11-01, 2027", "2027-10-31, 2027", "2027-11-01, 2028"})
    void an_entry_does_the_task_of_the_season_it_lies_in(String fedOn, int season) {
        rules.rule("feed", "bed", OwnRules.span("03-01", "03-31") + ",'doneBy':['mulched','fed']");
        SmallGarden garden = garden().note(fedOn, FED);

        Planner planner = rules.planner(garden, fedOn);

        Task task = planner.plan().tasks().stream()
                .filter(one -> one.state() == Task.State.DONE)
                .findFirst()
                .orElseThrow();
        assertThat(task.id()).isEqualTo("feed@a@" + season);
        assertThat(task.finished()).contains(LocalDate.parse(fedOn));
    }

    @Test
    void an_entry_of_the_season_before_does_not_do_this_seasons_task() {
        rules.rule("feed", "bed", OwnRules.span("03-01", "03-31") + ",'doneBy':['fed']");
        SmallGarden garden = garden().note("2026-10-31", FED);

        assertThat(state(garden, "2026-11-10", "feed@a@2027")).contains(Task.State.OPEN);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-10-21, OPEN", "2026-10-22, DONE"})
    void a_window_that_opens_before_its_season_takes_what_was_done_in_it(String fedOn, Task.State state) {
        rules.rule("feed", "bed", "'opens':{'day':'11-01','plusDays':-10},'closes':{'day':'11-30'},'doneBy':['fed']");

        assertThat(state(garden().note(fedOn, FED), "2026-11-10", "feed@a@2027"))
                .contains(state);
    }

    /** A stand's window that a craft works out: from 30 days before it opens. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-01-29, OPEN", "2027-01-30, DONE", "2027-03-10, DONE"})
    void what_was_done_shortly_before_a_stands_window_counts(String fedOn, Task.State state) {
        opensOnTheFirstOfMarch("stand");

        assertThat(state(garden().note(fedOn, FED), "2027-03-10", "feed@a.blackcurrant.stool@2027"))
                .contains(state);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-10-31, OPEN", "2026-11-01, DONE"})
    void of_a_bed_all_that_was_done_in_the_season_counts(String fedOn, Task.State state) {
        opensOnTheFirstOfMarch("bed");

        assertThat(state(garden().note(fedOn, FED), "2027-03-10", "feed@a@2027"))
                .contains(state);
    }

    private void opensOnTheFirstOfMarch(String subject) {
        rules.tell(Fact.day("from", LocalDate.of(2027, 3, 1), "from"))
                .tell(Fact.day("to", LocalDate.of(2027, 3, 31), "to"))
                .rule("feed", subject, "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed']");
    }

    @Test
    void what_was_done_after_a_window_by_a_fact_counts_until_today() {
        opensOnTheFirstOfMarch("bed");

        assertThat(state(garden().note("2027-04-05", FED), "2027-04-05", "feed@a@2027"))
                .contains(Task.State.DONE);
    }

    /** The window opened in the season before, which ended on 31 October. */
    @Test
    void a_window_that_reaches_over_the_seasons_end_takes_what_was_done_after_it() {
        rules.tell(Fact.day("from", LocalDate.of(2026, 10, 20), "from"))
                .tell(Fact.day("to", LocalDate.of(2026, 11, 20), "to"))
                .rule("feed", "bed", "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed']");

        assertThat(state(garden().note("2026-11-05", FED), "2026-11-10", "feed@a@2026"))
                .contains(Task.State.DONE);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {"'cut':'winter' | DONE", "'cut':'summer' | OPEN", "'tips':2 | DONE"})
    void an_entry_that_says_another_cut_does_not_count(String said, Task.State state) {
        rules.rule(
                "cut", "plant", OwnRules.span("12-01", "02-28") + ",'doneBy':['pruned'],'doneFields':{'cut':'winter'}");
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
        rules.tell("left", situation -> Fact.number("left", atFirst - given(situation), "so many left"))
                .rule(
                        "give",
                        subject,
                        OwnRules.span("03-01", "03-31")
                                + ",'when':[{'fact':'left','atLeast':1}],'doneBy':['fed','checked']");
    }

    private static long given(Situation situation) {
        return situation.subject().entries().stream()
                .filter(entry -> entry.kind() == EntryKind.FED || entry.kind() == EntryKind.CHECKED)
                .count();
    }

    /** After the dose nothing is left to give: the subject before it tells that it was the task. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "bed, a",
        "stand, a.blackcurrant.stool",
        "lot, lot-1",
    })
    void the_last_dose_is_the_task_it_did(String subject, String id) {
        due(subject, 1);

        assertThat(state(given(), "2027-03-10", "give@" + id + "@2027")).contains(Task.State.DONE);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "bed, a",
        "stand, a.blackcurrant.stool",
        "lot, lot-1",
    })
    void a_dose_that_nothing_asked_for_did_no_task(String subject, String id) {
        due(subject, 0);

        assertThat(state(given(), "2027-03-10", "give@" + id + "@2027")).isEmpty();
    }

    private static SmallGarden given() {
        return garden().note(
                        "2026-11-20", "'struck','lot':'lot-1','parent':'bc-1','method':'hardwood','number':9,'bed':'a'")
                .note("2027-03-04", FED)
                .note("2027-03-05", "'checked','lot':'lot-1','alive':8");
    }

    /** Before the dose the window was far ahead: it was not the dose that the window is for. */
    @Test
    void a_dose_long_before_the_window_that_was_then_open_did_no_task() {
        rules.tell(
                        "from",
                        situation -> Fact.day(
                                "from",
                                given(situation) > 0 ? LocalDate.of(2027, 3, 1) : LocalDate.of(2027, 6, 1),
                                "from"))
                .tell(Fact.day("to", LocalDate.of(2027, 6, 30), "to"))
                .tell("left", situation -> Fact.number("left", 1 - given(situation), "left"))
                .rule(
                        "feed",
                        "stand",
                        "'opens':{'fact':'from'},'closes':{'fact':'to'},'doneBy':['fed'],"
                                + "'when':[{'fact':'left','atLeast':1}]");

        assertThat(rules.plan(garden().note("2027-03-04", FED), "2027-03-10").tasks())
                .isEmpty();
        assertThat(rules.plan(garden().note("2027-05-02", FED), "2027-05-10").tasks())
                .extracting(Task::state)
                .containsExactly(Task.State.DONE);
    }
}

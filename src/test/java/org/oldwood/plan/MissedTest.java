package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Fact;
import org.oldwood.facts.OwnRules;
import org.oldwood.garden.EntryKind;
import org.oldwood.store.Documents;

/** What becomes of work that was not done in its time. */
class MissedTest {
    private static final String BUSH = "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'";
    private static final String FED = "'fed','bed':'a','material':'dried-blood','grams':10";
    private static final String MARCH = OwnRules.span("03-01", "03-31");

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() { rules = new OwnRules(folder); }

    /** Somebody has kept a record of work since 2024. */
    private static SmallGarden garden() {
        return SmallGarden.north().note("2020-11-15", BUSH).note("2024-06-01", "'vigour','bed':'a','growth':'normal'");
    }

    private static String missed(int harm, String then) {
        return ",'missed':{'then':" + then + ",'harm':" + harm + ",'seen':'assumed'}";
    }

    private List<String> told(SmallGarden garden, String today) {
        return rules.plan(garden, today).missed().stream().map(Missed::task).toList();
    }

    @Test
    void every_rule_says_what_becomes_of_its_work_and_names_a_rule_that_is_there() {
        Rules bundled = Rules.read(Documents.bundled());

        for (Rule rule : bundled.all()) {
            assertThat(rule.ifMissed()).as(rule.id()).isNotSameAs(IfMissed.UNSAID);
            rule.ifMissed().instead().ifPresent(other -> assertThat(bundled.find(other)).as(rule.id()).isPresent());
        }
    }

    /** Until the same job's time has come again. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2027-03-31, 0", "2027-04-01, 1", "2027-10-31, 1", "2027-11-01, 1", "2028-02-29, 1", "2028-03-01, 0"})
    void it_is_told_until_it_is_overtaken(String today, int times) {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(2, "'lapsed'"));

        assertThat(told(garden(), today)).hasSize(times).allMatch("feed@a@2027"::equals);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2026-09-30, 0", "2026-10-01, 1", "2027-04-30, 1", "2027-05-01, 1", "2027-08-31, 1", "2027-09-01, 0"})
    void it_is_told_as_long_in_the_south(String today, int times) {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(2, "'lapsed'"));
        SmallGarden garden = SmallGarden.south().note("2020-05-15", BUSH).note("2024-06-01",
                "'vigour','bed':'a','growth':'normal'");

        assertThat(told(garden, today)).hasSize(times).allMatch("feed@a@2026-27"::equals);
    }

    @Test
    void noted_late_or_skipped_it_is_told_no_more() {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(2, "'lapsed'"));

        assertThat(told(garden().note("2027-05-10", FED), "2027-05-12")).isEmpty();
        assertThat(told(garden().note("2027-05-10", "'skipped','task':'feed@a@2027'"), "2027-05-12")).isEmpty();
        assertThat(told(garden().note("2027-05-10", "'skipped','task':'feed@a@2027'"), "2027-12-12")).isEmpty();
    }

    @Test
    void optional_work_is_never_told() {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(0, "'lapsed'"));

        assertThat(told(garden(), "2027-05-12")).isEmpty();
    }

    @Test
    void work_that_is_still_good_moves_on() {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(2, "'still-good','until':{'day':'05-15'}"));

        Task late = rules.plan(garden(), "2027-05-15").find("feed@a@2027").orElseThrow();
        assertThat(late.state()).isEqualTo(Task.State.OPEN);
        assertThat(late.window().last()).isEqualTo(LocalDate.of(2027, 5, 15));
        assertThat(late.day()).isEqualTo(LocalDate.of(2027, 5, 15));
        assertThat(late.reasons()).anyMatch(reason -> reason.words().contains("still good until 2027-05-15"));
        assertThat(told(garden(), "2027-05-15")).isEmpty();
        assertThat(told(garden(), "2027-05-16")).containsExactly("feed@a@2027");
    }

    @Test
    void the_next_task_says_that_the_last_was_missed() {
        rules.rule("feed", "bed", MARCH + ",'doneBy':['fed']" + missed(2, "'lapsed','words':'It is hungry.'"));

        assertThat(rules.plan(garden(), "2028-03-02").find("feed@a@2028").orElseThrow().reasons())
                .anyMatch(reason -> reason.words()
                        .equals("last season's, until 2027-03-31, is not noted as done. It is hungry."));
        assertThat(
                rules.plan(garden().note("2027-03-04", FED), "2028-03-02").find("feed@a@2028").orElseThrow().reasons())
                .noneMatch(reason -> reason.words().contains("last season's"));
    }

    @Test
    void nothing_is_told_from_before_the_record_or_the_plant() {
        rules.rule("cut", "plant", MARCH + ",'doneBy':['pruned']" + missed(2, "'lapsed'"));
        SmallGarden begun = SmallGarden.north().note("2020-11-15", BUSH);

        assertThat(told(begun, "2027-05-12")).isEmpty();
        assertThat(told(begun.note("2027-05-01", FED), "2027-05-12")).isEmpty();
        assertThat(told(garden().note("2027-04-20", "'planted','plant':'new','crop':'blackcurrant','bed':'a'"),
                "2027-05-12")).containsExactly("cut@bc-1@2027");
    }

    /** Big buds found in June were not there to be picked in March. */
    @ParameterizedTest(name = "found on {0}: {1}")
    @CsvSource({"2027-03-31, 1", "2027-04-01, 0"})
    void what_was_found_later_was_not_missed_before(String found, int times) {
        rules.tell("found",
                situation -> Fact.yes(
                        situation.subject().entries().stream().anyMatch(entry -> entry.kind() == EntryKind.INSPECTED),
                        "found"))
                .rule("pick", "plant",
                        MARCH + ",'doneBy':['pruned'],'when':[{'fact':'found','is':'yes'}]" + missed(2, "'lapsed'"));
        SmallGarden garden = garden().note(found, "'inspected','plant':'bc-1','finding':'big-bud'");

        assertThat(told(garden, "2027-06-01")).hasSize(times);
        assertThat(told(garden, "2027-12-01")).hasSize(times);
    }

    @Test
    void at_most_ten_lines_the_most_harmful_first() {
        for (int i = 0; i < 12; i++) {
            rules.rule("job-" + i, "bed", MARCH + ",'doneBy':['fed']" + missed(i == 7 ? 3 : 1, "'lapsed'"));
        }

        List<String> lines = Missed.lines(rules.plan(garden(), "2027-05-12").missed(), 10);

        assertThat(lines).hasSize(10).last().asString().startsWith("and 3 more kinds of work");
        assertThat(lines.get(0)).startsWith("job-7, until 31 Mar 2027.");
    }

    @Test
    void ten_lines_need_no_more() {
        for (int i = 0; i < 10; i++) {
            rules.rule("job-" + i, "bed", MARCH + ",'doneBy':['fed']" + missed(1, "'lapsed'"));
        }

        assertThat(Missed.lines(rules.plan(garden(), "2027-05-12").missed(), 10)).hasSize(10)
                .noneMatch(line -> line.contains("more kinds"));
    }

    @Test
    void one_line_tells_of_all_plants_of_a_kind_of_work_and_what_to_do_instead() {
        rules.rule("cut", "plant", MARCH + ",'doneBy':['pruned']" + missed(2, "'instead','instead':'thin'"))
                .rule("thin", "plant", OwnRules.span("06-01", "06-30"));
        SmallGarden garden = garden().note("2021-11-15", BUSH.replace("bc-1", "bc-2"));

        assertThat(Missed.lines(rules.plan(garden, "2027-05-12").missed(), 10))
                .containsExactly("cut and 1 more, until 31 Mar 2027. Too late; instead: thin.");
        // the thinning of June 2028 is not instead of a cut of March 2027
        assertThat(Missed.lines(rules.plan(garden, "2027-07-12").missed(), 10)).first().asString()
                .isEqualTo("cut and 1 more, until 31 Mar 2027. Too late now.");
    }

    /** Of a bush that is done nothing is to be done instead; where other work follows on the missed one, that is. */
    @Test
    void what_to_do_instead_is_of_the_same_bush() {
        String open = OwnRules.span("06-01", "06-30") + ",'doneBy':['inspected']";
        rules.rule("cut", "plant", MARCH + ",'doneBy':['pruned']" + missed(2, "'instead','instead':'thin'"))
                .rule("thin", "plant", open + ",'title':'Thin {subject}'")
                .rule("count", "plant", MARCH + ",'doneBy':['counted']" + missed(1, "'instead','instead':'none'"))
                .rule("none", "bed", MARCH)
                .rule("cut-old", "plant", open + ",'after':['count'],'title':'Clear {subject}'");
        SmallGarden garden = garden().note("2021-11-15", BUSH.replace("bc-1", "bc-2")).note("2027-03-05",
                "'pruned','plant':'bc-1','stems':{'3':1}");

        assertThat(Missed.lines(rules.plan(garden, "2027-05-12").missed(), 10)).startsWith(
                "cut, until 31 Mar 2027. Too late; instead: Thin blackcurrant bc-2.",
                "count and 1 more, until 31 Mar 2027. Too late; instead: Clear blackcurrant bc-1.");
    }

    /** From the day on which the record was begun, whether or not anything was noted. */
    @ParameterizedTest(name = "begun {0}: {1}")
    @CsvSource({"2027-03-31, 1", "2027-04-01, 0"})
    void where_nothing_was_noted_work_missed_since_the_garden_was_begun_is_told(String since, int times) {
        rules.rule("cut", "plant", MARCH + ",'doneBy':['pruned']" + missed(2, "'lapsed'"));
        String begun = ",'since':'%s'".formatted(since);

        assertThat(told(SmallGarden.north(begun).note("2020-11-15", BUSH), "2027-05-12")).hasSize(times);
        assertThat(told(
                SmallGarden.south(begun.replace("03-31", "09-30").replace("04-01", "10-01")).note("2020-05-15", BUSH),
                "2027-11-12")).hasSize(times);
    }

    /** Whoever only ticks off keeps a record, too. */
    @Test
    void a_task_ticked_off_begins_the_record() {
        rules.rule("cut", "plant", MARCH + ",'doneBy':['pruned']" + missed(2, "'lapsed'"));
        SmallGarden ticked = SmallGarden.north().note("2020-11-15", BUSH).note("2026-11-02",
                "'done','task':'water@garden@2026'");

        assertThat(told(ticked, "2027-05-12")).containsExactly("cut@bc-1@2027");
    }

    /** A garden begun today has no past. */
    @Test
    void a_new_garden_begins_without_reproaches() {
        SmallGarden garden = SmallGarden.north().note("2020-11-15", BUSH).note("2027-05-12",
                "'counted','plant':'bc-1','stems':{'1':5,'2':4,'3':4,'4+':3}");

        assertThat(garden.plan("2027-05-12").missed()).isEmpty();
        assertThat(garden.plan("2027-05-12").notices()).isEmpty();
    }
}

package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Fact;
import org.oldwood.facts.OwnRules;
import org.oldwood.facts.Subject;
import org.oldwood.store.Fields;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/** When a rule applies, and what is said of one that does not. */
class JudgeTest {
    private static final String BUSH = "'planted','plant':'ID','crop':'blackcurrant','bed':'a'";

    @TempDir
    private Path folder;

    private OwnRules rules;

    @BeforeEach
    void no_rules_yet() { rules = new OwnRules(folder); }

    private static SmallGarden garden() {
        return SmallGarden.north().note("2026-11-15", BUSH.replace("ID", "bc-1")).note("2027-01-20",
                BUSH.replace("ID", "bc-2"));
    }

    /** This season's answer for the whole garden, or for one plant. */
    private Verdict verdict(String rule, String subject, String today) {
        Planner planner = rules.planner(garden(), today);
        Rule one = planner.rules().find(rule).orElseThrow();
        return planner.explain(one, planner.subjects().find(subject, one.subject()).orElseThrow()).get(0);
    }

    private Verdict verdict(String rule, String today) { return verdict(rule, "garden", today); }

    @Test
    void a_window_says_how_both_its_ends_were_found() {
        rules.rule("dig", "'opens':{'day':'03-01','plusDays':-7},'closes':{'day':'03-01','plusDays':10}");

        Window window = verdict("dig", "2027-02-01").window().orElseThrow();

        assertThat(window.first()).isEqualTo("2027-02-22");
        assertThat(window.last()).isEqualTo("2027-03-11");
        assertThat(window.days()).isEqualTo(18);
        assertThat(window.words())
                .isEqualTo("opens 7 days before by the calendar; closes 10 days after by the calendar");
    }

    @Test
    void a_window_is_as_unsure_as_the_less_sure_of_its_ends() {
        rules.rule("to-stage", "plant", "'opens':{'day':'11-01'},'closes':{'stage':'bud-swell'}").rule("from-stage",
                "plant", "'opens':{'stage':'bud-swell'},'closes':{'day':'10-31'}");

        Window to = verdict("to-stage", "bc-1", "2027-02-01").window().orElseThrow();
        Window from = verdict("from-stage", "bc-1", "2027-02-01").window().orElseThrow();

        assertThat(to.plusMinusDays()).isPositive().isEqualTo(from.plusMinusDays());
        assertThat(to.last()).isEqualTo(from.first());
    }

    @Test
    void a_window_that_closes_before_it_opens_is_none() {
        rules.window("ends-before", "03-02", "03-01", "").window("one-day", "03-01", "03-01", "");

        Verdict before = verdict("ends-before", "2027-02-01");
        assertThat(before.due()).isFalse();
        assertThat(before.because()).isEqualTo("its window would close on 2027-03-01, before it opens on 2027-03-02");
        assertThat(verdict("one-day", "2027-02-01").due()).isTrue();
    }

    @Test
    void a_day_that_a_craft_does_not_know_is_told_with_what_to_note() {
        rules.tell("ripe", Fact.unknown("note when the first fruit is ripe"))
                .rule("opens", "'opens':{'fact':'ripe'},'closes':{'day':'03-01'}")
                .rule("closes", "'opens':{'day':'03-01'},'closes':{'fact':'ripe'}")
                .rule("entry", "'opens':{'entry':'limed'},'closes':{'day':'10-31'}")
                .rule("stage", "bed", "'opens':{'stage':'bud-swell'},'closes':{'day':'10-31'}");

        String words = "its window hangs on fact ripe, which is not known here: note when the first fruit is ripe";
        assertThat(verdict("opens", "2027-02-01").because()).isEqualTo(words);
        assertThat(verdict("closes", "2027-02-01").because()).isEqualTo(words);
        assertThat(verdict("entry", "2027-02-01").because())
                .isEqualTo("its window hangs on entry limed, which is not known here");
        Planner empty = rules.planner(SmallGarden.north(), "2027-02-01");
        assertThat(empty
                .explain(empty.rules().find("stage").orElseThrow(), empty.subjects().find("a", "bed").orElseThrow())
                .get(0).because()).isEqualTo("its window hangs on stage bud-swell, which is not known here");
    }

    @Test
    void a_last_day_of_its_own_is_asked_for_each_subject_anew() {
        String planted = "'planted','crop':'blackcurrant','bed':'a','plant':";
        SmallGarden two = SmallGarden.north().note("2020-11-15", planted + "'bc-1'").note("2020-11-15",
                planted + "'bc-2'");
        rules.tell("latest",
                now -> now.subject().id().equals("bc-1") ? Fact.day(LocalDate.of(2027, 2, 10), "soon")
                        : Fact.unknown("any day will do"))
                .rule("plants", "plant", OwnRules.span("02-01", "03-01") + ",'noLaterThan':{'fact':'latest'}");
        Planner planner = rules.planner(two, "2027-02-01");

        assertThat(last(planner, "bc-1")).isEqualTo("2027-02-10");
        assertThat(last(planner, "bc-2")).isEqualTo("2027-03-01");
        assertThat(last(planner, "bc-1")).isEqualTo("2027-02-10");
    }

    private static String last(Planner planner, String plant) {
        Rule rule = planner.rules().find("plants").orElseThrow();
        Subject subject = planner.subjects().find(plant, "plant").orElseThrow();
        return planner.explain(rule, subject).get(0).window().orElseThrow().last().toString();
    }

    @Test
    void a_craft_is_asked_why_with_the_argument_that_the_window_has() {
        rules.tell("struck", (of, now) -> Fact.unknown(of.orElse("nothing"))).rule("layers",
                "'opens':{'fact':'struck','of':'layer'},'closes':{'day':'03-01'}");

        assertThat(verdict("layers", "2027-02-01").because())
                .isEqualTo("its window hangs on fact struck, which is not known here: layer");
    }

    @Test
    void a_last_day_of_its_own_cuts_the_window_short_where_it_is_known_and_sooner() {
        String until = ",'noLaterThan':";
        rules.tell("frost", Fact.unknown("frost")).window("sooner", "03-01", "03-31", until + "{'day':'03-10'}")
                .window("later", "03-01", "03-31", until + "{'day':'04-10'}")
                .window("unknown", "03-01", "03-31", until + "{'fact':'frost'}");

        assertThat(verdict("sooner", "2027-02-01").window().orElseThrow().last()).isEqualTo("2027-03-10");
        assertThat(verdict("later", "2027-02-01").window().orElseThrow().last()).isEqualTo("2027-03-31");
        assertThat(verdict("unknown", "2027-02-01").window().orElseThrow().last()).isEqualTo("2027-03-31");
    }

    /** The two bushes were planted on different days. */
    @Test
    void a_window_by_an_entry_is_each_plants_own() {
        rules.rule("both", "plant", "'opens':{'entry':'planted'},'closes':{'entry':'planted','plusDays':42}")
                .rule("from", "plant", "'opens':{'entry':'planted'},'closes':{'day':'10-31'}")
                .rule("to", "plant", "'opens':{'day':'11-01'},'closes':{'entry':'planted'}");

        Plan plan = rules.plan(garden(), "2027-01-25");

        assertThat(plan.find("both@bc-1@2027")).isEmpty();
        assertThat(first(plan, "both@bc-2@2027")).isEqualTo("2027-01-20");
        assertThat(first(plan, "from@bc-1@2027")).isEqualTo("2026-11-15");
        assertThat(first(plan, "from@bc-2@2027")).isEqualTo("2027-01-20");
        Plan sooner = rules.plan(garden(), "2027-01-20");
        assertThat(sooner.find("to@bc-1@2027")).isEmpty();
        assertThat(sooner.find("to@bc-2@2027").orElseThrow().window().last()).isEqualTo("2027-01-20");
    }

    private static LocalDate first(Plan plan, String id) { return plan.find(id).orElseThrow().window().first(); }

    /** What was asked is the fact of the window's first day, of today, or of its last day. */
    @ParameterizedTest(name = "today {0}: {1}")
    @CsvSource({"2027-02-28, 2027-03-01", "2027-03-01, 2027-03-01", "2027-03-05, 2027-03-05", "2027-03-31, 2027-03-31",
            "2027-04-01, 2027-03-31"})
    void facts_are_asked_for_today_as_far_as_it_lies_in_the_window(String today, LocalDate asked) {
        rules.tell("day", situation -> Fact.day(situation.day(), "on " + situation.day())).window("dig", "03-01",
                "03-31", ",'when':[{'fact':'day'}]");

        assertThat(verdict("dig", today).reasons().get(0).words()).isEqualTo("on " + asked);
    }

    @Test
    void why_not_tells_every_condition_and_a_plan_stops_at_the_first_that_fails() {
        List<String> asked = new ArrayList<>();
        for (String name : List.of("one", "two", "three")) {
            rules.tell(name, situation -> {
                asked.add(name);
                return Fact.number(1, name);
            });
        }
        rules.window("dig", "03-01", "03-31",
                ",'when':[{'fact':'one','is':1},{'fact':'two','is':2},{'fact':'three','is':1}]");

        Verdict verdict = verdict("dig", "2027-02-01");
        assertThat(verdict.due()).isFalse();
        assertThat(verdict.reasons()).extracting(Reason::words).containsExactly("one", "two; asked for: 2", "three");
        asked.clear();
        assertThat(rules.plan(garden(), "2027-02-01").tasks()).isEmpty();
        assertThat(asked).contains("one", "two").doesNotContain("three");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {'stage':'bud-swel'} | unknown-anchor | names no stage: "bud-swel"
            {'day':'13-01'} | unknown-anchor | names no day: "13-01"
            {'entry':'limd'} | unknown-anchor | names no entry: "limd"
            {'day':'03-01','plusDay':3} | unknown-key |
            {'day':'03-01','of':'hardwood'} | unknown-key |
            """)
    void an_end_that_is_no_day_is_told(String end, String name, String message) {
        Problems problems = read("{'opens':" + end + "}");

        assertThat(problems.list()).extracting(problem -> problem.name()).containsExactly(name);
        if (message != null) { assertThat(problems.list().get(0).message()).isEqualTo(message); }
    }

    @Test
    void an_end_that_is_left_out_is_told_with_an_example() {
        Problems problems = read("{'closes':{'day':'03-01'}}");

        assertThat(problems.list()).singleElement().satisfies(problem -> {
            assertThat(problem.name()).isEqualTo("missing-key");
            assertThat(problem.message()).contains("when the window opens");
            assertThat(problem.remedy()).contains("\"opens\": {");
        });
    }

    @Test
    void a_craft_is_asked_for_what_the_end_names() {
        Problems problems = new Problems();
        WindowEnd end = read("{'opens':{'fact':'from','of':'hardwood'}}", problems);

        assertThat(problems.list()).isEmpty();
        assertThat(end.of()).contains("hardwood");
    }

    private static Problems read(String rule) {
        Problems problems = new Problems();
        read(rule, problems);
        return problems;
    }

    private static WindowEnd read(String rule, Problems problems) {
        String json = rule.replace('\'', '"');
        return WindowEnd.read(Fields.of(JsonReader.readLine(json, "rule", 1, problems).orElseThrow(), problems),
                "opens");
    }
}

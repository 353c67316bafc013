package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Fact;
import org.oldwood.store.Fields;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

class ConditionTest {
    private static Condition condition(String asked) {
        Problems problems = new Problems();
        Condition condition = read(asked, problems);
        assertThat(problems.list()).isEmpty();
        return condition;
    }

    private static Condition read(String asked, Problems problems) {
        String json = ("{'fact':'it'," + asked + "}").replace('\'', '"');
        return Condition.read(Fields.of(JsonReader.readLine(json, "rule", 1, problems).orElseThrow(), problems));
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            'atLeast':3 | 3 | true
            'atLeast':3 | 2.9 | false
            'atMost':3 | 3 | true
            'atMost':3 | 3.1 | false
            'atLeast':2,'atMost':3 | 1 | false
            'atLeast':2,'atMost':3 | 2.5 | true
            'atLeast':2,'atMost':3 | 4 | false
            'is':3 | 3 | true
            'is':3 | 4 | false
            'is':2.5 | 2.5 | true
            'isNot':3 | 3 | false
            'isNot':3 | 4 | true
            'oneOf':['2','4'] | 4 | true
            'oneOf':['2','4'] | 3 | false
            """)
    void a_number_is_held_against_its_bounds_and_values(String asked, double it, boolean holds) {
        assertThat(condition(asked).test(Fact.number(it, "it")).holds()).isEqualTo(holds);
    }

    @Test
    void what_was_asked_for_is_told_unless_the_fact_says_it_all() {
        assertThat(condition("'is':'clay'").test(Fact.text("sand", "it is sand")).words())
                .isEqualTo("it is sand; asked for: clay");
        assertThat(condition("'is':'yes'").test(Fact.text("no", "enough lies there")).words())
                .isEqualTo("enough lies there");
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            'is':'clay' | clay | true
            'is':'clay' | sand | false
            'isNot':'clay' | clay | false
            'isNot':'clay' | sand | true
            'oneOf':['clay','sand'] | sand | true
            'oneOf':['clay','sand'] | loam | false
            """)
    void a_word_is_held_against_those_allowed(String asked, String it, boolean holds) {
        assertThat(condition(asked).test(Fact.text(it, "it")).holds()).isEqualTo(holds);
    }

    @Test
    void a_day_is_held_against_a_day_and_any_day_does_where_none_is_named() {
        Fact day = Fact.day(LocalDate.of(2027, 3, 1), "it");

        assertThat(condition("'is':'2027-03-01'").test(day).holds()).isTrue();
        assertThat(condition("'is':'2027-03-02'").test(day).holds()).isFalse();
        assertThat(condition("'unknown':'no'").test(day).holds()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            'atLeast':3 | 1 | at least 3
            'atMost':0.5 | 1 | at most 0.5
            'atLeast':3,'atMost':4 | 5 | at least 3 and at most 4
            'is':'clay' | sand | clay
            'isNot':'clay' | clay | not clay
            'oneOf':['clay','silt'] | sand | clay or silt
            """)
    void what_does_not_hold_says_what_was_asked_for(String asked, String it, String wanted) {
        Fact fact = Character.isDigit(it.charAt(0)) ? Fact.number(Double.parseDouble(it), "It is so")
                : Fact.text(it, "It is so");

        assertThat(condition(asked).test(fact).words()).isEqualTo("It is so; asked for: " + wanted);
    }

    @Test
    void what_holds_says_the_fact_alone_with_its_sources() {
        Reason reason = condition("'atLeast':3").test(Fact.number(3, "Three stems").from(List.of("source")));

        assertThat(reason.words()).isEqualTo("Three stems");
        assertThat(reason.sources()).containsExactly("source");
    }

    @Test
    void what_is_not_known_counts_as_the_rule_says() {
        Fact unknown = Fact.unknown("Count the stems");

        Reason no = condition("'atLeast':3").test(unknown);
        Reason yes = condition("'atLeast':3,'unknown':'yes'").test(unknown);

        assertThat(no.holds()).isFalse();
        assertThat(no.words()).isEqualTo("Count the stems (not known)");
        assertThat(yes.holds()).isTrue();
        assertThat(yes.words()).isEqualTo("Count the stems (not known, so it does not stop the job)");
    }

    @Test
    void a_key_that_no_condition_has_is_told() {
        Problems problems = new Problems();
        read("'atLeats':3", problems);

        assertThat(problems.list()).extracting(problem -> problem.name()).containsExactly("unknown-key");
    }
}

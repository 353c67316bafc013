package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stems;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/** Counts and cuts that contradict the notes before are asked about, never refused. */
class QuestionsTest {
    private static final String COUNTED = "'entry': 'counted', 'stems': ";
    private static final String PRUNED = "'entry': 'pruned', 'stems': ";

    private static List<Problem> problems(String values) {
        Problems problems = new Problems();
        read(values, problems);
        return problems.list();
    }

    private static Entry entry(String values) {
        Problems problems = new Problems();
        Json json = read(values, problems);
        return EntryReader.read(json, problems).orElseThrow();
    }

    private static Json read(String values, Problems problems) {
        String line = "{'id': 'e1', 'date': '2026-11-20', 'plant': 'bc-1', " + values + "}";
        Json json = JsonReader.readLine(line.replace('\'', '"'), "journal.jsonl", 7, problems).orElseThrow();
        EntryReader.read(json, problems);
        return json;
    }

    private static List<String> asked(String before, String values) {
        Stems known = entry(COUNTED + before).stems();
        return Questions.about("bc-1", known, entry(values));
    }

    @Test
    void more_stems_counted_than_the_notes_leave_are_asked_about() {
        String before = "{'2': 5, '3': 2, '4': 3}";

        assertThat(asked(before, COUNTED + "{'1': 9, '2': 5, '3': 3, '4': 2}"))
                .containsExactly("journal.jsonl:7:1: bc-1 has 3 stems of 3 seasons, but the notes before"
                        + " leave only 2. The new count is used; which is right?");
        assertThat(asked(before, COUNTED + "{'2': 5, '3': 2, '4': 3}")).isEmpty();
    }

    @Test
    void a_class_that_the_notes_do_not_know_is_not_asked_about() {
        assertThat(asked("{'2': 5}", COUNTED + "{'1': 9, '3': 4, '5+': 8}")).isEmpty();
        assertThat(asked("{'2': 5, '4': 1}", COUNTED + "{'2+': 9}")).isEmpty();
    }

    @Test
    void lumped_classes_are_compared_as_a_whole() {
        assertThat(asked("{'2': 5, '3+': 4}", COUNTED + "{'2': 5, '4': 4}")).isEmpty();
        assertThat(asked("{'2': 5, '3+': 4}", COUNTED + "{'2': 5, '4': 5}")).hasSize(1);
        assertThat(asked("{'2': 5, '3': 4, '4': 1}", COUNTED + "{'3+': 5}")).isEmpty();
        assertThat(asked("{'2': 5, '3': 4, '4': 1}", COUNTED + "{'3+': 6}")).singleElement().asString()
                .contains("6 stems of 3+ seasons").contains("only 5");
        assertThat(asked("{'2': 5, '3+': 4}", COUNTED + "{'2': 6, '3+': 4}")).singleElement().asString()
                .contains("6 stems of 2 seasons");
    }

    @Test
    void more_stems_cut_out_than_there_were_are_asked_about() {
        assertThat(asked("{'3': 4, '4+': 2}", PRUNED + "{'3': 5, '4+': 2}"))
                .containsExactly("journal.jsonl:7:1: 5 stems of 3 seasons were cut out of bc-1, but the notes"
                        + " before leave only 4. None of that age is taken to be left; count"
                        + " again, or strike out what is wrong.");
        assertThat(asked("{'3': 4, '4+': 2}", PRUNED + "{'3': 4, '4+': 2}")).isEmpty();
        assertThat(asked("{'3': 4}", PRUNED + "{'4': 2}")).isEmpty();
    }

    @Test
    void parts_are_noted_as_a_number_or_by_age() {
        String stems = COUNTED + "{'1': 5, '2': 4, '4+': 3}, ";
        Entry byAge = entry(stems + "'dead': {'4+': 3}, 'weak': 2");

        assertThat(byAge.stems("dead")).hasToString("4+=3");
        assertThat(byAge.stems("weak").isEmpty()).isTrue();
        assertThat(byAge.count("weak")).hasValue(2);
        assertThat(problems(stems + "'low': {'2': 4}, 'damaged': 12")).isEmpty();
    }

    @Test
    void a_part_is_never_more_than_its_whole() {
        String stems = COUNTED + "{'1': 5, '2': 4, '4+': 3}, ";

        assertThat(problems(stems + "'weak': 13")).singleElement()
                .satisfies(p -> assertThat(p.inWords()).contains("at most 12"));
        assertThat(problems(stems + "'dead': {'2': 5}")).singleElement()
                .satisfies(p -> assertThat(p.inWords()).contains("says 5 of age 2, but 4 were counted"));
        assertThat(problems(stems + "'dead': {'3': 1}")).hasSize(1);
        assertThat(problems(stems + "'dead': {'2+': 1}")).hasSize(1);
        assertThat(problems(stems + "'dead': {'two': 1}")).isNotEmpty();
        assertThat(problems(stems + "'dead': -1")).hasSize(1);
    }

    @Test
    void of_fresh_canes_no_more_are_dead_or_weak_than_there_are() {
        String canes = "'entry': 'canes', 'fresh': 9, ";

        assertThat(problems(canes + "'dead': 4, 'weak': 9")).isEmpty();
        assertThat(problems(canes + "'dead': 10")).hasSize(1);
        assertThat(problems(canes + "'weak': 10")).hasSize(1);
    }
}

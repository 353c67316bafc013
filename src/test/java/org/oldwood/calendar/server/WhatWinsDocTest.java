package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each row of the table of what wins, in docs/calendars.md, has a test of its own. */
class WhatWinsDocTest {
    private static final Map<String, String> TESTS = new LinkedHashMap<>();

    static {
        row("left it | changed it", "a_title_of_the_persons_stays_when_only_the_text_of_the_plan_changes");
        row("changed it, or took it out | left it", "what_the_person_took_out_stays_out");
        row("changed it | changed it too",
                "what_both_changed_is_the_persons_with_the_plans_in_one_line_and_is_told_once");
        row("ticked it off | anything", "a_completed_item_is_left_alone_when_its_task_moves");
        row("began it, or called it off | still open",
                "work_that_was_begun_or_called_off_stays_so_when_the_plan_moves");
        row("added, answered or took out a reminder | anything", "an_alarm_taken_out_stays_out");
        row("left it | an amount changed by less than a tenth, days by less than their ±",
                "an_amount_that_drifts_by_less_than_a_tenth_changes_nothing");
        row("deleted it | still planned",
                "what_was_deleted_there_stays_away_is_told_once_and_comes_back_when_asked_for");
        row("left it | withdrawn or skipped", "a_withdrawn_task_is_deleted_but_never_one_that_was_done");
        row("wrote in it, moved or began it | withdrawn or skipped",
                "what_a_person_wrote_in_stays_when_its_task_is_withdrawn_and_is_planned_again_as_theirs");
        row("wrote in an event, or moved it | now tells of it in another event",
                "an_event_a_person_wrote_in_stays_one_of_its_own_where_another_would_tell_of_the_work");
        row("ticked it off | withdrawn, or its plant grubbed",
                "done_work_stays_when_its_plant_is_grubbed_later_and_days_within_their_surety_change_nothing");
        row("properties and entries of others | anything", "strangers_are_neither_read_nor_touched");
    }

    private static void row(String cells, String test) { TESTS.put(cells, test); }

    @Test
    void each_row_has_its_test() throws IOException {
        List<String> rows = Files.readAllLines(Path.of("docs/calendars.md")).stream()
                .dropWhile(line -> !line.startsWith("| you on the server")).skip(2)
                .takeWhile(line -> line.startsWith("|")).map(line -> line.split(" \\| ", -1))
                .map(cells -> cells[0].substring(2) + " | " + cells[1]).toList();
        List<String> tests = Stream.of(KeepsWhatPeopleWroteTest.class, PublishTest.class)
                .flatMap(tested -> Stream.of(tested.getDeclaredMethods()))
                .filter(method -> method.isAnnotationPresent(Test.class)).map(java.lang.reflect.Method::getName)
                .toList();

        assertThat(TESTS.keySet()).containsExactlyElementsOf(rows);
        assertThat(tests).containsAll(TESTS.values());
    }
}

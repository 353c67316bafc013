package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.calendar.Plans;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;

/** The table of what wins in docs/calendars.md, row by row, and what a server may do to us. */
class KeepsWhatPeopleWroteTest {
    private static final Item CUT = item("Cut cut", "Take out 4 stems.", "2027-01-10", "2027-02-05");
    private static final Uids UIDS = new Uids(Plans.GARDEN, Map.of());
    private static final String TODO = LoopbackServer.COLLECTION + UIDS.todo("cut") + ".ics";
    private static final String EVENT = LoopbackServer.COLLECTION + UIDS.event("cut") + ".ics";

    @TempDir
    Path folder;

    private LoopbackServer server;

    @BeforeEach
    void start() throws IOException {
        server = new LoopbackServer();
        publish(0, CUT);
    }

    @AfterEach
    void stop() { server.close(); }

    @Test
    void a_title_of_the_persons_stays_when_only_the_text_of_the_plan_changes() throws IOException {
        edit(TODO, "SUMMARY:Cut cut", "SUMMARY:Cut with Ada");

        Publish.Result result = publish(1, item("Cut cut", "Take out 7 stems.", "2027-01-10", "2027-02-05"));

        assertThat(there(TODO)).contains("SUMMARY:Cut with Ada", "Take out 7 stems").doesNotContain("The plan says");
        assertThat(result.notices()).isEmpty();
    }

    @Test
    void words_of_the_persons_stay_when_only_the_days_of_the_plan_move() throws IOException {
        edit(TODO, "Take out 4 stems.", "Take out 4 stems.\\nAda has the key.");

        publish(1, item("Cut cut", "Take out 4 stems.", "2027-01-20", "2027-02-09"));

        assertThat(there(TODO)).contains("Ada has the key.", "DUE;VALUE=DATE:20270209", "SEQUENCE:1");
    }

    @Test
    void what_both_changed_is_the_persons_with_the_plans_in_one_line_and_is_told_once() throws IOException {
        edit(TODO, "SUMMARY:Cut cut", "SUMMARY:Cut with Ada");
        Item renamed = item("Cut hard", "Take out 4 stems.", "2027-01-10", "2027-02-05");

        Publish.Result result = publish(1, renamed);
        Publish.Result again = publish(2, renamed);
        publish(3, item("Cut hard", "Take out 9 stems.", "2027-01-10", "2027-02-05"));

        assertThat(result.notices()).singleElement().asString().contains("stay", "Cut hard");
        assertThat(again.notices()).isEmpty();
        assertThat(again.changed()).isEmpty();
        assertThat(there(TODO)).contains("SUMMARY:Cut with Ada", "Take out 9 stems")
                .containsOnlyOnce("[The plan says: words of the title: Cut hard]");
    }

    @Test
    void days_that_the_person_chose_stay_and_the_plans_are_told() throws IOException {
        edit(EVENT, "DTSTART;VALUE=DATE:20270110", "DTSTART;VALUE=DATE:20270116");

        Publish.Result result = publish(1, item("Cut cut", "Take out 4 stems.", "2027-01-20", "2027-02-05"));

        assertThat(there(EVENT)).contains("DTSTART;VALUE=DATE:20270116", "[The plan says: dates: ");
        assertThat(there(TODO)).contains("DTSTART;VALUE=DATE:20270120");
        assertThat(result.notices()).singleElement().asString().contains("dates were changed on the server");
    }

    @Test
    void what_the_person_took_out_stays_out() throws IOException {
        edit(TODO, "LOCATION:Row A\r\n", "");

        publish(1, item("Cut hard", "Take out 4 stems.", "2027-01-10", "2027-02-05"));

        assertThat(there(TODO)).doesNotContain("LOCATION:Row").contains("SUMMARY:Cut hard");
    }

    @Test
    void an_alarm_taken_out_stays_out() throws IOException {
        server.put(TODO, server.objects.get(TODO).replaceAll("(?s)BEGIN:VALARM.*END:VALARM\r\n", ""));

        publish(1, item("Cut cut", "Take out 4 stems.", "2027-01-20", "2027-02-09"));

        assertThat(there(TODO)).doesNotContain("VALARM").contains("DUE;VALUE=DATE:20270209");
    }

    @Test
    void an_amount_that_drifts_by_less_than_a_tenth_changes_nothing() throws IOException {
        Item before = item("Feed", "Give 412 g of a feed.", "2027-03-01", "2027-03-14");
        publish(1, before);
        Map<String, String> objects = Map.copyOf(server.objects);

        Publish.Result little = publish(2, item("Feed", "Give 425 g of a feed.", "2027-03-01", "2027-03-14"));
        assertThat(server.objects).isEqualTo(objects);
        assertThat(little.changed()).isEmpty();

        publish(3, item("Feed", "Give 460 g of a feed.", "2027-03-01", "2027-03-14"));
        assertThat(there(TODO)).contains("Give 460 g");
    }

    @Test
    void what_was_deleted_there_stays_away_is_told_once_and_comes_back_when_asked_for() throws IOException {
        server.objects.remove(TODO);

        Publish.Result first = publish(1, CUT);
        Publish.Result second = publish(2, item("Cut hard", "Take out 4 stems.", "2027-01-10", "2027-02-05"));
        assertThat(server.objects).doesNotContainKey(TODO).containsKey(EVENT);
        assertThat(first.notices()).singleElement().asString().contains("1 entry was deleted", "--restore");
        assertThat(second.notices()).isEmpty();

        new Publish(Plans.garden(folder), Layout.usual(), Plans.TODAY.plusDays(3), false, true).to(session(),
                server.address(), server.address(), List.of(CUT));
        assertThat(server.objects).containsKey(TODO);
    }

    @Test
    void a_server_that_never_agrees_is_given_up() throws IOException {
        server.beforePut = path -> {
            if (path.equals(TODO)) { server.put(TODO, server.objects.get(TODO)); }
        };
        int before = server.log.size();

        Publish.Result result = publish(1, item("Cut hard", "Take out 4 stems.", "2027-01-10", "2027-02-05"));

        assertThat(result.refused()).singleElement().asString().contains("HTTP 412");
        assertThat(server.log.size() - before).isLessThan(20);
    }

    @Test
    void a_run_that_breaks_in_the_middle_says_what_it_wrote() throws IOException {
        Item feed = Plans.item("feed", "2027-03-01", "2027-03-14");
        Session few = Session.with(Optional.empty(), false, Optional.empty(), new Progress(text -> {
        }), new Session.Limits(Duration.ofSeconds(5), 1 << 20, Duration.ofSeconds(60), 5));

        Publish.Result result = new Publish(Plans.garden(folder), Layout.usual(), Plans.TODAY, false, false).to(few,
                server.address(), server.address(), List.of(CUT, feed, Plans.item("net", "2027-05-01", "2027-05-14")));
        Publish.Result rest = publish(0, CUT, feed, Plans.item("net", "2027-05-01", "2027-05-14"));

        assertThat(result.created()).hasSize(2);
        assertThat(result.refused()).anyMatch(said -> said.startsWith("Broken off") && said.contains("5 requests"));
        assertThat(rest.created()).hasSize(2);
        assertThat(server.objects).hasSize(6);
    }

    @Test
    void an_object_that_a_client_made_under_another_name_is_read_back() throws IOException {
        edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:COMPLETED\r\nCOMPLETED:20270112T153000Z");
        server.put(LoopbackServer.COLLECTION + "import-1.ics", server.objects.remove(TODO));
        ReadBack back = new ReadBack(Plans.garden(folder), List.of(CUT), Layout.usual(), LocalDate.of(2027, 2, 1));

        for (String object : session().fetch(server.address(), Plans.garden(folder), List.of(CUT))) {
            back.read(object, "server");
        }

        assertThat(back.result().answers()).singleElement()
                .satisfies(answer -> assertThat(answer.day()).isEqualTo("2027-01-12"));
    }

    @Test
    void nothing_is_changed_or_removed_that_has_no_version() throws IOException {
        server.hasTags = false;
        Map<String, String> objects = Map.copyOf(server.objects);
        server.log.clear();

        Publish.Result changed = publish(1, item("Cut hard", "Take out 4 stems.", "2027-01-10", "2027-02-05"));
        Publish.Result withdrawn = publish(1, Plans.item("net", "2027-05-01", "2027-05-14"));

        assertThat(changed.refused()).hasSize(2)
                .allMatch(said -> said.contains("was not changed, since the server names no version"));
        assertThat(withdrawn.refused()).hasSize(2).allMatch(said -> said.contains("was not removed"));
        assertThat(server.objects).containsAllEntriesOf(objects);
        assertThat(server.log).noneMatch(line -> line.equals("PUT " + TODO) || line.startsWith("DELETE"));
    }

    @Test
    void work_that_was_begun_or_called_off_stays_so_when_the_plan_moves() throws IOException {
        edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:IN-PROCESS\r\nPERCENT-COMPLETE:30");
        edit(EVENT, "STATUS:CONFIRMED", "STATUS:CANCELLED");

        publish(1, item("Cut hard", "Take out 4 stems.", "2027-01-20", "2027-02-09"));

        assertThat(there(TODO)).contains("STATUS:IN-PROCESS", "PERCENT-COMPLETE:30", "SUMMARY:Cut hard");
        assertThat(there(EVENT)).contains("STATUS:CANCELLED", "SUMMARY:Cut hard");
    }

    @Test
    void what_a_person_wrote_in_stays_when_its_task_is_withdrawn_and_is_planned_again_as_theirs() throws IOException {
        edit(TODO, "SUMMARY:Cut cut", "SUMMARY:Cut with Ada");
        Item other = Plans.item("net", "2027-05-01", "2027-05-14");

        Publish.Result withdrawn = publish(1, other);
        String left = there(TODO);
        Publish.Result again = publish(2, other);
        publish(3, CUT, other);

        assertThat(left).contains("SUMMARY:Cut with Ada", "[The plan says: not needed any more]");
        assertThat(server.objects).containsKeys(TODO, EVENT);
        assertThat(withdrawn.removed()).hasSize(1);
        assertThat(withdrawn.notices()).singleElement().asString().contains("does not need it any more");
        assertThat(again.notices()).isEmpty();
        assertThat(there(TODO)).contains("SUMMARY:Cut with Ada").doesNotContain("The plan says");
    }

    @Test
    void an_event_a_person_wrote_in_stays_one_of_its_own_where_another_would_tell_of_the_work() throws IOException {
        Item[] full = Stream.of("net", "feed", "mulch").map(name -> Plans.item(name, "2027-03-01", "2027-03-01"))
                .toArray(Item[]::new);
        edit(EVENT, "DESCRIPTION:", "DESCRIPTION:With Ada. ");
        Item moved = item("Cut late", "Take out 3 stems.", "2027-03-01", "2027-03-01");
        publish(1, CUT, full[0], full[1], full[2]);

        publish(2, moved, full[0], full[1], full[2]);

        assertThat(there(EVENT))
                .contains("SUMMARY:Cut late", "With Ada.", "DTSTART;VALUE=DATE:20270301", "STATUS:CONFIRMED")
                .doesNotContain("not needed");
    }

    @Test
    void an_amount_that_drifted_is_not_taken_for_the_persons_words_later() throws IOException {
        publish(1, item("Feed", "Give 412 g of a feed.", "2027-03-01", "2027-03-14"));
        publish(2, item("Feed well", "Give 425 g of a feed.", "2027-03-01", "2027-03-14"));
        publish(3, item("Feed well", "Give 900 g of a feed.", "2027-03-01", "2027-03-14"));

        assertThat(there(TODO)).contains("Give 900 g").doesNotContain("The plan says");
    }

    @Test
    void done_work_stays_when_its_plant_is_grubbed_later_and_days_within_their_surety_change_nothing()
            throws IOException {
        ModelPlan plan = new ModelPlan(List.of("feed"), new java.util.Random(7));
        publish(1, plan);
        Map<String, String> objects = Map.copyOf(server.objects);

        plan.move("feed", ModelPlan.PLUS_MINUS - 1);
        assertThat(publish(2, plan).changed()).isEmpty();
        assertThat(server.objects).isEqualTo(objects);
        plan.move("feed", ModelPlan.PLUS_MINUS);
        assertThat(publish(3, plan).changed()).hasSize(2);

        plan.done("feed", Plans.TODAY);
        publish(4, plan);
        plan.grub("feed");
        Publish.Result grubbed = publish(5, plan.all(), plan.came());

        assertThat(grubbed.removed()).isEmpty();
        assertThat(there(LoopbackServer.COLLECTION + UIDS.todo("feed") + ".ics")).contains("STATUS:COMPLETED");
    }

    @Test
    void a_memory_that_is_lost_is_told_once() throws IOException {
        Files.delete(folder.resolve("calendar-state.jsonl"));

        assertThat(publish(1, CUT).notices()).singleElement().asString().contains("calendar-state.jsonl, is not there",
                "may still stand on the server");
        assertThat(publish(2, CUT).notices()).isEmpty();
    }

    private static Item item(String title, String text, String first, String last) {
        LocalDate start = LocalDate.parse(first);
        return Plans.item("cut", new Item.Words(title, text, "pruning", "Row A"),
                new Item.Days(start, LocalDate.parse(last), start));
    }

    private Publish.Result publish(int day, Item... plan) throws IOException { return publish(day, List.of(plan)); }

    private Publish.Result publish(int day, ModelPlan plan) throws IOException { return publish(day, plan.all()); }

    private Publish.Result publish(int day, List<Item> plan) throws IOException { return publish(day, plan, Map.of()); }

    private Publish.Result publish(int day, List<Item> plan, Map<String, Item.Progress> came) throws IOException {
        Export.Garden garden = new Export.Garden(Plans.GARDEN, Plans.garden(folder).name(), Plans.garden(folder).zone(),
                folder, came);
        return new Publish(garden, Layout.usual(), Plans.TODAY.plusDays(day), false, false).to(session(),
                server.address(), server.address(), plan);
    }

    private static Session session() throws IOException {
        return Session.with(Optional.of(new Login("ada", "secret")), false, Optional.empty(), text -> {
        });
    }

    /** Unfolded. */
    private String there(String path) { return server.objects.get(path).replace("\r\n ", ""); }

    private void edit(String path, String from, String to) {
        assertThat(there(path)).contains(from);
        server.put(path, there(path).replace(from, to));
    }
}

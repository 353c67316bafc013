package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.calendar.Plans;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;

/** RFC 4791: 4.1 (objects), 5.2.3 (kinds), 5.3.2 (conditions), 7.9 (multiget). */
class PublishTest {
    private static final Item CUT = Plans.item("cut", "2027-01-10", "2027-02-05");
    private static final Item FEED = Plans.item("feed", "2027-03-01", "2027-03-14");
    private static final Uids UIDS = new Uids(Plans.GARDEN, Map.of());
    private static final String TODO = path(UIDS.todo("cut"));
    private static final String EVENT = path(UIDS.event("cut"));

    @TempDir
    Path folder;

    private LoopbackServer server;

    @BeforeEach
    void start() throws IOException { server = new LoopbackServer(); }

    @AfterEach
    void stop() { server.close(); }

    @Test
    void makes_one_object_for_each_uid_and_then_nothing_more() throws IOException {
        Publish.Result first = publish(Plans.TODAY, CUT, FEED);
        Map<String, String> objects = new TreeMap<>(server.objects);
        Publish.Result again = publish(Plans.TODAY.plusDays(4), CUT, FEED);

        assertThat(first.created()).hasSize(4);
        assertThat(first.refused()).isEmpty();
        assertThat(objects).hasSize(4).containsKeys(TODO, EVENT);
        assertThat(objects.get(TODO)).contains("BEGIN:VTODO").doesNotContain("METHOD", "VEVENT");
        assertThat(again.unchanged()).isEqualTo(4);
        assertThat(again.changed()).isEmpty();
        assertThat(server.objects).isEqualTo(objects);
    }

    @Test
    void a_completed_item_is_left_alone_when_its_task_moves() throws IOException {
        publish(Plans.TODAY, CUT);
        edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:COMPLETED\r\nCOMPLETED:20270112T153000Z\r\nPERCENT-COMPLETE:100\r\n"
                + "X-CLIENT;P=\"a;b\":kept\r\nPRIORITY:3");
        edit(TODO, "SEQUENCE:0", "SEQUENCE:7");

        Publish.Result result = publish(Plans.TODAY.plusDays(1), Plans.item("cut", "2027-01-20", "2027-02-09"));

        assertThat(server.objects.get(TODO)).contains("STATUS:COMPLETED", "COMPLETED:20270112T153000Z",
                "X-CLIENT;P=\"a;b\":kept", "PRIORITY:3", "DUE;VALUE=DATE:20270205", "SEQUENCE:7")
                .doesNotContain("NEEDS-ACTION");
        assertThat(result.notices()).anyMatch(notice -> notice.contains("ticked off on the server"));
    }

    @Test
    void what_a_client_changed_stays_while_the_plan_says_nothing_new() throws IOException {
        publish(Plans.TODAY, CUT);
        edit(TODO, "SUMMARY:Cut cut", "SUMMARY:Cut with Ada");

        Publish.Result result = publish(Plans.TODAY.plusDays(1), CUT);

        assertThat(result.unchanged()).isEqualTo(2);
        assertThat(server.objects.get(TODO)).contains("Cut with Ada");
    }

    @Test
    void an_alarm_that_was_answered_stays_answered_and_moves_with_the_days() throws IOException {
        publish(Plans.TODAY, CUT);
        edit(EVENT, "END:VALARM", "ACKNOWLEDGED:20270110T080100Z\r\nEND:VALARM");

        publish(Plans.TODAY.plusDays(1), Plans.item("cut", "2027-01-10", "2027-02-05", "Renamed"));
        String renamed = server.objects.get(EVENT);
        publish(Plans.TODAY.plusDays(2), Plans.item("cut", "2027-01-12", "2027-02-05", "Renamed"));

        assertThat(renamed).contains("ACKNOWLEDGED", "SUMMARY:Renamed");
        assertThat(server.objects.get(EVENT)).contains("ACKNOWLEDGED", "DTSTART;VALUE=DATE:20270112");
    }

    @Test
    void a_write_of_another_client_in_between_is_read_and_merged() throws IOException {
        publish(Plans.TODAY, CUT);
        boolean[] done = {false};
        server.beforePut = path -> {
            if (path.equals(TODO) && !done[0]) {
                done[0] = true;
                edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:COMPLETED");
            }
        };

        Publish.Result result = publish(Plans.TODAY.plusDays(1), Plans.item("cut", "2027-01-20", "2027-02-09"));

        assertThat(result.refused()).isEmpty();
        assertThat(server.objects.get(TODO)).contains("STATUS:COMPLETED", "DUE;VALUE=DATE:20270205");
    }

    @Test
    void an_object_under_another_name_is_found_by_its_uid() throws IOException {
        publish(Plans.TODAY, CUT);
        server.put(path("import-1"), server.objects.remove(TODO));

        Publish.Result result = publish(Plans.TODAY.plusDays(1), Plans.item("cut", "2027-01-20", "2027-02-09"));

        assertThat(result.refused()).isEmpty();
        assertThat(server.objects).hasSize(2).containsKey(path("import-1"));
        assertThat(server.objects.get(path("import-1"))).contains("DUE;VALUE=DATE:20270209");
    }

    @Test
    void a_withdrawn_task_is_deleted_but_never_one_that_was_done() throws IOException {
        publish(Plans.TODAY, CUT, FEED);
        edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:COMPLETED");

        Publish.Result result = publish(Plans.TODAY.plusDays(1), FEED);

        assertThat(result.removed()).hasSize(1);
        assertThat(server.objects).hasSize(3).containsKey(TODO).doesNotContainKey(EVENT);
    }

    @Test
    void strangers_are_neither_read_nor_touched() throws IOException {
        String theirs = "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x\r\nEND:VEVENT\r\nEND:VCALENDAR";
        server.put(path("x"), theirs);

        publish(Plans.TODAY, CUT);
        publish(Plans.TODAY.plusDays(1), FEED);

        assertThat(server.objects).containsEntry(path("x"), theirs);
        assertThat(server.log).noneMatch(line -> line.endsWith("/x.ics"));
    }

    @Test
    void a_trial_writes_nothing_anywhere() throws IOException {
        Publish.Result result = new Publish(Plans.garden(folder), Layout.usual(), Plans.TODAY, true, false)
                .to(session(), server.address(), server.address(), List.of(CUT));

        assertThat(result.created()).hasSize(2);
        assertThat(server.objects).isEmpty();
        assertThat(Files.exists(folder.resolve(CalendarState.FILE))).isFalse();
    }

    @Test
    void a_collection_for_events_alone_gets_events_alone() throws IOException {
        server.components = "<C:comp name=\"VEVENT\"/>";

        Publish.Result result = publish(Plans.TODAY, CUT);

        assertThat(server.objects).containsOnlyKeys(EVENT);
        assertThat(result.notices()).anyMatch(notice -> notice.contains("takes no to-dos"));
    }

    @Test
    void what_was_ticked_off_there_can_be_read_back() throws IOException {
        publish(Plans.TODAY, CUT, FEED);
        edit(TODO, "STATUS:NEEDS-ACTION", "STATUS:COMPLETED\r\nCOMPLETED:20270112T153000Z");
        ReadBack back = new ReadBack(Plans.garden(folder), List.of(CUT, FEED), Layout.usual(),
                LocalDate.of(2027, 2, 1));

        for (String object : session().fetch(server.address(), Plans.garden(folder), List.of(CUT, FEED))) {
            back.read(object, "server");
        }

        assertThat(back.result().answers()).singleElement()
                .satisfies(answer -> assertThat(answer.day()).isEqualTo("2027-01-12"));
    }

    private Publish.Result publish(LocalDate today, Item... plan) throws IOException {
        return new Publish(Plans.garden(folder), Layout.usual(), today, false, false).to(session(), server.address(),
                server.address(), List.of(plan));
    }

    private static Session session() throws IOException {
        return Session.with(Optional.of(new Login("ada", "secret")), false, Optional.empty(), text -> {
        });
    }

    private void edit(String path, String from, String to) {
        assertThat(server.objects.get(path)).contains(from);
        server.put(path, server.objects.get(path).replace(from, to));
    }

    private static String path(String uid) { return LoopbackServer.COLLECTION + uid + ".ics"; }
}

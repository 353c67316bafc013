package org.oldwood.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.Main;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.command.Surroundings;
import org.oldwood.page.Desk;

class GardenDeskTest {
    @TempDir
    Path folder;

    private GardenDesk desk;

    @BeforeEach
    void start() { desk = started(folder, "blackcurrant=2", LocalDate.of(2026, 12, 5)); }

    private static GardenDesk started(Path folder, String plants, LocalDate today) {
        Surroundings around = new Surroundings(folder, Map.of(), new ByteArrayInputStream(new byte[0]),
                new ByteArrayOutputStream(), new ByteArrayOutputStream(), Surroundings.Hidden.NOBODY);
        int code = Main.run(List.of("start", ".", "--name=Slope", "--at=52.1,-2.3", "--plants=" + plants,
                "--planted=2021", "--today=" + today), around);
        assertThat(code).isZero();
        WalkCommand command = new WalkCommand();
        command.attach(around, new Out(around.out()), new Out(around.err()));
        command.givenToday = Optional.of(today);
        return new GardenDesk(command);
    }

    /** In the middle of September canes are tied in; they are cut out from the 17th on, and carried away after that. */
    @Test
    void what_is_not_due_on_the_day_of_its_round_is_not_to_be_ticked_with_it(@TempDir Path canes) throws IOException {
        GardenDesk blackberries = started(canes, "semi-erect-blackberry=2", LocalDate.of(2027, 9, 10));

        assertThat(((JsonNode) blackberries.view()).get("rounds").findValuesAsText("task"))
                .anyMatch(task -> task.startsWith("tie-in-blackberry@"))
                .noneMatch(task -> task.startsWith("canes-out-blackberry@"))
                .noneMatch(task -> task.startsWith("clear-canes-blackberry@"));
        String sheet = canes.resolve("sheet.html").toString();
        assertThat(Cli.in(canes).run("sheet", "--out=" + sheet, "--today=2027-09-10").exit()).isZero();
        assertThat(Files.readString(Path.of(sheet)))
                .contains("Carry the cut canes of semi-erect blackberries away, from 30 Sep")
                .doesNotContain("Tie in the new canes of semi-erect blackberries, from");
    }

    private JsonNode view() throws IOException { return (JsonNode) desk.view(); }

    private long lines() throws IOException { return Files.readAllLines(folder.resolve("journal.jsonl")).size(); }

    @Test
    void a_count_from_the_phone_draws_the_bush_and_plans_its_cut() throws IOException {
        Desk.Reply reply = desk.note("k1", List.of(Map.of("date", "2026-12-05", "entry", "counted", "plant",
                "blackcurrant-1", "stems", "1=5,2=4,3=4,4+=3")));
        JsonNode view = view();

        assertThat(reply.accepted()).as(reply.said().toString()).isTrue();
        assertThat(view.at("/bushes/0/wood").findValuesAsText("total")).containsExactly("5", "4", "4", "3");
        assertThat(view.get("noted").findValuesAsText("kind")).contains("counted");
    }

    @Test
    void sent_twice_it_is_noted_once_and_a_wrong_note_not_at_all() throws IOException {
        Map<String, String> picked = Map.of("date", "2026-12-01", "entry", "picked", "plant", "blackcurrant-1", "kg",
                "1.2");
        desk.note("k1", List.of(picked));
        long before = lines();

        Desk.Reply again = desk.note("k1", List.of(picked));
        Desk.Reply wrong = desk.note("k2",
                List.of(Map.of("entry", "picked", "date", "2026-12-01", "plant", "blackcurant-1", "kg", "1")));

        assertThat(again.accepted()).isTrue();
        assertThat(wrong.accepted()).isFalse();
        assertThat(String.join(" ", wrong.said())).contains("blackcurant-1");
        assertThat(lines()).isEqualTo(before);
    }

    /** It is kept, since one tap takes it back; what is asked about it reaches the phone, and nothing else does. */
    @Test
    void a_stage_that_cannot_be_is_asked_about() throws IOException {
        Desk.Reply reply = desk.note("k1",
                List.of(Map.of("date", "2026-12-05", "entry", "seen", "plant", "blackcurrant-1", "stage", "ripe")));
        Desk.Reply plain = desk.note("k2",
                List.of(Map.of("date", "2026-07-05", "entry", "picked", "plant", "blackcurrant-1", "kg", "1")));

        assertThat(reply.accepted()).isTrue();
        assertThat(String.join(" ", reply.said())).startsWith("ripe for picking of blackcurrants cannot well be seen")
                .endsWith("moves no date.");
        assertThat(plain.said()).isEmpty();
    }

    /** Of a tick that books what was done the receipt is another, and no question either. */
    @Test
    void a_tick_asks_nothing() throws IOException {
        desk.note("k1",
                List.of(Map.of("date", "2026-12-05", "entry", "soil-test", "bed", "blackcurrant-bed", "ph", "5.2")));
        Desk.Reply tick = desk.note("k2",
                List.of(Map.of("date", "2026-12-05", "entry", "done", "task", "lime@blackcurrant-bed@2027")));

        assertThat(tick.accepted()).as(tick.said().toString()).isTrue();
        assertThat(lines()).isEqualTo(5);
        assertThat(tick.said()).isEmpty();
    }

    @Test
    void days_stand_in_the_order_that_the_garden_wants() throws IOException {
        boolean before = view().get("monthFirst").asBoolean();
        Path garden = folder.resolve("garden.json");
        Files.writeString(garden,
                Files.readString(garden).replaceFirst("\\{", "{\"wishes\": {\"dates\": \"month-first\"}, "));

        assertThat(before).isFalse();
        assertThat(view().get("monthFirst").asBoolean()).isTrue();
    }

    @Test
    void what_was_noted_can_be_taken_back() throws IOException {
        desk.note("k1",
                List.of(Map.of("date", "2026-12-05", "entry", "counted", "plant", "blackcurrant-1", "stems", "1=5")));
        String entry = view().at("/noted/0/id").asText();

        Desk.Reply back = desk.takeBack(entry, false);

        assertThat(back.accepted()).as(back.said().toString()).isTrue();
        assertThat(view().at("/bushes/0/wood")).isEmpty();
    }

    /** All of a round in one go: one button takes it back, another brings it back; what a tick booked goes along. */
    @Test
    void a_round_noted_at_once_is_taken_back_and_brought_back_whole() throws IOException {
        JsonNode before = view().get("rounds");
        List<String> tasks = before.get(0).get("lines").findValuesAsText("task");
        assertThat(tasks).hasSizeGreaterThan(1);
        desk.note("k1",
                tasks.stream().map(task -> Map.of("date", "2026-12-05", "entry", "done", "task", task)).toList());
        JsonNode done = view();
        assertThat(done.get("noted").findValuesAsText("act")).hasSize(tasks.size())
                .containsOnly(done.at("/noted/0/act").asText());

        assertThat(desk.takeBack(done.at("/noted/0/id").asText(), true).accepted()).isTrue();

        JsonNode back = view().get("noted");
        assertThat(view().get("rounds")).isEqualTo(before);
        assertThat(back.findValuesAsText("kind")).hasSize(tasks.size()).containsOnly("withdrawn");
        assertThat(back.get(0).get("words").asText()).startsWith("done: ").doesNotContain("@", "wrong");
        assertThat(desk.takeBack(back.get(0).get("id").asText(), true).accepted()).isTrue();
        assertThat(view().get("rounds")).isEqualTo(done.get("rounds"));
        assertThat(view().get("noted")).isEqualTo(done.get("noted"));
    }

    @Test
    void what_is_noted_is_told_in_words_with_what_was_booked() throws IOException {
        desk.note("k1",
                List.of(Map.of("date", "2026-12-01", "entry", "soil-test", "bed", "blackcurrant-bed", "ph", "5.2")));
        desk.note("k2", List.of(Map.of("date", "2026-12-05", "entry", "done", "task", "lime@blackcurrant-bed@2027")));

        assertThat(view().get("noted").findValuesAsText("words")).containsExactly("Lime blackcurrant-bed");
        assertThat(view().at("/noted/0/booked/0").asText()).startsWith("limed: bed blackcurrant-bed, material ")
                .doesNotContain("tick", "planned");
    }

    @Test
    void a_task_that_no_plan_has_any_more_is_told_by_its_title() throws IOException {
        desk.note("k1", List.of(Map.of("date", "2026-12-05", "entry", "done", "task",
                "net-on@blackcurrant-bed.blackcurrant.stool@2025")));

        assertThat(view().get("noted").findValuesAsText("words"))
                .containsExactly("Net blackcurrants before the fruit colours");
    }

    @Test
    void what_is_half_done_says_so() throws IOException {
        String task = view().at("/rounds/0/lines/0/task").asText();
        assertThat(view().at("/rounds/0/lines/0/begun").isMissingNode()).isTrue();

        desk.note("k1", List.of(Map.of("date", "2026-12-05", "entry", "begun", "task", task, "percent", "50")));

        assertThat(view().at("/rounds/0/lines/0/begun").asInt()).isEqualTo(50);
    }

    @Test
    void what_is_put_off_is_not_among_the_next_days_work() throws IOException {
        String task = view().at("/rounds/0/lines/0/task").asText();

        Desk.Reply later = desk.note("k1", List.of(Map.of("date", "2026-12-05", "entry", "later", "task", task)));

        assertThat(later.accepted()).as(later.said().toString()).isTrue();
        assertThat(view().get("rounds").findValuesAsText("task")).isNotEmpty().doesNotContain(task);
    }

    @Test
    void each_bush_has_a_label_with_its_id() throws IOException {
        Cli.Result result = Cli.in(folder).run("walk", "--labels", "labels.html", "--today=2026-12-05");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(Files.readString(folder.resolve("labels.html")))
                .contains("code of blackcurrant-1", "code of blackcurrant-2", QrText.label("blackcurrant-2", "").code())
                .doesNotContain("http://", "<script");
    }

    @Test
    void words_with_commas_and_quotes_stay_whole_and_change_the_stamp() throws IOException {
        String before = desk.stamp();
        desk.note("k1", List.of(Map.of("entry", "picked", "plant", "blackcurrant-1", "kg", "1", "note", "a \"b\", c")));

        assertThat(Files.readString(folder.resolve("journal.jsonl"))).contains("a \\\"b\\\", c");
        assertThat(desk.stamp()).isNotEqualTo(before);
    }

    @Test
    void a_saved_table_of_kept_notes_adds_what_did_not_arrive_and_nothing_else() throws IOException {
        desk.note("k1", List.of(Map.of("entry", "picked", "date", "2026-12-01", "plant", "blackcurrant-1", "kg", "1")));
        long before = lines();
        Files.writeString(folder.resolve("notes.csv"), """
                "once","entry","date","plant","kg","stems"
                "k1","picked","2026-12-01","blackcurrant-1","1",""
                "k2","counted","2026-12-01","blackcurrant-2","","1=5,2=4"
                """);

        for (int time = 0; time < 2; time++) {
            Cli.Result result = Cli.in(folder).run("note", "--csv", "notes.csv", "--today=2026-12-05");
            assertThat(result.exit()).as(result.err()).isZero();
        }
        assertThat(lines()).isEqualTo(before + 1);
    }

    @Test
    void the_page_is_no_json() {
        Cli.Result result = Cli.in(folder).run("walk", "--json", "--today=2026-12-05");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("oldwood now --json");
    }
}

package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** A tick books what the task stands for. */
class TickingTest extends Slope {
    @Test
    void a_feed_ticked_off_is_in_the_ledger_with_its_grams() throws IOException {
        ok("note", "done", FEED, MARCH);

        assertThat(journal("fed")).isNotEmpty().allMatch(line -> line.contains("\"planned\":true"));
        for (String fed : journal("fed")) {
            assertThat(fed).contains("\"tick\":\"" + id(journal("done").get(0)) + "\"");
        }
        assertThat(ok("ledger", "blackcurrant-bed", MARCH)).contains("as planned, not measured");
        assertThat(ok("tasks", "--each", "--finished", MARCH)).contains("(done) Feed blackcurrants: first dressing");
    }

    /** In February the plan keeps the bed for the spring feed; who limed all the same limed what was planned in December. */
    @Test
    void lime_that_has_given_way_is_booked_where_it_was_given_after_all() throws IOException {
        String lime = "lime@blackcurrant-bed@2027";
        ok("note", "soil-test", "--bed=blackcurrant-bed", "--ph=5.5", "--date=2026-11-25", "--today=2026-12-01");
        assertThat(ok("tasks", "--each", "--today=2026-12-01")).contains(lime);
        Cli.Result february = run("tasks", "--each", "--today=2027-02-12");
        assertThat(february.out()).doesNotContain(lime);
        assertThat(february.err()).contains("Lime blackcurrant-bed gives way");

        ok("note", "done", lime, "--today=2027-02-12");
        assertThat(journal("limed")).singleElement().asString().contains("ground-limestone", "\"planned\":true");
        assertThat(run("tasks", "--today=2027-02-13").err()).contains("limed ground-limestone");
    }

    @Test
    void lime_that_was_left_out_keeps_nothing_away() {
        ok("note", "soil-test", "--bed=blackcurrant-bed", "--ph=5.5", "--date=2026-11-25", "--today=2026-12-01");
        ok("note", "skipped", "lime@blackcurrant-bed@2027", "--today=2027-02-01");

        assertThat(run("tasks", "--today=2027-02-02").err()).doesNotContain("gives way");
    }

    @Test
    void the_second_dressing_comes_after_a_first_that_was_ticked_off() {
        ok("note", "done", FEED, MARCH);

        assertThat(ok("tasks", "--each", "--today=2027-05-20"))
                .contains("feed-second@blackcurrant-bed.blackcurrant.stool@2027");
    }

    @Test
    void a_cut_ticked_off_takes_the_planned_stems_out_of_the_count() throws IOException {
        ok("note", "done", "winter-cut@blackcurrant-1@2027", "--today=2026-12-20");

        assertThat(journal("pruned")).singleElement().asString().contains("\"4+\":3", "\"cut\":\"winter\"");
        assertThat(ok("tasks", "--each", "--today=2026-12-21")).doesNotContain("winter-cut@blackcurrant-1@2027");
    }

    @Test
    void other_plants_or_another_amount_change_what_is_booked() throws IOException {
        ok("note", "done", FEED, "--only=blackcurrant-1,blackcurrant-2", "--amount=100", MARCH);

        double grams = journal("fed").stream()
                .mapToDouble(line -> Double.parseDouble(line.replaceFirst(".*\"grams\":([0-9.]+).*", "$1"))).sum();
        assertThat(grams).isCloseTo(100, org.assertj.core.api.Assertions.within(0.5));
        assertThat(journal("fed")).noneMatch(line -> line.contains("planned"));
        assertThat(ok("tasks", "--each", MARCH)).contains("2 of 4 bushes left");
    }

    @Test
    void except_leaves_those_plants_to_do() throws IOException {
        ok("note", "done", FEED, "--except=blackcurrant-4", MARCH);

        assertThat(journal("fed")).noneMatch(line -> line.contains("blackcurrant-4"));
        assertThat(ok("tasks", "--each", MARCH)).contains("1 of 4 bushes left");
    }

    @Test
    void of_a_round_some_plants_may_be_done() throws IOException {
        String round = "cut@2027.blackcurrant";
        ok("note", "done", round, "--only=blackcurrant-1,blackcurrant-3", "--today=2026-12-12");
        assertThat(journal("pruned")).hasSize(2)
                .allMatch(line -> line.contains("blackcurrant-1") || line.contains("blackcurrant-3"));
        assertThat(ok("tasks", round, "--today=2026-12-13")).contains("- Cut", "blackcurrant-2", "blackcurrant-4")
                .doesNotContain("- Cut the oldest stems out of blackcurrant-1", "- Count the stems of blackcurrant-3");

        ok("note", "done", round, "--except=blackcurrant-4", "--today=2026-12-14");
        assertThat(ok("tasks", round, "--today=2026-12-15")).contains("- Count the stems of blackcurrant-4")
                .doesNotContain("- Count the stems of blackcurrant-2");

        Cli.Result wrong = run("note", "done", round, "--only=blackcurrant-44", "--today=2026-12-15");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("blackcurrant-44", "blackcurrant-4");
    }

    @Test
    void the_tick_taken_back_takes_its_entries_back() throws IOException {
        String before = ok("tasks", "--each", MARCH) + ok("ledger", MARCH);
        ok("note", "done", FEED, MARCH);
        ok("note", "withdrawn", id(journal("done").get(0)), MARCH);

        assertThat(ok("tasks", "--each", MARCH) + ok("ledger", MARCH)).isEqualTo(before);
    }

    @Test
    void the_same_work_by_entry_by_done_and_by_a_tick_gives_the_same_plan() throws IOException {
        Path byEntry = copy("entry");
        Path byTick = copy("tick");
        ok("note", "done", FEED, MARCH);
        for (String fed : journal("fed")) {
            Cli.Result noted = Cli.in(byEntry).run("note", "fed", "--bed=blackcurrant-bed",
                    "--material=" + fed.replaceFirst(".*\"material\":\"([^\"]+)\".*", "$1"),
                    "--grams=" + fed.replaceFirst(".*\"grams\":([0-9.]+).*", "$1"), MARCH);
            assertThat(noted.exit()).as(noted.err()).isZero();
        }
        tick(byTick);

        String done = ok("tasks", "--each", "--today=2027-03-21");
        assertThat(Cli.in(byEntry).run("tasks", "--each", "--today=2027-03-21").out()).isEqualTo(done);
        assertThat(Cli.in(byTick).run("tasks", "--each", "--today=2027-03-21").out()).isEqualTo(done);
    }

    private void tick(Path garden) throws IOException {
        tickOnly(garden);
        assertThat(read(garden, MARCH)).contains("done");
    }

    private static void tickOnly(Path garden) throws IOException {
        assertThat(Cli.in(garden).run("calendar", "--out", ".", MARCH).exit()).isZero();
        Path todos = garden.resolve("slope-todos.ics");
        String text = Files.readString(todos).replace("\r\n ", "");
        int at = text.indexOf("SUMMARY:Feed blackcurrants");
        int begin = text.lastIndexOf("BEGIN:VTODO", at);
        int end = text.indexOf("END:VTODO", at);
        String ticked = text.substring(begin, end).replace("STATUS:NEEDS-ACTION",
                "STATUS:COMPLETED\r\nCOMPLETED:20270320T100000Z");
        Files.writeString(todos, text.substring(0, begin) + ticked + text.substring(end));
    }

    @Test
    void an_amount_asked_for_may_come_with_its_unit() throws IOException {
        tickOnly(folder);
        Cli.Result read = Cli.in(folder).reading("y\n0.1 kg\n").run("calendar", "read", "slope-todos.ics", MARCH);

        assertThat(read.exit()).as(read.err()).isZero();
        assertThat(journal("done")).singleElement().asString().contains("\"amount\":100");
    }

    private static String read(Path garden, String today) {
        Cli.Result read = Cli.in(garden).run("calendar", "read", "slope-todos.ics", "--yes", today);
        assertThat(read.exit()).as(read.err()).isZero();
        return read.out() + read.err();
    }

    /** The tick set right meanwhile goes too, and brings nothing back: the work is not done. */
    @ParameterizedTest
    @ValueSource(strings = {"", "date=2027-03-19", "note=in the rain"})
    void a_tick_taken_back_in_the_calendar_takes_its_entries_back(String right) throws IOException {
        String before = ok("tasks", "--each", MARCH) + ok("ledger", MARCH);
        ok("calendar", "--out", ".", MARCH);
        Path todos = folder.resolve("slope-todos.ics");
        String neverTicked = Files.readString(todos);
        tick(folder);
        String ticked = Files.readString(todos);
        assertThat(journal("fed")).isNotEmpty();

        // an old copy says nothing about a tick, and the tick read again nothing new
        Files.writeString(todos, neverTicked);
        assertThat(read(folder, "--today=2027-03-21")).contains("nothing new");
        Files.writeString(todos, ticked);
        assertThat(read(folder, "--today=2027-03-21")).contains("nothing new");

        boolean corrected = !right.isEmpty();
        if (corrected) { ok("correct", id(journal("done").get(0)), right, "--today=2027-03-21"); }
        Files.writeString(todos,
                ticked.replaceAll("LAST-MODIFIED:[0-9TZ]+(?=(?:(?!END:VTODO)[\\s\\S])*COMPLETED:20270320)",
                        "LAST-MODIFIED:20270321T101112Z")
                        .replace("STATUS:COMPLETED\r\nCOMPLETED:20270320T100000Z", "STATUS:NEEDS-ACTION"));
        assertThat(read(folder, "--today=2027-03-21")).contains("not done", "after all (the tick");
        assertThat(journal("withdrawn")).hasSize(corrected ? 2 : 1);
        assertThat(ok("tasks", "--each", MARCH) + ok("ledger", MARCH)).isEqualTo(before);
        assertThat(read(folder, "--today=2027-03-21")).contains("nothing new");
    }

    private Path copy(String name) throws IOException {
        Path to = Files.createDirectory(folder.resolve(name));
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return to;
    }

    @ParameterizedTest
    @ValueSource(strings = {"--bed=blackcurrants", "--craft=prune"})
    void tasks_of_a_bed_or_craft_that_is_not_there_are_not_an_empty_list(String asked) {
        Cli.Result result = run("tasks", "--each", asked, MARCH);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).containsAnyOf("blackcurrant-bed", "picking, pruning");
    }

    @Test
    void a_task_of_a_past_season_is_known() throws IOException {
        ok("note", "done", "soil-test@blackcurrant-bed@2024", "--today=2026-12-01");

        assertThat(journal("done")).hasSize(1);
    }

    @Test
    void what_was_booked_as_planned_is_told_where_it_is_used() {
        ok("note", "done", "winter-cut@blackcurrant-1@2027", "--today=2026-12-20");
        assertThat(ok("prune", "blackcurrant-1", "--today=2027-11-20"))
                .contains("What was pruned on 2026-12-20 is as planned, not measured.");
        ok("note", "counted", "blackcurrant-1", "--stems=1=6,2=4,3=4", "--today=2027-11-20");
        assertThat(ok("prune", "blackcurrant-1", "--today=2027-11-21")).doesNotContain("as planned");

        ok("note", "done", "mulch@blackcurrant-bed@2027", "--today=2027-04-20");
        assertThat(ok("mulch", "--today=2027-10-01"))
                .contains("What was mulched on 2027-04-20 is as planned, not measured.");
    }

    @Test
    void a_watering_as_planned_is_told_with_the_soils_water() throws IOException {
        Files.writeString(folder.resolve("notes.csv"),
                "date,entry,bed,litres,planned,tick\n2027-06-06,watered,blackcurrant-bed,90,true,e-1\n");
        ok("note", "--csv=notes.csv", "--today=2027-06-07");

        assertThat(ok("water", "--today=2027-06-08").replaceAll("\\s+", " "))
                .contains("what was watered on 2027-06-06 is as planned, not measured");
    }

    @Test
    void work_ticked_off_long_before_its_time_is_asked_about() {
        String task = "winter-cut@blackcurrant-1@2027";
        assertThat(run("note", "done", task, "--today=2026-09-20").err().replaceAll("\\s+", " "))
                .contains("was it done on 20 Sep 2026?");
        ok("undo", "--today=2026-09-20");

        assertThat(run("note", "done", task, "--today=2026-12-20").err()).doesNotContain("was it done");
    }

    @Test
    void what_was_taken_back_is_neither_taken_back_nor_set_right_again() throws IOException {
        ok("note", "watered", "blackcurrant-bed", "--litres=30", MARCH);
        String id = id(journal("watered").get(0));
        ok("undo", MARCH);

        for (String[] again : List.of(new String[]{"undo", id}, new String[]{"correct", id, "litres=20"})) {
            Cli.Result result = run(again);
            assertThat(result.exit()).isEqualTo(2);
            assertThat(result.err()).contains(id + " was taken back");
        }
        assertThat(journal("withdrawn")).hasSize(1);
    }

    @Test
    void a_task_shows_its_round() {
        assertThat(ok("tasks", "winter-cut@blackcurrant-1@2027", "--today=2026-12-12"))
                .contains("(cut@2027.blackcurrant)");
    }

    @Test
    void what_was_skipped_and_is_done_after_all_is_booked_all_the_same() throws IOException {
        ok("note", "skipped", FEED, MARCH);
        ok("note", "done", FEED, "--today=2027-03-22");

        assertThat(journal("withdrawn")).singleElement().asString().contains(id(journal("skipped").get(0)));
        assertThat(journal("fed")).isNotEmpty().allMatch(line -> line.contains("\"planned\":true"));
        assertThat(ok("ledger", "blackcurrant-bed", "--today=2027-03-22")).contains("as planned, not measured");

        // so it is where the skip itself was said of work that was done
        ok("note", "skipped", FEED, "--today=2027-03-22");
        ok("note", "done", FEED, "--today=2027-03-22");
        assertThat(journal("done")).hasSize(2);
        assertThat(journal("withdrawn")).hasSize(2);

        // and a second tick books nothing twice, and says so
        int fed = journal("fed").size();
        assertThat(run("note", "done", FEED, "--today=2027-03-23").err().replaceAll("\\s+", " "))
                .contains("done already on 22 Mar 2027");
        assertThat(journal("fed")).hasSize(fed);
    }

    @Test
    void a_reverted_bush_that_was_taken_out_is_gone_and_an_old_one_may_have_been_kept() throws IOException {
        ok("note", "inspected", "blackcurrant-1", "--finding=reversion", "--date=2026-12-01", "--today=2026-12-01");
        String out = "grub-reverted@blackcurrant-1@2027";
        assertThat(ok("tasks", "--each", "--today=2026-12-02")).contains(out).doesNotContain("reverted: 1 plant");

        ok("note", "done", out, "--today=2026-12-03");

        assertThat(journal("grubbed")).singleElement().asString().contains("blackcurrant-1", "\"tick\"");
        assertThat(ok("stock", "--today=2026-12-04")).doesNotContain("blackcurrant-1 ");
        assertThat(ok("tasks", "--each", "--today=2027-11-20")).doesNotContain("blackcurrant-1@");
    }
}

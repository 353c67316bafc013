package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** What was noted at once, a round above all, is taken back by one undo. */
class NotedAtOnceTest extends Slope {
    private static final String DAY = "--today=2026-12-12";
    private static final String ROUND = "cut@2027.blackcurrant";

    private String tasks() { return ok("tasks", "--each", DAY); }

    private static String flat(Cli.Result result) {
        assertThat(result.exit()).as(result.err()).isZero();
        return result.err().replaceAll("\\s+", " ");
    }

    private String last() throws IOException {
        List<String> lines = journal("withdrawn");
        return id(lines.get(lines.size() - 1)).replaceFirst("-[0-9]+$", "");
    }

    @ParameterizedTest
    @CsvSource({"north, '52.1,-2.3', 2026-12-12, cut@2027.blackcurrant",
            "south, '-41,175', 2027-06-30, cut@2027-28.blackcurrant"})
    void a_round_ticked_by_mistake_is_gone_with_one_undo_and_there_again_with_another(String name, String at,
            String day, String round) throws IOException {
        String today = "--today=" + day;
        ok("start", name, "--name=Other", "--at=" + at, "--plants=blackcurrant=4", "--planted=2021", today);
        String garden = "--garden=" + name;
        String before = ok("tasks", "--each", garden, today);
        ok("note", "done", round, garden, today);
        String done = ok("tasks", "--each", garden, today);

        String back = flat(run("undo", garden, today));

        assertThat(ok("tasks", "--each", garden, today)).isEqualTo(before).isNotEqualTo(done);
        assertThat(back).contains("It was noted at once; for one entry alone undo that, then: oldwood undo ID",
                "Undo again would take back: ");
        String again = back.replaceFirst(".*oldwood (undo e-[0-9a-f]+ --whole) undoes that.*", "$1");
        for (String expected : List.of(done, before)) {
            Cli.Result result = run((again + " " + garden + " " + today).split(" "));
            again = flat(result).replaceFirst(".*oldwood (undo e-[0-9a-f]+ --whole) undoes that.*", "$1");
            assertThat(ok("tasks", "--each", garden, today)).isEqualTo(expected);
        }
    }

    @Test
    void what_is_settled_of_it_is_left() throws IOException {
        ok("note", "watered", "blackcurrant-bed", "--litres=9", DAY);
        String before = tasks();
        ok("note", "done", ROUND, DAY);
        String done = tasks();
        String third = id(journal("done").get(2));
        ok("correct", third, "note=with a saw", DAY);

        assertThat(flat(run("undo", DAY))).contains(" entries noted at once, the last ");
        assertThat(tasks()).isEqualTo(done);
        ok("undo", third, DAY);
        String without = tasks();
        ok("undo", DAY);

        assertThat(tasks()).isEqualTo(before);
        assertThat(ok("journal", "--kind=watered", DAY)).doesNotContain("[taken back]");
        ok("undo", last(), "--whole", DAY);
        assertThat(tasks()).isEqualTo(without).isNotEqualTo(before);
    }

    @Test
    void one_of_it_can_be_taken_back_alone_and_all_of_an_older_one() throws IOException {
        String before = tasks();
        ok("note", "later", ROUND, DAY);
        int all = journal("later").size();
        String any = id(journal("later").get(1));
        ok("note", "watered", "blackcurrant-bed", "--litres=9", DAY);

        ok("undo", any, DAY);
        assertThat(journal("withdrawn")).hasSize(1);
        ok("undo", "--last=2", DAY);
        assertThat(journal("withdrawn")).hasSize(3);
        ok("undo", id(journal("later").get(0)), "--whole", DAY);

        assertThat(journal("withdrawn")).hasSize(all + 1);
        assertThat(tasks()).isEqualTo(before);
    }

    /** Of several rounds that a calendar has ticked each is one. */
    @Test
    void rounds_read_out_of_a_calendar_are_taken_back_one_by_one() throws IOException {
        ok("calendar", "--out=.", DAY);
        Path todos = folder.resolve("slope-todos.ics");
        Files.writeString(todos, Files.readString(todos).replace("STATUS:NEEDS-ACTION",
                "STATUS:COMPLETED\r\nCOMPLETED:20261212T100000Z"));
        ok("calendar", "read", todos.toString(), "--yes", DAY);
        List<String> acts = journal("done").stream().map(line -> id(line).replaceFirst("-[0-9]+$", "")).toList();
        long rounds = acts.stream().distinct().count();
        assertThat(rounds).isGreaterThan(2).isLessThan(acts.size());

        for (long round = 0; round < rounds; round++) {
            assertThat(journal("withdrawn")).hasSizeLessThan(acts.size());
            ok("undo", DAY);
        }

        assertThat(journal("withdrawn")).hasSize(acts.size());
    }

    /** Journals of before say nothing of what was noted at once, and hand-written ids may end in a number. */
    @Test
    void an_old_journal_gives_back_its_last_entry_alone() throws IOException {
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e-1","date":"2026-11-26","entry":"watered","bed":"blackcurrant-bed","litres":1}
                {"id":"e-2","date":"2026-11-26","entry":"watered","bed":"blackcurrant-bed","litres":2}
                """, StandardOpenOption.APPEND);

        ok("undo", DAY);

        assertThat(journal("withdrawn")).singleElement().asString().contains("\"wrong\":\"e-2\"");
    }
}

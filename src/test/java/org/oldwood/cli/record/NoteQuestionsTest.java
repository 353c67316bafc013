package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** What is asked about a note before, or after, it is kept. */
class NoteQuestionsTest extends Slope {
    /** What a tick books goes with it when it is undone. */
    @Test
    void as_many_entries_are_told_as_undo_takes_back() throws IOException {
        Cli.Result two = run("note", "done", "cut@2027.blackcurrant", "--only=blackcurrant-1,blackcurrant-3",
                "--today=2026-12-12");

        assertThat(two.err().replaceAll("\\s+", " "))
                .containsPattern("\\b5 entries, and 2 with them, noted in .*; oldwood undo takes them back");
        ok("undo", "--last=5", "--today=2026-12-12");
        assertThat(ok("stock", "--today=2026-12-12")).contains("blackcurrant-1");
        assertThat(journal("withdrawn")).hasSize(5);
    }

    @Test
    void a_day_that_lies_ahead_is_told_as_such_and_not_as_past() throws IOException {
        ok("tasks", "--today=2026-12-12");
        for (String what : List.of("1", "cut@2027.blackcurrant", "winter-cut@blackcurrant-1@2027")) {
            Cli.Result ahead = run("note", "done", what, "--date=2027-02-20", "--today=2026-12-12");

            assertThat(ahead.exit()).isEqualTo(1);
            assertThat(ahead.err()).contains("still to come; today is 2026-12-12").doesNotContain("past");
        }
        assertThat(journal("done")).isEmpty();
    }

    @Test
    void a_crop_that_the_garden_never_held_is_asked_about() {
        String today = "--today=2027-04-20";
        for (String[] note : List.of(new String[]{"note", "seen", "--crop=haskap", "--stage=full-flower", today},
                new String[]{"note", "picked", "--crop=redcurrant", "--bed=blackcurrant-bed", "--kg=2", today})) {
            assertThat(run(note).err().replaceAll("\\s+", " ")).contains("Which crop is meant?");
        }
        assertThat(run("check", today).err()).contains("seen of haskap", "picked of redcurrant");
        assertThat(run("note", "seen", "--crop=blackcurrant", "--stage=full-flower", today).err())
                .doesNotContain("Which crop");
    }

    /** A table sent twice is noted twice: it may be a second can of water, and is asked about. */
    @Test
    void what_was_noted_before_word_for_word_is_asked_about() throws IOException {
        Files.writeString(folder.resolve("t.csv"), "date,entry,bed,litres\n2026-11-20,watered,blackcurrant-bed,60\n");
        String today = "--today=2026-12-12";

        assertThat(run("note", "--csv", "t.csv", today).err()).doesNotContain("noted before");
        String again = run("note", "--csv", "t.csv", today).err().replaceAll("\\s+", " ");
        assertThat(again).contains(
                "The same watered of 2026-11-20 was noted before, as " + id(journal("watered").get(0)),
                "oldwood undo " + id(journal("watered").get(1)));
    }

    @Test
    void stems_out_of_a_bush_that_was_never_counted_ask_for_a_count() {
        String today = "--today=2026-12-12";
        assertThat(run("note", "pruned", "--plant=blackcurrant-2", "--stems=4=3", today).err().replaceAll("\\s+", " "))
                .contains("blackcurrant-2 was never counted").contains("oldwood note counted --plant blackcurrant-2");
        assertThat(run("note", "pruned", "--plant=blackcurrant-1", "--stems=4=3", today).err())
                .doesNotContain("never counted");
    }

    @ParameterizedTest
    @ValueSource(strings = {"done soil-tets@blackcurrant-bed@2027", "skipped soil-test@blackcurant-bed@2027",
            "begun soil-test@blackcurrant-bed", "done soil-test@blackcurrant-bed@20x7"})
    void a_task_that_cannot_be_is_told(String note) throws IOException {
        String[] words = note.split(" ", -1);

        Cli.Result result = run("note", words[0], words[1], "--today=2026-12-01");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(journal(words[0])).isEmpty();
    }

    @Test
    void what_may_have_been_meant_is_said() {
        assertThat(run("note", "done", "soil-tets@blackcurrant-bed@2027", "--today=2026-12-01").err().replaceAll("\\s+",
                " ")).contains("Did you mean \"soil-test@blackcurrant-bed@2027\"?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"picked blackcurrant-1 --kg=500",
            "picked --bed=blackcurrant-bed --crop=blackcurrant --kg=500", "watered blackcurrant-bed --litres=50000",
            "planted x --crop=blackcurrant --bed=blackcurrant-bed --date=1890-03-01"})
    void a_figure_that_can_hardly_be_is_asked_about(String note) {
        Cli.Result result = run(("note " + note + " " + MARCH).split(" ", -1));

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err().replaceAll("\\s+", " ")).containsAnyOf("the right weight", "the right figure",
                "the right day");
    }

    @ParameterizedTest
    @ValueSource(strings = {"picked blackcurrant-1 --kg=4 --date=2026-07-20", "watered blackcurrant-bed --litres=100",
            "planted x --crop=blackcurrant --bed=blackcurrant-bed --date=1990-03-01"})
    void a_figure_that_may_be_is_not(String note) {
        assertThat(run(("note " + note + " " + MARCH).split(" ", -1)).err()).doesNotContain("?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"winter-cutt@blackcurrant-2@2027", "winter-cut@blackcurant-2@2027"})
    void the_nearest_task_is_named_beside_one_that_is_none(String wrong) throws IOException {
        Cli.Result result = run("note", "done", wrong, "--today=2026-12-20");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains("Did you mean \"winter-cut@blackcurrant-2@2027\"?");
        assertThat(journal("done")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5"})
    void nothing_is_no_amount_of_work_done(String amount) throws IOException {
        assertThat(run("note", "done", FEED, "--amount=" + amount, MARCH).exit()).isEqualTo(2);
        assertThat(journal("done")).isEmpty();
    }
}

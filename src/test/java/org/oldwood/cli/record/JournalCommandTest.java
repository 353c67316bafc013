package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** The journal read and set right by people: listed, taken back, corrected; no line of it ever changed. */
class JournalCommandTest {
    private static final String DAY = "--today=2026-11-25";

    @TempDir
    Path folder;

    @BeforeEach
    void start() {
        ok("start", ".", "--name=Slope", "--at=52.1,-2.3", "--plants=blackcurrant=2", "--planted=2021",
                "--zone=Europe/London", DAY);
        ok("note", "picked", "blackcurrant-1", "--kg=1.2", "--date=2026-07-05", DAY);
        ok("note", "soil-test", "blackcurrant-bed", "--ph=6.1", "--date=2026-02-01", DAY);
    }

    private Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    private String ok(String... args) {
        Cli.Result result = run(args);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }

    private List<String> journal() throws IOException { return Files.readAllLines(folder.resolve("journal.jsonl")); }

    private String idOf(String kind) throws IOException {
        return journal().stream().filter(line -> line.contains("\"entry\":\"" + kind + "\"")).reduce((a, b) -> b)
                .orElseThrow().replaceFirst(".*?\"id\":\"([^\"]+)\".*", "$1");
    }

    @Test
    void lists_what_was_noted_the_newest_last() {
        String all = ok("journal", DAY);

        assertThat(all).contains("soil-test: bed blackcurrant-bed, ph 6.1", "picked: plant blackcurrant-1, kg 1.2");
        assertThat(all.indexOf("soil-test:")).isLessThan(all.indexOf("picked:"));
    }

    @Test
    void lists_by_plant_bed_kind_and_days() {
        assertThat(ok("journal", "--plant=blackcurrant-1", DAY)).contains("picked").doesNotContain("soil-test");
        assertThat(ok("journal", "--bed=blackcurrant-bed", DAY)).contains("picked", "soil-test");
        assertThat(ok("journal", "--kind=soil-test", DAY)).contains("soil-test").doesNotContain("picked");
        assertThat(ok("journal", "--from=2026-07-05", "--to=2026-07-05", DAY)).contains("picked")
                .doesNotContain("soil-test");
        assertThat(ok("journal", "--last=1", DAY)).contains("picked").doesNotContain("soil-test");
        assertThat(ok("journal", "--from=2027-01-01", DAY)).contains("Nothing was noted that fits");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--plant=blackcurrant-9", "--bed=blackcurrants", "--kind=picket", "--cuttings=lot-1",
            "--last=x"})
    void what_is_not_known_is_told(String asked) { assertThat(run("journal", asked, DAY).exit()).isEqualTo(2); }

    @Test
    void undo_takes_back_what_was_noted_last_and_no_line_is_lost() throws IOException {
        List<String> before = journal();

        ok("undo", DAY);

        assertThat(journal()).startsWith(before.toArray(String[]::new)).hasSize(before.size() + 1);
        assertThat(journal().get(before.size())).contains("\"entry\":\"withdrawn\"", "\"" + idOf("soil-test") + "\"");
        assertThat(ok("journal", DAY)).contains("ph 6.1 [taken back]");
    }

    @Test
    void undo_again_takes_back_the_one_before() throws IOException {
        ok("undo", DAY);
        ok("undo", DAY);

        assertThat(ok("journal", "--kind=picked", DAY)).contains("[taken back]");
    }

    @Test
    void an_entry_that_is_not_there_takes_nothing_back_not_even_what_stands_beside_it() throws IOException {
        List<String> before = journal();
        String picked = idOf("picked");
        String wrong = picked.substring(0, picked.length() - 1) + "_";

        Cli.Result result = run("undo", idOf("soil-test"), wrong, DAY);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains("there is no entry \"" + wrong + "\"", picked);
        assertThat(journal()).isEqualTo(before);
    }

    @Test
    void what_was_taken_back_can_be_brought_back() throws IOException {
        ok("undo", DAY);
        ok("undo", idOf("withdrawn"), DAY);

        assertThat(ok("journal", "--kind=soil-test", DAY)).doesNotContain("[taken back]");
        assertThat(ok("lime", DAY)).contains("6.1");
    }

    @Test
    void the_last_so_many_of_a_table_are_taken_back_together() throws IOException {
        ok("undo", "--last=2", DAY);

        assertThat(ok("journal", "--kind=picked", DAY)).contains("[taken back]");
        assertThat(ok("journal", "--kind=soil-test", DAY)).contains("[taken back]");
    }

    @Test
    void a_tick_goes_with_all_that_it_booked() throws IOException {
        ok("note", "soil-test", "blackcurrant-bed", "--ph=5.2", DAY);
        String before = ok("tasks", "--each", DAY);
        ok("note", "done", "lime@blackcurrant-bed@2027", DAY);
        assertThat(ok("tasks", "--each", DAY)).isNotEqualTo(before);

        ok("undo", DAY);

        assertThat(ok("tasks", "--each", DAY)).isEqualTo(before);
        assertThat(ok("journal", "--kind=limed", DAY)).contains("[taken back]");
    }

    @Test
    void what_is_not_there_cannot_be_taken_back() {
        Cli.Result result = run("undo", "e-000000000000", DAY);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("there is no entry");
    }

    @Test
    void a_corrected_entry_stands_for_the_old_one() throws IOException {
        ok("correct", idOf("picked"), "kg=2.1", "date=2026-07-06", "note=weighed again", DAY);

        assertThat(ok("journal", "--kind=picked", DAY)).contains("2026-07-06", "kg 2.1", "kg 1.2 [taken back]");
    }

    /** The picked entries as the journal lists them, and the kg that the garden counts. */
    private List<String> picked() {
        return ok("journal", "--kind=picked", DAY).lines().map(line -> line.replaceFirst(".*?kg ", "")).sorted()
                .toList();
    }

    private void correct(String kg) throws IOException { ok("correct", idOf("picked"), "kg=" + kg, DAY); }

    @Test
    void undo_of_a_correction_brings_back_what_it_set_right() throws IOException {
        correct("2.1");
        correct("3.1");
        List<String> before = journal();

        assertThat(ok("undo", DAY)).contains("stands again");

        assertThat(journal()).startsWith(before.toArray(String[]::new));
        assertThat(picked()).containsExactly("1.2 [taken back]", "2.1", "3.1 [taken back]");
        ok("undo", DAY);
        assertThat(picked()).containsExactly("1.2", "2.1 [taken back]", "3.1 [taken back]");
        ok("undo", "--last=2", DAY);
        assertThat(picked()).containsExactly("1.2 [taken back]", "2.1 [taken back]", "3.1 [taken back]");
    }

    @Test
    void a_correction_counts_as_one_of_the_last_and_goes_by_its_id() throws IOException {
        String first = idOf("picked");
        correct("2.1");
        String second = idOf("picked");
        correct("3.1");
        ok("undo", "--last=2", DAY);
        assertThat(picked()).containsExactly("1.2", "2.1 [taken back]", "3.1 [taken back]");

        ok("correct", first, "kg=4.1", DAY);
        ok("undo", idOf("picked"), DAY);
        ok("undo", first, DAY);
        assertThat(picked()).allMatch(line -> line.endsWith("[taken back]"));
        assertThat(run("undo", second, DAY).exit()).isEqualTo(2);
    }

    @Test
    void undo_says_how_many_it_takes_back_of_a_correction() throws IOException {
        assertThat(run("correct", idOf("picked"), "kg=2.1", DAY).err().replaceAll("\\s+", " "))
                .contains("oldwood undo takes it back");
    }

    @Test
    void a_correction_whose_undoing_is_undone_counts_alone() throws IOException {
        correct("2.1");
        String taking = idOf("withdrawn");
        ok("undo", DAY);
        ok("undo", idOf("withdrawn"), DAY);
        assertThat(picked()).containsExactly("1.2 [taken back]", "2.1");

        // by the id of the line that took the first entry back, too
        ok("undo", taking, DAY);
        assertThat(picked()).containsExactly("1.2", "2.1 [taken back]");
    }

    @Test
    void what_was_set_right_twice_is_not_brought_back_beside_what_stands_for_it() throws IOException {
        correct("2.1");
        String taking = idOf("withdrawn");
        correct("3.1");

        Cli.Result result = run("undo", taking, DAY);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains("was set right again since");
    }

    @Test
    void undo_of_a_corrected_part_of_a_tick_leaves_the_tick() throws IOException {
        ok("note", "soil-test", "blackcurrant-bed", "--ph=5.2", DAY);
        ok("note", "done", "lime@blackcurrant-bed@2027", DAY);
        String ticked = ok("tasks", "--each", DAY);
        String limed = ok("journal", "--kind=limed", DAY);
        ok("correct", idOf("limed"), "grams=7", DAY);

        ok("undo", DAY);

        assertThat(ok("journal", "--kind=limed", DAY)).contains(limed.strip());
        assertThat(ok("tasks", "--each", DAY)).isEqualTo(ticked);
        ok("correct", idOf("done"), "date=2026-11-24", DAY);
        ok("undo", DAY);
        assertThat(ok("tasks", "--each", DAY)).isEqualTo(ticked);
    }

    @Test
    void undo_of_a_tick_that_came_after_all_leaves_the_task_skipped() throws IOException {
        ok("note", "soil-test", "blackcurrant-bed", "--ph=5.2", DAY);
        ok("note", "skipped", "lime@blackcurrant-bed@2027", DAY);
        String skipped = ok("tasks", "--each", DAY);
        ok("note", "done", "lime@blackcurrant-bed@2027", DAY);

        ok("undo", DAY);

        assertThat(ok("journal", "--kind=skipped", DAY)).doesNotContain("[taken back]");
        assertThat(ok("tasks", "--each", DAY)).isEqualTo(skipped);
    }

    /** Journals written before undo brought anything back read as they did. */
    @Test
    void an_old_undoing_of_a_correction_leaves_neither() throws IOException {
        correct("2.1");
        Files.writeString(folder.resolve("journal.jsonl"),
                "{\"id\":\"old\",\"date\":\"2026-11-25\",\"entry\":\"withdrawn\",\"wrong\":\"" + idOf("picked")
                        + "\"}\n",
                java.nio.file.StandardOpenOption.APPEND);

        assertThat(picked()).containsExactly("1.2 [taken back]", "2.1 [taken back]");
    }

    @Test
    void a_key_can_be_taken_away() throws IOException {
        ok("note", "pruned", "blackcurrant-1", "--cut=summer", "--tips=3", DAY);
        ok("correct", idOf("pruned"), "cut=", DAY);

        assertThat(ok("journal", "--kind=pruned", "--last=1", DAY)).contains("tips 3").doesNotContain("cut summer");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kilos=3", "kg=much", "date=yesterday", "kg", "=3"})
    void what_cannot_be_right_is_told_and_nothing_noted(String wrong) throws IOException {
        List<String> before = journal();

        assertThat(run("correct", idOf("picked"), wrong, DAY).exit()).isIn(1, 2);
        assertThat(journal()).isEqualTo(before);
    }

    @Test
    void the_old_name_of_withdrawn_is_read() throws IOException {
        Files.writeString(folder.resolve("journal.jsonl"),
                "{\"id\":\"old\",\"date\":\"2026-11-25\",\"entry\":\"struck-out\",\"wrong\":\"" + idOf("soil-test")
                        + "\"}\n",
                java.nio.file.StandardOpenOption.APPEND);

        assertThat(ok("journal", "--kind=soil-test", DAY)).contains("[taken back]");
    }
}

package org.oldwood.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.oldwood.garden.EntryKind;

class NoteTest {
    private static final String DAY = "--today=2026-11-25";

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @TempDir
    Path folder;

    @BeforeEach
    void start() {
        Cli.Result result = Cli.in(folder).run("start", ".", "--name=Slope", "--at=52.1,-2.3",
                "--plants=blackcurrant=4,summer-raspberry=10", "--planted=2021", "--zone=Europe/London", DAY);
        assertThat(result.exit()).as(result.err()).isZero();
    }

    @AfterEach
    void putBack() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    private Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    private List<String> journal() throws IOException { return Files.readAllLines(folder.resolve("journal.jsonl")); }

    @Test
    void what_is_sent_twice_under_one_key_is_noted_once() throws IOException {
        String[] note = {"note", "picked", "blackcurrant-1", "--kg=1.2", "--once=phone-7", DAY};

        Cli.Result first = run(note);
        int lines = journal().size();
        Cli.Result again = run(note);
        Cli.Result other = run("note", "picked", "blackcurrant-1", "--kg=1.2", "--once=phone-8", DAY);

        assertThat(first.exit()).isZero();
        assertThat(again.exit()).isZero();
        assertThat(again.err()).contains("noted already");
        assertThat(other.exit()).isZero();
        assertThat(journal()).hasSize(lines + 1);
    }

    @ParameterizedTest
    @CsvSource({"note struk blackcurrant-1, Did you mean \"struck\"?", "note struck-out e-1, Known here: acidified",
            "calendar reed x.ics, Did you mean \"read\"?",
            "note picked blakcurrant-1 --kg=1, Did you mean \"blackcurrant-1\"?",
            "note watered blackcurrant-bd --litres=9, Did you mean \"blackcurrant-bed\"?"})
    void what_may_have_been_meant_is_said(String line, String meant) {
        Cli.Result result = run((line + " " + DAY).split(" ", -1));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains(meant);
    }

    @Test
    void work_is_put_off_to_a_later_day() throws IOException {
        int lines = journal().size();
        Cli.Result result = run("note", "later", "soil-test@blackcurrant-bed@2027", "--until=2026-11-25", DAY);

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains("--until must be a later day");
        assertThat(journal()).hasSize(lines);
    }

    @Test
    void a_new_garden_has_nothing_to_complain_of() {
        Cli.Result result = run("check", DAY);

        assertThat(result).isEqualTo(new Cli.Result(0, "", ""));
    }

    @Test
    void bushes_are_planted_one_by_one_and_canes_by_the_row() throws IOException {
        assertThat(journal()).hasSize(5);
        assertThat(journal().get(0))
                .endsWith("\"date\":\"2021-03-01\",\"entry\":\"planted\",\"plant\":\"blackcurrant-1\","
                        + "\"crop\":\"blackcurrant\",\"bed\":\"blackcurrant-bed\",\"about\":\"year\"}");
        assertThat(journal().get(4)).contains("\"plant\":\"summer-raspberry-1\"", "\"lengthM\":4.5");
    }

    @ParameterizedTest
    @EnumSource(EntryKind.class)
    void the_example_in_every_entrys_help_runs(EntryKind kind) throws IOException {
        run("note", "struck", "--lot=lot-1", "--crop=blackcurrant", "--method=hardwood", "--number=20", DAY);
        String help = run("note", kind.key(), "--help").out();
        String example = help.substring(help.indexOf("\n  oldwood ") + 11);
        String id = journal().get(5).substring(7, 21);

        String typed = example.replace("e-0123456789ab", id) + " " + DAY;
        Cli.Result result = run(typed.replace("\\\n", " ").strip().split("\\s+"));

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err()).contains("noted in ");
        assertThat(run("check", DAY)).isEqualTo(new Cli.Result(0, "", ""));
    }

    /** The bush has stood since March 2021, and another since 2010: whole years on the day of the cuttings. */
    @Test
    void cuttings_are_doubted_by_the_age_of_their_bush_on_their_day() {
        run("note", "planted", "old-one", "--crop=blackcurrant", "--bed=blackcurrant-bed", "--date=2010-11-25", DAY);
        String[] struck = {"note", "struck", "--method=hardwood", "--number=20", "--date=2026-11-24", DAY};

        assertThat(run(with(struck, "--lot=a", "--parent=blackcurrant-1")).err()).doesNotContain("years old");
        assertThat(run(with(struck, "--lot=b", "--parent=old-one")).err()).contains("The bush is 15 years old");
    }

    private static String[] with(String[] first, String... more) {
        return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void cuttings_that_died_are_named_like_a_plant_would_be() throws IOException {
        run("note", "struck", "lot-1", "--crop=blackcurrant", "--method=hardwood", "--number=20", DAY);

        assertThat(run("note", "lost", "lot-1", "--number=5", DAY).exit()).isZero();
        assertThat(journal().get(journal().size() - 1)).contains("\"lot\":\"lot-1\"");
        assertThat(run("note", "checked", "lot-1", "--alive=30", DAY).err())
                .containsPattern("right\\? oldwood\\s+undo e-");
    }

    @Test
    void a_soil_test_without_a_figure_is_told_of() {
        assertThat(run("note", "soil-test", "blackcurrant-bed", "--by=kit", DAY).err()).contains("tells nothing",
                "note it with --ph");
        assertThat(run("note", "soil-test", "blackcurrant-bed", "--ph=5.8", DAY).err()).doesNotContain("tells nothing");
    }

    @Test
    void of_a_round_of_beds_some_are_ticked_off_and_the_list_is_told_of_once() throws IOException {
        run("tasks", DAY);
        String later = "--today=2026-11-26";
        assertThat(run("note", "done", "soil@2027", "--only=summer-raspberry-bad", later).err())
                .contains("Did you mean \"summer-raspberry-bed\"?");

        Cli.Result done = run("note", "done", "soil@2027", "--except=summer-raspberry-bed", later);
        assertThat(done.exit()).as(done.err()).isZero();
        assertThat(journal().get(journal().size() - 1)).contains("soil-test@blackcurrant-bed@2027");
        assertThat(run("note", "done", "1", later).err()).containsOnlyOnce("The numbers are those of the list");
    }

    @Test
    void a_table_is_noted_whole_or_not_at_all() throws IOException {
        List<String> before = journal();
        String good = "date,entry,plant,stems\n2025-12-01,counted,blackcurrant-1,\"1=5,4+=3\"\n";

        Cli.Result bad = Cli.in(folder).reading(good + "2025-12-01,counted,blackcurrant-9,1=2\n").run("note", "--csv",
                "-", DAY);
        assertThat(bad.exit()).isEqualTo(1);
        assertThat(bad.err()).startsWith("standard input:3: plant names no plant");
        assertThat(journal()).isEqualTo(before);

        Cli.Result fine = Cli.in(folder).reading(good).run("note", "--csv", "-", DAY, "--quiet");
        assertThat(fine.exit()).isZero();
        assertThat(fine.err()).isEmpty();
        assertThat(journal()).hasSize(6);
        assertThat(journal().get(5)).endsWith("\"stems\":{\"1\":5,\"4+\":3}}");
    }

    @Test
    void the_same_note_twice_has_two_ids() throws IOException {
        String[] note = {"note", "watered", "--bed=blackcurrant-bed", "--litres=20", DAY};
        run(note);
        run(note);

        assertThat(journal()).hasSize(7).doesNotHaveDuplicates();
    }

    @Test
    void a_torn_last_line_is_set_aside_when_the_next_entry_is_noted() throws IOException {
        Path file = folder.resolve("journal.jsonl");
        Files.writeString(file, Files.readString(file) + "{\"id\":\"e-9\",\"da");

        run("note", "watered", "--bed=blackcurrant-bed", "--litres=20", DAY);

        assertThat(journal()).hasSize(6);
        assertThat(folder.resolve("journal.jsonl.torn-line-6")).hasContent("{\"id\":\"e-9\",\"da");
    }

    @Test
    void a_wrong_entry_can_be_taken_back_though_the_journal_has_problems() throws IOException {
        Path file = folder.resolve("journal.jsonl");
        Files.writeString(file, Files.readString(file)
                + "{\"id\":\"e-9\",\"date\":\"2026-01-01\",\"entry\":\"counted\",\"plant\":\"no\",\"stems\":{\"1\":2}}\n");
        assertThat(run("check", DAY).exit()).isEqualTo(1);

        assertThat(run("note", "withdrawn", "--wrong=e-9", DAY).exit()).isZero();

        assertThat(run("check", DAY).exit()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"tr-TR,Pacific/Kiritimati", "ar-EG,Pacific/Midway", "th-TH-u-ca-buddhist,Asia/Tokyo"})
    void what_is_said_and_written_is_the_same_in_every_locale_and_time_zone(String tag, String where)
            throws IOException {
        List<String[]> commands = List.of(new String[]{"note", "picked", "--plant=blackcurrant-1", "--kg=2.5", DAY},
                new String[]{"note", "picked", "--plant=x", "--kg=-2.5", DAY}, new String[]{"note", "picked", "--help"},
                new String[]{"note", "pickd"}, new String[]{"check", DAY, "--json"}, new String[]{"sources"},
                new String[]{"--help"});
        List<String> first = journal();
        List<Cli.Result> here = commands.stream().map(this::run).toList();
        List<String> noted = journal();
        Files.write(folder.resolve("journal.jsonl"), first);

        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone(where));

        assertThat(commands.stream().map(this::run).toList()).isEqualTo(here);
        assertThat(journal()).isEqualTo(noted);
    }

    @Test
    void the_day_comes_from_source_date_epoch_where_it_is_set() throws IOException {
        Cli.in(folder).with(Today.VARIABLE, "1764072000").run("note", "watered", "--bed=blackcurrant-bed",
                "--litres=20");

        assertThat(journal().get(5)).contains("\"date\":\"2025-11-25\"");
    }
}

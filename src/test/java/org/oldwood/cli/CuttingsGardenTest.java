package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.ManyLots;
import org.oldwood.cli.command.Cli;

/** The command with a garden: its lots, one lot, and whether its bushes can give the wood. */
class CuttingsGardenTest {
    private static final String TODAY = "--today=2026-11-25";

    @TempDir
    Path folder;

    @BeforeEach
    void a_garden_with_six_bushes() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Two beds", "id": "5f0c9f0e-6b1d-4c55-9d11-0a4f7c3f2a10",
                 "site": {"latitude": 52, "longitude": -2, "heightM": 60, "zone": "Europe/London"},
                 "beds": [{"id": "n", "name": "nursery", "areaM2": 20, "texture": "loam"},
                          {"id": "far", "name": "far bed", "areaM2": 20, "texture": "loam"}]}
                """);
        note("planted", "2019-11-20", "--plant=bc-1", "--crop=blackcurrant", "--bed=n");
        note("planted", "2019-11-20", "--plant=bc-2", "--crop=blackcurrant", "--bed=n");
        note("planted", "2019-11-20", "--plant=bc-9", "--crop=blackcurrant", "--bed=far");
        note("planted", "2019-11-20", "--plant=rc-1", "--crop=redcurrant", "--bed=n");
        // 13 of 1 year where a stool wants 5 or so: the cut list takes the rest out
        note("counted", "2026-11-20", "--plant=bc-1", "--stems=1=13,2=4,3=4,4+=3");
        note("struck", "2025-11-20", lot("bc-1", "a", 12));
        note("checked", "2026-06-01", "--lot=a", "--alive=10");
        note("lost", "2026-06-01", "--lot=a", "--number=2", "--cause=drought");
        note("struck", "2026-11-21", lot("bc-2", "b", 6));
    }

    private static String[] lot(String parent, String id, int number) {
        return new String[]{"--lot=" + id, "--parent=" + parent, "--method=hardwood", "--number=" + number, "--bed=n"};
    }

    private void note(String kind, String date, String... values) {
        String[] all = new String[values.length + 4];
        all[0] = "note";
        all[1] = kind;
        all[2] = "--date=" + date;
        all[3] = "--quiet";
        System.arraycopy(values, 0, all, 4, values.length);
        Cli.Result result = Cli.in(folder).run(all);
        assertThat(result.exit()).as(result.err()).isZero();
    }

    private Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    @Test
    void all_lots_stand_in_short_and_by_season() {
        Cli.Result result = run("cuttings", TODAY);

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("a  blackcurrant, hardwood from bc-1")
                .contains("12 struck 20 Nov 2025; 10 alive on 1 Jun 2026").containsPattern("(now|next): lift")
                .contains("6 struck 21 Nov 2026; never counted").contains("next: keep moist ")
                .containsPattern("season +2027 +2028 +2029 +2030").containsPattern("\na +grows +\\d")
                .containsPattern("\nb +roots +grows +\\d").containsPattern("\nall +\\d*");
    }

    @Test
    void one_lot_is_told_in_full() {
        Cli.Result result = run("cuttings", "a", TODAY);

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("Lost 2, 1 Jun 2026: drought.", "count the living", "take the flowers off")
                .contains("with this garden's own cuttings", "breeders' rights", "first pick", "full crop");
    }

    @Test
    void planted_out_bushes_are_the_lots_own() {
        note("lifted", "2026-11-22", "--lot=a", "--rooted=9", "--good=8");
        note("planted-out", "2026-11-22", "--lot=a", "--bed=far", "--plants=x,y");

        assertThat(run("cuttings", "a", TODAY).out()).contains("Its plants: x, y.");
        assertThat(run("cuttings", TODAY).out()).contains("2 planted out 22 Nov 2026");
        assertThat(run("why", "--not", "first-cut-back", "x", TODAY).out()).contains("raised from own cuttings",
                ": it is due on");
    }

    @Test
    void a_strike_out_of_season_is_warned_about_in_the_list_too() {
        note("struck", "2026-08-01", lot("bc-9", "c", 5));

        assertThat(run("cuttings", TODAY).out().replaceAll("\\s+", " "))
                .containsPattern("! Struck 1\\d\\d days before the window opens");
    }

    @Test
    void a_strike_from_a_sick_bush_is_warned_about_at_once() {
        note("inspected", "2026-11-22", "--plant=bc-9", "--finding=reversion");

        Cli.Result result = run("note", "struck", "--lot=d", "--parent=bc-9", "--method=hardwood", "--number=4",
                "--date=2026-11-23", TODAY);

        assertThat(result.exit()).isZero();
        assertThat(result.err().replaceAll("\\s+", " ")).contains("bc-9: Signs of reversion were found",
                "certified stock");
    }

    @Test
    void json_has_every_lot_with_its_numbers_and_days() {
        Cli.Result result = run("cuttings", "--json", TODAY);

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("\"lot\": \"a\"", "\"parent\": \"bc-1\"", "\"form\": \"stool\"")
                .contains("\"alive\": 10", "\"p10\": ", "\"p90Kg\": ", "\"step\": \"lift\"")
                .contains("\"parentWarnings\": [ ]");
    }

    @Test
    void a_crop_names_its_lots_only() {
        assertThat(run("cuttings", "--crop=redcurrant", TODAY).out()).contains("No cuttings are noted");
        assertThat(run("cuttings", "--crop=blackcurrant", TODAY).out()).contains("12 struck");
    }

    @Test
    void parents_give_what_the_cut_list_takes_out() {
        Cli.Result few = run("cuttings", "--crop=blackcurrant", "--want=1", "--by=2030", TODAY);
        Cli.Result many = run("cuttings", "--crop=blackcurrant", "--want=40", "--by=2030", TODAY, "--json");

        assertThat(few.exit()).as(few.err()).isZero();
        assertThat(few.out()).contains("That is enough.").containsPattern("bc-1: \\d+ of 13 one-year shoots come out")
                .contains("bc-2, bc-9: not known").contains("A shoot of 59 cm or more gives two");
        assertThat(many.out()).contains("\"parentsAllKnown\": false", "\"want\": 40").doesNotContain("parentsEnough");
    }

    @Test
    void too_little_wood_is_said_with_what_to_do() {
        note("counted", "2026-11-20", "--plant=bc-2", "--stems=1=2,2=4,3=4");
        note("counted", "2026-11-20", "--plant=bc-9", "--stems=1=2,2=4,3=4");

        Cli.Result result = run("cuttings", "--crop=blackcurrant", "--want=40", "--by=2030", TODAY);

        assertThat(result.out()).contains(" short: strike over two winters", "certified stock");
    }

    @Test
    void shoots_noted_by_the_grower_come_first() {
        note("counted", "2026-11-22", "--plant=rc-1", "--stems=1=2,2=4", "--shoots=25");

        Cli.Result result = run("cuttings", "--crop=redcurrant", "--want=3", "--by=2030", TODAY);

        assertThat(result.out()).contains("That is enough.", "rc-1: 25 good shoots to spare, noted 2026-11-22");
    }

    @Test
    void a_sick_bush_and_its_neighbours_are_no_parents() {
        note("inspected", "2026-11-22", "--plant=bc-1", "--finding=big-bud");

        Cli.Result result = run("cuttings", "--crop=blackcurrant", "--want=3", "--by=2030", TODAY);
        assertThat(result.out()).contains("bc-1, bc-2: not fit as a parent", "bc-9: not known")
                .contains("bc-2: bc-1 beside it in the bed was found with big-bud");
        assertThat(run("cuttings", TODAY).out()).contains("! Parent bc-2: bc-1 beside it");
        assertThat(run("why", "--not", "strike-hardwood", "n.blackcurrant.stool", TODAY).out())
                .contains("no bush here is fit to take cuttings from", "certified stock");
    }

    @Test
    void what_no_count_of_the_record_tells_is_said() {
        Cli.Result result = run("cuttings", "--crop=blackcurrant", "--method=layer", "--want=2", "--by=2031", TODAY);

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("not known: the record does not count the wood");
    }

    @Test
    void a_crop_that_does_not_stand_here_needs_wood_from_elsewhere() {
        assertThat(run("cuttings", "--crop=haskap", "--want=3", "--by=2032", TODAY).out())
                .contains("no haskap stands in this garden", "certified stock");
    }

    @Test
    void why_shows_the_arithmetic_of_a_propagation_task() {
        Cli.Result result = run("why", "lift@a@2027", TODAY);

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("Arithmetic", "nursery bed: 90 %", "10 alive, of whom")
                .contains("the day they are fit to lift");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"cuttings c | There are no cuttings \"c\" in this garden",
            "cuttings a --want=3 --by=2030 | Ask one thing", "cuttings --by=2030 | --by and --sure belong to --want",
            "cuttings --on=2026-11-20 | --on belongs to --struck", "cuttings --method=layer | Say what to reckon",
            "cuttings --crop=blackcurrant --want=0 --by=2030 | --want must be from 1 to",
            "cuttings --crop=blackcurrant --want-kg=-2 --by=2030 | --want-kg must be above 0",
            "cuttings --crop=blackcurrant --want=3 | Say by which season: --by 2030",
            "cuttings --crop=blackcurrant --want=3 --at=-43,147 | Say by which season: --by 2029-30",
            "cuttings --crop=blackcurrant --want=3 --by=2029-30 | --by must be a season, 2030",
            "cuttings --crop=blackcurrant --want=3 --by=2030 --sure=1 | between 0 and 1",
            "cuttings --want=3 --by=2030 | Say which crop",
            "cuttings --crop=blackcurant --want=3 --by=2030 | Did you mean \"blackcurrant\"",
            "cuttings --crop=blackcurrant --struck=3 | Say when they were struck",
            "cuttings --crop=blackcurrant --struck=0 --on=2026-11-20 | --struck must be from 1",
            "cuttings --crop=blackcurrant --struck=3 --on=yesterday | --on",
            "cuttings --crop=blackcurrant --form=leg --struck=3 --on=2026-11-20 | --form is not known",
            "cuttings --crop=blackcurrant --cut=light --struck=3 --on=2026-11-20 | --cut is not known",
            "cuttings --crop=blackcurrant --struck=3 --on=2026-11-20 --climate=oxfrd | Did you mean \"oxford\"",
            "cuttings --crop=blackcurrant --struck=3 --on=2026-11-20 --at=52 | --at must be latitude",
            "cuttings --crop=blackcurrant --struck=3 --on=2026-11-20 --at=-42,147 --climate=oxford | other half",
            "cuttings --crop=blackcurrant --struck=3 --on=2026-11-20 --at=52,0 --garden=. | either --garden"})
    void a_wrong_command_line_is_told_what_to_write(String line, String told) {
        Cli.Result result = run((line + " " + TODAY).split(" "));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err().replaceAll("\\s+", " ")).contains(told);
        assertThat(result.out()).isEmpty();
    }

    @Test
    void a_broken_record_stops_the_command() throws IOException {
        Files.writeString(folder.resolve("journal.jsonl"),
                "{\"id\": \"e1\", \"date\": \"2026-11-20\", \"entry\": \"struck\", \"lot\": \"z\","
                        + " \"crop\": \"blackcurrant\", \"method\": \"hardwod\", \"number\": 3}\n");

        Cli.Result result = run("cuttings", TODAY);

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("journal.jsonl:1:", "method");
    }

    @Test
    void many_lots_are_all_told(@TempDir Path nursery) {
        ManyLots.write(100, nursery);

        Cli.Result all = Cli.in(nursery).run("cuttings", TODAY);

        assertThat(all.exit()).as(all.err()).isZero();
        assertThat(all.out().lines().filter(line -> line.matches("l-\\d+  .* from p-\\d+"))).hasSize(100);
    }
}

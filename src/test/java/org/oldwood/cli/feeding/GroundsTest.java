package org.oldwood.cli.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** Tubs, roofs that keep the rain off, peat, and beds that no pH suits, as a grower declares them. */
class GroundsTest {
    @TempDir
    Path folder;

    private void garden(double latitude, String climate, String... journal) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Yard", "id": "0b7f0a52-6a3e-4d2c-8b54-0c1f3f3a9d12",
                 "site": {"latitude": %s, "longitude": 0, "zone": "UTC"}, "climate": "%s",
                 "materials": ["ammonium-sulphate", "sulphate-of-potash", "ground-limestone", "sulphur"],
                 "beds": [{"id": "tubs", "areaM2": 0.5, "tubLitres": 120, "texture": "peat"},
                          {"id": "roofed", "areaM2": 8, "texture": "loam", "sheltered": true},
                          {"id": "open", "areaM2": 8, "texture": "loam"},
                          {"id": "moss", "areaM2": 9, "texture": "peat"},
                          {"id": "black", "areaM2": 9, "texture": "loam", "organicPercent": 8}]}
                """.formatted(latitude, climate));
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < journal.length; i++) {
            lines.append("{'id':'e-%d',%s}\n".formatted(i + 1, journal[i]).replace('\'', '"'));
        }
        Files.writeString(folder.resolve("journal.jsonl"), lines);
    }

    private static String planted(String plant, String crop, String bed) {
        return "'date':'2020-06-01','entry':'planted','plant':'%s','crop':'%s','bed':'%s'".formatted(plant, crop, bed);
    }

    private String run(String today, String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today";
        all[args.length + 1] = today;
        Cli.Result result = Cli.in(folder).run(all);
        return (result.out() + result.err()).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @CsvSource({"52, oxford, 2026-01-10, Mar, Nov", "-41, hobart, 2026-07-10, Sep, May"})
    void a_tub_is_fed_by_the_week_repotted_and_sheltered_but_neither_limed_nor_tested(double latitude, String climate,
            String today, String budBurst, String leafFall) throws IOException {
        garden(latitude, climate, planted("a", "blueberry", "tubs"), planted("b", "blueberry", "tubs"));

        String tasks = run(today, "tasks");
        assertThat(tasks).contains("Renew the mix").doesNotContain("Test soil");
        assertThat(tasks).containsPattern("(?i)feed tubs?").contains(budBurst);
        assertThat(run(today, "feed")).contains("a trial in pots").contains("A week's part of it");
        assertThat(run(today, "lime")).contains("neither limed nor acidified").doesNotContain("note it there");
    }

    /**
     * From memory: a tub uses 1.5 to 2 times the day's evaporation from its top; two tubs with a top of 0.25 m² each.
     */
    @Test
    void a_tub_is_told_its_litres_a_day() throws IOException {
        garden(52, "ross-on-wye", planted("a", "blueberry", "tubs"), planted("b", "blueberry", "tubs"));

        String told = run("2026-07-10", "water", "tubs");
        assertThat(run("2026-03-20", "water", "tubs")).contains("Reckoned as open soil, it")
                .doesNotContain("Next watering");
        Matcher line = Pattern.compile("about (\\S+) to (\\S+) l a day per bush on 10 Jul 2026: its top × (\\S+) mm")
                .matcher(told);
        assertThat(line.find()).as(told).isTrue();
        double mm = Double.parseDouble(line.group(3));
        assertThat(mm).isBetween(2.0, 5.0);
        assertThat(Double.parseDouble(line.group(1))).isCloseTo(0.25 * 1.5 * mm, within(0.1));
        assertThat(Double.parseDouble(line.group(2))).isCloseTo(0.25 * 2 * mm, within(0.1));
        assertThat(told).contains("(from memory)");
        run("2026-07-10", "sheet", "--full", "--out", "year.html");
        assertThat(Files.readString(folder.resolve("year.html")))
                .contains("Once full a tub wants about " + line.group(1));
        assertThat(run("2026-07-10", "water", "open")).doesNotContain("a tub wants");
    }

    /** In November July's task tells a day in July, and not one in November. */
    @ParameterizedTest
    @CsvSource({"52, ross-on-wye, 2026-11-25, 2027", "-41, hobart, 2026-05-25, 2026-27"})
    void a_task_ahead_tells_the_litres_of_its_own_day(double latitude, String climate, String today, String season)
            throws IOException {
        garden(latitude, climate, planted("a", "blueberry", "tubs"), planted("b", "blueberry", "tubs"));

        String why = run(today, "why", "water-short@tubs@" + season);
        assertThat(why).contains("l to fill the tubs, then some every day");
        Matcher line = Pattern.compile("l a day per bush on .{11,12}: its top × (\\S+) mm").matcher(why);
        assertThat(line.find()).as(why).isTrue();
        assertThat(Double.parseDouble(line.group(1))).isGreaterThan(2);
    }

    @Test
    void a_tub_without_a_texture_is_taken_for_a_bought_mix_and_says_so() throws IOException {
        garden(52, "oxford", planted("a", "blueberry", "tubs"));
        Path file = folder.resolve("garden.json");
        Files.writeString(file, Files.readString(file).replace("120, \"texture\": \"peat\"", "120"));

        assertThat(run("2026-07-10", "water", "tubs"))
                .contains("the texture of the mix is not recorded, so peat or a potting mix of it is taken");
    }

    /** Limed after this season's time for it: why nothing is planned is told of the time to come. */
    @Test
    void what_keeps_the_next_lime_away_is_told_of_its_own_time() throws IOException {
        garden(-41, "hobart", planted("a", "redcurrant", "open"),
                "'date':'2026-09-06','entry':'soil-test','bed':'open','ph':5.5",
                "'date':'2026-10-25','entry':'limed','bed':'open','material':'ground-limestone','grams':3000");

        assertThat(run("2026-11-25", "lime", "open"))
                .contains("Next nothing is planned: by 2027-05-02 it is 189 days since \"limed\" was last noted")
                .doesNotContain("2026-08-15");
    }

    @Test
    void the_mix_of_a_tub_is_not_soured_but_renewed() throws IOException {
        garden(52, "oxford", planted("a", "blueberry", "tubs"),
                "'date':'2026-01-05','entry':'soil-test','bed':'tubs','ph':6.4");

        assertThat(run("2026-01-10", "acidify")).contains("The mix of a tub is neither limed nor acidified");
    }

    @Test
    void a_roof_that_keeps_the_rain_off_leaves_a_bed_dry() throws IOException {
        garden(52, "ross-on-wye", planted("a", "redcurrant", "roofed"), planted("b", "redcurrant", "open"));

        assertThat(run("2026-05-01", "water", "roofed")).contains("it holds about 0 mm of");
        assertThat(run("2026-05-01", "water", "open")).doesNotContain("it holds about 0 mm of");
    }

    /** RB209 for a mineral loam 14 g N, a quarter of it on humus; Irish print limes peat to 5.5 and no further. */
    @Test
    void peat_and_humus_get_less_nitrogen_and_peat_is_limed_to_its_own_target() throws IOException {
        garden(52, "oxford", planted("a", "blackcurrant", "moss"), planted("b", "blackcurrant", "black"),
                "'date':'2025-11-20','entry':'soil-test','bed':'moss','ph':5.0",
                "'date':'2025-11-20','entry':'soil-test','bed':'black','ph':5.0");

        assertThat(run("2026-01-10", "feed", "moss")).contains("Need N 3.5,");
        assertThat(run("2026-01-10", "feed", "black")).contains("Need N 3.5,");
        assertThat(run("2026-01-10", "lime", "moss")).contains("16 t/ha per pH unit × (5.5 − 5)")
                .contains("little and often");
        assertThat(run("2026-01-10", "lime", "black")).contains("7 t/ha per pH unit × (6.5 − 5)");
        assertThat(run("2026-01-10", "check")).doesNotContain("peat");
    }

    @Test
    void check_tells_a_bed_that_no_ph_suits_and_ground_without_hope() throws IOException {
        garden(52, "oxford", planted("a", "blackcurrant", "open"), planted("b", "blueberry", "open"),
                planted("c", "blueberry", "black"),
                "'date':'2025-11-20','entry':'soil-test','bed':'black','ph':7.8,'freeLime':true");

        assertThat(run("2026-01-10", "check")).contains("open: ").contains("no pH suits both").contains("black: ")
                .contains("Highbush blueberries cannot thrive there");
    }

    @Test
    void start_tells_at_once_what_cannot_share_a_bed() throws IOException {
        Files.writeString(folder.resolve("stock.csv"),
                "crop,number,bed,cultivar,form\nredcurrant,2,wall,,\nblueberry,3,wall,,\ngooseberry,1,fence,,\n");

        String said = run("2026-01-10", "start", "new", "--name", "New", "--at", "52,-2", "--stock", "stock.csv",
                "--planted", "2020", "--bed-area", "6");

        assertThat(said).contains("wall: ").contains("no pH suits both").contains("to tubs");
    }
}

package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** {@code lime}, {@code acidify} and {@code mulch}, with and without a garden. */
class SoilAndMulchCommandTest {
    @TempDir
    Path folder;

    private Path garden = Path.of("");

    @BeforeEach
    void garden() throws IOException {
        garden = Files.createDirectories(folder.resolve("ours"));
        Files.writeString(garden.resolve("garden.json"),
                """
                        {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
                         "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
                         "beds": [{"id": "north", "name": "North bed", "areaM2": 10, "texture": "sandy-loam", "stonesPercent": 20},
                                  {"id": "acid", "name": "Acid bed", "areaM2": 6, "texture": "loam"}],
                         "materials": ["dolomitic-limestone", "sulphur", "straw", "composted-bark"]}
                        """);
        Files.writeString(garden.resolve("journal.jsonl"),
                """
                        {"id": "e1", "date": "2018-11-20", "entry": "planted", "plant": "bc-1", "crop": "blackcurrant", "bed": "north", "bushes": 4}
                        {"id": "e2", "date": "2018-11-20", "entry": "planted", "plant": "bl-1", "crop": "blueberry", "bed": "acid", "bushes": 3}
                        {"id": "e3", "date": "2026-09-20", "entry": "soil-test", "bed": "north", "ph": 6.0}
                        {"id": "e4", "date": "2026-09-20", "entry": "soil-test", "bed": "acid", "ph": 6.0}
                        {"id": "e5", "date": "2026-10-05", "entry": "limed", "bed": "north", "material": "ground-limestone", "grams": 1000}
                        {"id": "e6", "date": "2026-04-05", "entry": "mulched", "bed": "acid", "material": "composted-bark", "depthCm": 5}
                        """);
    }

    private static Cli.Result run(Path in, String line) {
        List<String> words = Stream.concat(Stream.of(line.split(" ")), Stream.of("--today", "2026-11-25")).toList();
        return Cli.in(in).run(words.toArray(String[]::new));
    }

    private static String flat(String text) { return text.replaceAll("\\s+", " "); }

    @Test
    void lime_without_a_garden_splits_and_warns() {
        Cli.Result result = run(folder,
                "lime --soil sandy-loam --ph 5.5 --target 6.5 --area 10 --material ground-limestone");

        assertThat(result.exit()).isZero();
        // RB209: factor 7 x 1.0 = 7 t/ha = 700 g/m2; at most 500 at once
        assertThat(flat(result.out())).contains("7 kg of ground limestone in all, in 2 doses.")
                .contains("First 3.5 kg (350 g/m²")
                .contains("Then 1 more dose, 12 months or more apart, all by the one test").contains("Print disagrees")
                .contains("rinse at least 15 minutes").contains("Never mix lime or ash with ammonium");
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
            // 700 g/m2 of NV 50 (CaO) on 10 m2; hydrated lime has 70; dug in 750 is one dose
            "--bare|7 kg of ground limestone in all, in 1 dose",
            "--bare --material hydrated-lime|5 kg of hydrated lime in all", "--bare --nv-cao 55|= 636 g/m²",
            "--bare --nv-caco3 100|= 625 g/m²", "--bare --stones 20|5.6 kg of ground limestone in all",
            "--bare --depth 40|12 kg of ground limestone in all",
            "--bare --material dolomitic-limestone|of magnesia (MgO) as well",
            "--nv-cao 95|Does the bag use the other scale?", "--nv-caco3 50|Does the bag use the other scale?",
            "--material burnt-lime|Not for gardens"})
    void depth_stones_and_both_scales_count(String more, String said) {
        String line = "lime --soil sandy-loam --ph 5.5 --target 6.5 --area 10 " + more;

        assertThat(flat(run(folder, line).out())).contains(said);
    }

    /** Irish advice: on peat 5.5 where mineral soil wants 6.3. */
    @Test
    void on_peat_the_title_tells_the_ph_that_is_aimed_at() {
        assertThat(flat(run(folder, "lime --soil peat --ph 4.8 --target 6.3 --area 10").out()))
                .startsWith("10 m², from pH 4.8 to 5.5 On peat pH 5.5 is enough; 6.3 is not aimed at.");
        assertThat(flat(run(folder, "lime --soil loam --ph 4.8 --target 6.3 --area 10").out()))
                .startsWith("10 m², from pH 4.8 to 6.3 ").doesNotContain("not aimed at");
    }

    @Test
    void a_bed_that_no_ph_suits_is_told_so_where_lime_is_asked_for() throws IOException {
        Files.writeString(garden.resolve("journal.jsonl"),
                """
                        {"id": "e7", "date": "2020-11-20", "entry": "planted", "plant": "bl-2", "crop": "blueberry", "bed": "north"}
                        """,
                StandardOpenOption.APPEND);

        assertThat(flat(run(garden, "lime north").out())).contains("no pH suits both").contains("to tubs");
    }

    @Test
    void dolomite_tells_the_magnesia_that_print_gives_it() {
        String out = run(folder,
                "lime --soil sandy-loam --ph 5.5 --target 6.5 --area 10 --bare --material dolomitic-limestone").out();

        // 700 g/m2 at 150 kg MgO a tonne: 105 g/m2 of MgO; told as 9 % Mg, 104
        assertThat(flat(out)).contains("It brings 104 g/m² of magnesia (MgO) as well.");
    }

    @Test
    void sulphur_without_a_garden_follows_the_table() {
        // Michigan State: loam, pH 6 to 4.5: 173 g/m2 (1540 lb/acre) on 6 m2
        String out = flat(run(folder, "acidify --soil loam --ph 6 --target 4.5 --area 6 --bare").out());
        assertThat(out).contains("from pH 6 to 4.5 on loam: 173 g/m² of sulphur").contains("1.04 kg of sulphur")
                .contains("two thirds first").contains("away from nitrates");

        assertThat(flat(run(folder, "acidify --ph 6 --target 4.8 --area 6 --free-lime").out())).contains("free lime")
                .doesNotContain("Take care");
        assertThat(flat(run(folder, "acidify --ph 7.4 --target 4.8 --area 6").out()))
                .contains("The table ends at pH 7");
    }

    @Test
    void mulch_without_a_garden_tells_volume_loads_and_paper() {
        String out = flat(run(folder, "mulch --area 4 --depth 5 --material garden-compost").out());
        // 4 m2 x 5 cm = 0.20 m3 before settling (5 to 10 %)
        assertThat(out).contains("220 l of garden compost").contains("74 sheets of newspaper")
                .contains("Open bags away from your face");
        assertThat(flat(run(folder, "mulch --area 4 --material straw --under nothing").out()))
                // laid 20 for 10 cm on 4 m2: 0.80 m3, 32 kg, 2 bales of 23 kg
                .contains("800 l of straw, laid 20 cm deep: 2 bales of 23 kg, about 32 kg.")
                .contains("rots 10 cm/year (computed)").doesNotContain("N more").doesNotContain("newspaper");
        assertThat(flat(run(folder, "mulch --area 4 --material sawdust").out()))
                .contains("about 2.4 g/m² N more for 2");
    }

    @Test
    void json_has_the_same_numbers() {
        assertThat(run(folder, "lime --soil sand --ph 5.5 --target 6.5 --area 10 --bare --json").out().replaceAll("\\s",
                "")).contains("\"gPerM2\":600,\"totalGrams\":6000,\"doses\":1")
                .contains("\"portions\":[{\"grams\":6000,\"gPerM2\":600}]");
        assertThat(run(folder, "mulch --area 4 --material straw --json").out().replaceAll("\\s", ""))
                .contains("\"litres\":800,\"kg\":32,\"barrows\":10,\"bags\":16,\"bales\":1.39")
                .contains("\"under\":\"paper\",\"sheets\":74");
        assertThat(run(garden, "lime north --json").out().replaceAll("\\s", "")).contains("\"bed\":\"north\"")
                .contains("\"givenSinceTestGPerM2\":100");
    }

    @Test
    void in_a_garden_it_tells_need_given_due_and_next() {
        String lime = flat(run(garden, "lime north").out());
        // factor 7 x 0.5 = 350 g/m2, less 20 % stones = 280, less 100 given = 180
        assertThat(lime).contains("pH 6, tested on 2026-09-20, 2 months old; its crops want pH 6.5.")
                .contains("Given and not tested since, as ground limestone: 100 g/m².")
                .contains("1.8 kg of magnesian (dolomitic) limestone in all").contains("Next on 3 Dec 2027");
        assertThat(flat(run(garden, "lime acid").out())).contains("This crop wants acid soil");

        String sulphur = flat(run(garden, "acidify").out());
        assertThat(sulphur).contains("Acid bed").doesNotContain("North bed").contains("Next on ");

        String mulch = flat(run(garden, "mulch acid").out());
        assertThat(mulch).contains("of composted bark lies there, laid 5 cm deep on 5 Apr 2026")
                .contains("l of composted bark, laid").doesNotContain("newspaper").contains("Next on ");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"lime --ph 14.2 --target 6.5 --area 10|1|from 3 to 10",
            "lime --ph 5.5 --area 10|2|--target is missing", "lime --ph 5.5 --target 6.5|2|--area is missing",
            "lime --ph 5.5 --target 6.5 --area 0|1|more than 0 m²", "lime --target 6.5 --area 10|2|--ph is missing",
            "lime --ph 5.5 --target 6.5 --area 10 --material limstone|2|there is no lime",
            "lime --ph 5.5 --target 6.5 --area 10 --soil mud|2|there is no soil \"mud\"",
            "lime --ph 5.5 --target 6.5 --area 10 --stones 120|1|0 to 99 % stones",
            "lime --ph 5.5 --target 6.5 --area 10 --nv-cao 120|1|pure quicklime",
            "lime --ph 5.5 --target 6.5 --area 10 --nv-cao 50 --nv-caco3 90|2|not both",
            "acidify --ph 5.5 --target 4.8 --area 6 --material sulfur|2|\"sulphur\"",
            "mulch --depth 7|2|--area is missing", "mulch --area 4 --depth 700|1|at most 60 cm",
            "mulch --area 4 --material hay|2|there is no mulch \"hay\"",
            "mulch --area 4 --under carpet|2|paper, card or nothing", "mulch --area -4|1|more than 0 m²"})
    void wrong_facts_get_a_message_that_helps(String line, int exit, String said) {
        Cli.Result result = run(folder, line);

        assertThat(flat(result.err())).contains(said);
        assertThat(result.exit()).isEqualTo(exit);
    }

    @ParameterizedTest
    @CsvSource({"lime west", "acidify west", "mulch west", "lime north --ph 5", "mulch --material straw"})
    void a_garden_is_asked_by_its_own_words(String line) { assertThat(run(garden, line).exit()).isEqualTo(2); }
}

package org.oldwood.cli.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** {@code feed}, with and without a garden. */
class FeedCommandTest {
    @TempDir
    Path folder;

    private Cli.Result feed(String... args) {
        String[] all = new String[args.length + 3];
        all[0] = "feed";
        System.arraycopy(args, 0, all, 1, args.length);
        all[args.length + 1] = "--today";
        all[args.length + 2] = "2026-11-25";
        return Cli.in(folder).run(all);
    }

    private static String flat(String text) { return text.replaceAll("\\s+", " "); }

    @Test
    void without_a_garden_it_tells_need_dressings_and_cautions() {
        Cli.Result result = feed("--crop", "blackcurrant", "--area", "4", "--material", "dried-blood");

        assertThat(result.exit()).isZero();
        // 10 g N/m2 where the soil is not known, 12.5 % N of which 66 % count: 485 g on 4 m2
        assertThat(flat(result.out()))
                .contains("Need N 10, P2O5 4, K2O 12, MgO 5 g/m² a year, by British tables (RB209)")
                .contains("at bud burst: 240 g of dried blood").contains("after flowering: 240 g of dried blood")
                .contains("no material at hand brings more than a trace of potash and magnesia")
                .contains("no later than 30 June").contains("Never mix lime or ash with ammonium or animal feeds")
                .contains("ocal rules").contains("The product label comes first").doesNotContain("Raw manure");
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    /** Half of what is told without a garden is of another half of the earth, or of another country's law. */
    @Test
    void a_gardens_own_half_of_the_earth_and_country_are_told() throws IOException {
        Cli.in(folder).run("start", "own", "--name", "Own", "--at", "-43,147.3", "--zone", "Australia/Hobart",
                "--plants", "blackcurrant=3", "--planted", "2022", "--today", "2026-06-01");
        String feed = flat(feed("--garden", "own").out());
        String mulch = flat(Cli.in(folder).run("mulch", "--garden", "own", "--today", "2026-06-01").out());

        assertThat(feed).contains("after flowering: ", "no later than 30 December").doesNotContain("June",
                "in the south", "Great Britain");
        // what lapsed in September is no longer told as to be given at bud burst
        assertThat(feed).contains("Give after flowering").doesNotContain("Give at bud burst");
        // 2 g of bone meal beside 600 g of dried blood are nobody's work
        assertThat(flat(Cli.in(folder).run("feed", "--garden", "own", "--today", "2026-06-10").out()))
                .containsPattern("Give after flowering: \\d+ g of dried blood dried blood:");
        assertThat(mulch).contains("Take care").doesNotContain("Great Britain");
        assertThat(flat(Cli.in(folder).run("mulch", "--area", "4", "--today", "2026-06-01").out()))
                .contains("Great Britain");
    }

    /** Clark and Zheng 2020: 0.3 g N a litre of mix and season; 40 l at 21 % N are 57 g, however many parts it is given in. */
    @ParameterizedTest
    @CsvSource({"52, 0, 2027-02-01", "-43.5, 172.6, 2026-08-01"})
    void a_tubs_parts_come_to_its_years_need(double latitude, double longitude, String today) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Tubs", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": %s, "longitude": %s, "zone": "UTC"}, "materials": ["ammonium-sulphate"],
                 "beds": [{"id": "tubs", "areaM2": 0.3, "tubLitres": 40}]}
                """.formatted(latitude, longitude));
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id":"e1","date":"2024-07-01","entry":"planted","plant":"bl","crop":"blueberry","bed":"tubs","bushes":2}
                        """);

        Matcher bought = Pattern.compile("ammonium sulphate: (\\d+) g")
                .matcher(Cli.in(folder).run("shopping", "--today", today).out());
        assertThat(bought.find()).isTrue();
        assertThat(Integer.parseInt(bought.group(1))).isBetween(52, 60);
        // nobody lays 8 cm over newspaper in a tub
        assertThat(Cli.in(folder).run("shopping", "--today", today).out()).doesNotContain("newspaper", "bark");
        assertThat(Cli.in(folder).run("mulch", "--today", today).out()).doesNotContain("laid");
    }

    /** Lime of October drives the ammonium of December off: said of the feed and of the whole plan, nowhere else. */
    @Test
    void what_gives_way_is_told_where_it_matters() throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl")) {
            Files.copy(Path.of("demo-data/fire-station-hedges", name), folder.resolve(name));
        }
        for (String told : List.of("tasks", "feed", "calendar")) {
            assertThat(Cli.in(folder).run(told, "--today", "2026-11-29").err()).as(told).contains("gives way to");
        }
        for (String[] quiet : List.of(new String[]{"tasks", "week"}, new String[]{"tasks", "1"}, new String[]{"now"},
                new String[]{"shopping"}, new String[]{"lime"})) {
            Cli.Result result = Cli.in(folder)
                    .run(Stream.concat(Stream.of(quiet), Stream.of("--today", "2026-11-29")).toArray(String[]::new));
            assertThat(result.exit()).isZero();
            assertThat(result.err()).as(String.join(" ", quiet)).doesNotContain("gives way to");
        }
    }

    /** In February it is too late for the lime that April's feed would lose its nitrogen to. */
    @Test
    void lime_says_what_its_bed_waits_for() throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl")) {
            Files.copy(Path.of("demo-data/terrace-school", name), folder.resolve(name));
        }
        assertThat(Cli.in(folder).run("lime", "cane-terrace", "--today", "2027-02-06").out().replaceAll("\\s+", " "))
                .contains("Next nothing is planned: Lime cane terrace gives way to \"Feed ", "keep 90 days between");
    }

    @ParameterizedTest(name = "{0} on {1}: {2}")
    @CsvSource({"blackcurrant, clay, N 12", "blackcurrant, sand, N 16", "gooseberry, silt-loam, N 7",
            "summer-raspberry, loam, N 10"})
    void the_soil_decides_the_nitrogen(String crop, String soil, String need) {
        assertThat(feed("--crop", crop, "--area", "10", "--soil", soil).out()).contains("Need   " + need + ",");
    }

    @Test
    void indices_growth_age_and_school_count() {
        assertThat(feed("--crop", "redcurrant", "--area", "5", "--index", "P=0,K=1,Mg=3").out())
                .contains("P2O5 11, K2O 18 g/m²");
        assertThat(feed("--crop", "gooseberry", "--area", "5", "--growth", "strong").out()).contains("Need   N 4,");
        assertThat(feed("--crop", "blueberry", "--area", "3", "--age", "8").out()).contains("Need   N 7.3 g/m²")
                .contains("tells no need of phosphate, potash, magnesia");
        assertThat(
                feed("--crop", "blueberry", "--area", "3", "--school", "cornell", "--bushes", "2", "--age", "6").out())
                .contains("Cornell");
        assertThat(feed("--crop", "redcurrant", "--area", "5", "--before-planting").out())
                .contains("P2O5 5, K2O 5, MgO 8.5 g/m²").contains("before planting, worked in");
    }

    @Test
    void a_label_will_do_for_a_feed_and_two_materials_are_solved() {
        // 10 g N and 12 g K2O on 10 m2 of loam: in halves of N from 21-0-0, K2O from 0-0-50
        String out = flat(feed("--crop", "redcurrant", "--area", "10", "--soil", "loam", "--material",
                "ammonium-sulphate,sulphate-of-potash").out());
        assertThat(out).contains("240 g of ammonium sulphate and 240 g of sulphate");

        assertThat(flat(feed("--crop", "redcurrant", "--area", "10", "--analysis", "10-10-10").out()))
                .contains("of your feed").contains("read the label");
    }

    @Test
    void json_has_the_same_numbers() {
        String json = flat(feed("--crop", "blackcurrant", "--area", "4", "--material", "dried-blood", "--json").out())
                .replace(" ", "");

        assertThat(json).contains("\"need\":{\"N\":10,\"P2O5\":4,\"K2O\":12,\"MgO\":5}")
                .contains("\"material\":\"dried-blood\",\"name\":\"driedblood\",\"grams\":240")
                .contains("\"assumed\":[").contains("\"cautions\":[");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|',
            value = {"--crop blackcurant --area 4|2|Did you mean \"blackcurrant\"?",
                    "--crop blackcurrant|2|--area is missing", "--area 4|2|go with --crop",
                    "--crop blackcurrant --area 4 --material dried-blod|2|Did you mean \"dried-blood\"?",
                    "--crop blackcurrant --area 4 --soil mud|2|there is no soil \"mud\"",
                    "--crop blackcurrant --area 4 --growth huge|2|weak, normal or strong",
                    "--crop blackcurrant --area 4 --index N=3|2|--index takes P, K and Mg",
                    "--crop blackcurrant --area 4 --school msu|2|there is no school \"msu\"",
                    "--crop blackcurrant --area 4 --analysis strong|2|7-7-7 for example",
                    "--crop blackcurrant --area 4 --analysis 60-60-10|1|adds up to 130 %",
                    "--crop blackcurrant --area 0|1|more than 0 m²", "--crop blackcurrant --area four|2|'four'",
                    "--crop blueberry --area 3 --school cornell|1|how many bushes"})
    void wrong_facts_get_a_message_that_helps(String args, int exit, String said) {
        Cli.Result result = feed(args.split(" "));

        assertThat(flat(result.err())).contains(said);
        assertThat(result.exit()).isEqualTo(exit);
    }

    private void garden(String more) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
                 "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
                 "beds": [{"id": "north", "name": "North bed", "areaM2": 10, "texture": "loam"},
                          {"id": "south", "name": "South bed", "areaM2": 4}],
                 "materials": ["ammonium-sulphate", "sulphate-of-potash"]}
                """);
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id": "e1", "date": "2018-11-20", "entry": "planted", "plant": "gb-1", "crop": "gooseberry", "bed": "north", "bushes": 4}
                        """
                        + more);
    }

    @Test
    void in_a_garden_it_tells_each_stand_what_was_given_and_the_next_day() throws IOException {
        garden("""
                {"id": "e2", "date": "2026-11-10", "entry": "fed", "bed": "north", "material": "ammonium-sulphate", "grams": 100}
                """);
        String out = flat(feed().out());

        // 100 g of 21 % N on 10 m2, of which winter leaves 1 - 0.6 x 97/106
        assertThat(out).contains("in North bed, season 2027: 10 m², 4 bushes")
                .contains("Need N 10, P2O5 4, K2O 12, MgO 5 g/m²").contains("Given N 0.9 g/m²")
                .contains("Due N 9.1, P2O5 4, K2O 12, MgO 5 g/m²").contains("Next on ");
        assertThat(feed("north", "--json").out().replaceAll("\\s", "")).contains("\"given\":{\"N\":0.9")
                .contains("\"next\":\"on");
        assertThat(feed("south").err()).contains("Nothing stands there");
        assertThat(feed("east").exit()).isEqualTo(2);
        assertThat(feed("north", "--crop", "gooseberry", "--area", "3").exit()).isEqualTo(2);
    }

    @Test
    void a_garden_may_bring_its_own_material_and_a_wrong_one_is_refused() throws IOException {
        garden("");
        Files.createDirectories(folder.resolve("materials"));
        Path mine = folder.resolve("materials/mine.json");
        Files.writeString(mine, """
                {"feeds": [{"id": "shed-mix", "name": "shed mix", "tags": ["quick"],
                 "analysis": {"N": 20, "P2O5": 8, "K2O": 24}, "cautions": ["dust"]}]}
                """);
        assertThat(feed("--crop", "gooseberry", "--area", "10", "--material", "shed-mix").out())
                .contains("of shed mix");

        Files.writeString(mine, Files.readString(mine).replace("\"N\": 20", "\"N\": 98"));
        Cli.Result wrong = feed("--crop", "gooseberry", "--area", "10", "--material", "shed-mix");
        assertThat(wrong.exit()).isEqualTo(1);
        assertThat(flat(wrong.err())).contains("130 %").contains("materials/mine.json");
    }
}

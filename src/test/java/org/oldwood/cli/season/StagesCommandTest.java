package org.oldwood.cli.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** The command {@code stages}: dates, chill and frost, with a climate, with weather, with neither. */
class StagesCommandTest {
    @TempDir
    Path folder;

    /** Oxford 1971-2000, the years of the flowers that were seen at Chinnor near by. */
    private static final String OXFORD = "\"climate\": {\"meanMaxC\": [7.2,7.6,10.3,12.7,16.6,19.5,22.3,21.9,18.6,14.3,10.1,8.0],"
            + " \"meanMinC\": [1.9,1.7,3.4,4.7,7.5,10.5,12.8,12.6,10.5,7.4,4.3,2.8]},";

    @BeforeEach
    void planted() throws IOException { Files.writeString(folder.resolve("journal.jsonl"), """
            {"id":"e1","date":"2020-03-15","entry":"planted","plant":"gb","crop":"gooseberry","bed":"a"}
            {"id":"e2","date":"2020-03-15","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a"}
            {"id":"e3","date":"2020-03-15","entry":"planted","plant":"hk","crop":"haskap","bed":"a"}
            """); }

    /** A longitude far from every weather station: no climate is known there. */
    private static final int OPEN_SEA = -35;

    private void garden(double latitude, String climate)
            throws IOException { Files.writeString(folder.resolve("garden.json"), """
                    {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                     "site": {"latitude": %s, "longitude": %s, "zone": "UTC"}, %s
                     "beds": [{"id": "a", "areaM2": 4}]}
                    """.formatted(latitude, climate.isEmpty() ? OPEN_SEA : 0, climate)); }

    private Cli.Result run(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today";
        all[args.length + 1] = "2027-01-10";
        Cli.Result run = Cli.in(folder).run(all);
        return new Cli.Result(run.exit(), run.out().replaceAll("\\s+", " "), run.err());
    }

    /** First flower of gooseberry at Chinnor, mean of 28 years: 5 April (fitter-2002). */
    @Test
    void gooseberry_flowers_when_it_was_seen_to() throws IOException {
        garden(51.76, OXFORD);

        Cli.Result run = run("stages", "gb", "--json");

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        LocalDate flower = date(run.out(), "\"first-flower\", \"bbch\": \"60\", \"date\": \"");
        assertThat(flower.getDayOfYear()).isCloseTo(95, within(5));
        assertThat(run.out()).contains("\"crop\": \"gooseberry\"", "\"basis\": \"modelled\"")
                .contains("\"sources\": [ \"fitter-2002\"").doesNotContain("blackcurrant");
    }

    /** Yakima 1991-2020, daily record: mean last frost on day 129, mean first on day 279. */
    @Test
    void frost_stands_in_text_and_json() throws IOException {
        garden(46.6, "\"climate\": \"yakima\",");

        String json = run("stages", "blackcurrant", "--json").out();
        String text = run("stages", "blackcurrant").out();

        LocalDate last = date(json, "\"lastOfSpring\": \"");
        assertThat(last.getDayOfYear()).isCloseTo(129, within(7));
        assertThat(date(json, "\"firstOfAutumn\": \"").getDayOfYear()).isCloseTo(279, within(7));
        assertThat(json).contains("\"yearsInHundredInFlower\": ", "\"harmBeginsC\": -2.2");
        assertThat(text).contains("Half the years have their last frost of spring after " + last)
                .contains("full flower: harm begins at -1.5 °C (read); such a night from 2027-0");
    }

    @Test
    void chill_is_told_beside_what_each_crop_wants() throws IOException {
        garden(-42.9, "\"climate\": \"hobart\",");

        Cli.Result run = run("stages");

        assertThat(run.out()).contains("season 2026-27", "Chill from 2026-04-01 to 2026-08-31")
                .contains("the crop wants 1800 h, by source 1000 to 2000 (read)")
                .contains("enough by some sources, short by others")
                .contains("chill portions; how many the crop wants is not known");
        assertThat(run("stages", "--json").out()).contains("\"answer\": \"doubtful\"", "\"answer\": \"unknown\"");
    }

    @Test
    void unmet_chill_widens_the_dates_and_is_told_beside_them() throws IOException {
        garden(30, "\"climate\": {\"meanMaxC\": [19,20,23,26,29,32,33,33,31,27,23,20],"
                + " \"meanMinC\": [9,10,12,15,19,22,23,23,21,16,12,9]},");

        String text = run("stages", "blackcurrant").out();

        assertThat(text).contains("± 14 d", "chill falls short, so buds may open late and unevenly")
                .contains("too little");
        assertThat(run("stages", "blackcurrant", "--json").out()).contains("\"answer\": \"short\"");
    }

    @Test
    void without_a_climate_it_says_so_and_what_to_give() throws IOException {
        garden(52, "");

        Cli.Result run = run("stages", "gooseberry");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("No climate is known here", "lowland Britain's by the month")
                .contains("give garden.json a \"climate\"", "oldwood weather add").contains("calendar");
        assertThat(run("stages", "gooseberry", "--json").out()).contains("\"basis\": \"calendar\"")
                .doesNotContain("\"chill\"", "\"frost\"");
    }

    /** What a task's window rests on: the stage with its model and ±, or what to give for one. */
    @Test
    void why_shows_how_a_window_follows_from_stages() throws IOException {
        garden(51.76, OXFORD);
        String task = "pick-currants@a.blackcurrant.stool@2027";
        assertThat(run("why", task).out())
                .contains("The window opens", "blackcurrant: ripe for picking: warmth above 5 °C").contains("± ")
                .doesNotContain("For this garden's own");

        garden(30, "\"climate\": {\"meanMaxC\": [19,20,23,26,29,32,33,33,31,27,23,20],"
                + " \"meanMinC\": [9,10,12,15,19,22,23,23,21,16,12,9]},");
        assertThat(run("why", "frost-watch@a.haskap.stool@2027", "--not").exit()).isZero();
        assertThat(run("why", "--not", "frost-watch", "a.blackcurrant.stool").out())
                .contains("comes in fewer than 1 of 100 years", "it is not due");
        assertThat(run("why", "see-bud-burst@garden@2027").out()).contains("chill falls short", "the crop wants");

        garden(52, "");
        assertThat(run("why", task).out()).contains("no climate is known here", "give garden.json a \"climate\"");
        assertThat(run("why", "frost-watch@a.blackcurrant.stool@2027").out())
                .contains("how often frost harms blackcurrants in flower here is not known");
    }

    @Test
    void three_years_of_weather_make_a_climate_and_two_do_not() throws IOException {
        garden(52, "");
        weather(2);
        assertThat(run("stages", "gooseberry").out()).contains("No climate is known here");

        weather(3);
        String text = run("stages", "gooseberry").out();

        assertThat(text).contains("the garden's own weather.csv (means of 3 years; from 10 years on")
                .contains("modelled", "Chill from 2026-10-01");
    }

    /** Whole years before 2027; winters of 2 to 8 °C, summers of 12 to 22 °C. */
    private void weather(int years) throws IOException {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate end = LocalDate.of(2027, 1, 1);
        for (LocalDate day = end.minusYears(years); day.isBefore(end); day = day.plusDays(1)) {
            double warm = 0.5 - 0.5 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365);
            long min = Math.round(2 + 10 * warm);
            text.append(day + "," + min + "," + (min + 6 + Math.round(4 * warm)) + ",2\n");
        }
        Files.writeString(folder.resolve("weather.csv"), text);
    }

    @Test
    void a_name_that_is_not_known_gets_a_hint_and_exit_code_2() throws IOException {
        garden(52, "");

        Cli.Result run = run("stages", "goosebery");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("no crop or plant \"goosebery\"", "gooseberry");
    }

    @Test
    void a_climate_that_is_not_known_or_of_the_other_half_is_told_by_its_place() throws IOException {
        garden(52, "\"climate\": \"cambrige\",");
        Cli.Result unknown = run("stages");
        assertThat(unknown.exit()).isEqualTo(1);
        assertThat(unknown.err()).contains("garden.json:2", "cambridge");

        garden(52, "\"climate\": \"hobart\",");
        Cli.Result other = run("stages");
        assertThat(other.exit()).isEqualTo(1);
        assertThat(other.err()).contains("the other half of the earth", "south is negative");
    }

    @Test
    void without_a_garden_it_says_how_to_begin() {
        Cli.Result run = run("stages", "--garden", folder.resolve("none").toString());

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("is not a folder", "oldwood start");
    }

    /** Lowland Britain's calendar is no day to reckon a Polish spring's frosts on. */
    @Test
    void frost_is_not_told_of_flowers_that_no_model_dates() throws IOException {
        garden(52.2, "\"climate\": \"warsaw\",");
        Files.createDirectories(folder.resolve("crops/haskap"));
        Files.writeString(folder.resolve("crops/haskap/stages.json"),
                Files.readString(Path.of("src/main/resources/org/oldwood/crops/haskap/stages.json"))
                        .replaceFirst("(?s)\"models\": .*(?=\"frost\")", ""));

        assertThat(run("stages", "haskap").out()).contains("How often frost harms its flowers cannot be told")
                .doesNotContain("of 100 years");
        assertThat(run("stages", "gooseberry").out()).contains("of 100 years");
    }

    /** One winter has one number of portions, also where a crop's own need is told in them. */
    @Test
    void a_need_in_portions_stands_beside_the_same_portions() throws IOException {
        garden(52.2, "\"climate\": \"warsaw\",");
        Files.createDirectories(folder.resolve("crops/haskap"));
        Files.writeString(folder.resolve("crops/haskap/stages.json"),
                Files.readString(Path.of("src/main/resources/org/oldwood/crops/haskap/stages.json")).replaceFirst(
                        "\"frost\"",
                        "\"chill\": {\"model\": \"dynamic\", \"need\": {\"is\": 40, \"unit\": \"portions\","
                                + " \"source\": \"memory\", \"seen\": \"memory\"}}, \"frost\""));

        String json = run("stages", "haskap", "--json").out();

        assertThat(json.replaceFirst("(?s).*\"portions\": ([0-9.]+).*", "$1")).matches("[0-9.]+")
                .isEqualTo(json.replaceFirst("(?s).*\"given\": ([0-9.]+).*", "$1"));
    }

    private static LocalDate date(String json, String before) {
        assertThat(json).contains(before);
        int at = json.indexOf(before) + before.length();
        return LocalDate.parse(json.substring(at, at + 10));
    }
}

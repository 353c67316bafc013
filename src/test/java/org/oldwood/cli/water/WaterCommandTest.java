package org.oldwood.cli.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** The command {@code water}: what beds hold, compared, with and without climate and weather. */
class WaterCommandTest {
    @TempDir
    Path folder;

    private static final String CLIMATE = "\"climate\": \"cambridge\",";

    @BeforeEach
    void garden() throws IOException {
        garden(CLIMATE);
        journal("");
    }

    private void garden(String climate) throws IOException { Files.writeString(folder.resolve("garden.json"), """
            {"format": 1, "name": "Hedge rows", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
             "site": {"latitude": 52.2, "longitude": %s, "heightM": 20, "zone": "Europe/London"},
             %s
             "beds": [
              {"id": "dry", "name": "By the hedge", "areaM2": 4, "texture": "sand", "competing": 0.3},
              {"id": "damp", "name": "By the shed", "areaM2": 4, "texture": "silt-loam",
               "roof": {"areaM2": 12, "surface": "tiles"}, "tapLitresPerMinute": 10},
              {"id": "empty", "name": "Empty", "areaM2": 2}]}
            """.formatted(climate.isEmpty() ? -35 : 0.1, climate)); }

    private void journal(String more) throws IOException { Files.writeString(folder.resolve("journal.jsonl"), """
            {"id":"e1","date":"2020-11-15","entry":"planted","plant":"a","crop":"blackcurrant","bed":"dry","bushes":3}
            {"id":"e2","date":"2020-11-15","entry":"planted","plant":"b","crop":"blackcurrant","bed":"damp","bushes":3}
            """ + more); }

    private Cli.Result run(String... args) {
        Cli.Result run = Cli.in(folder).run(args);
        return new Cli.Result(run.exit(), run.out().replaceAll("\\s+", " "), run.err());
    }

    private Cli.Result july(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today";
        all[args.length + 1] = "2026-07-10";
        return run(all);
    }

    @Test
    void tells_what_each_bed_holds_and_when_to_water() {
        Cli.Result run = july("water");

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("By the hedge (dry)", "Water now: ", "l per bush", "No plant stands here")
                .contains("2026-07-10 >", "Do not let it run short now");
    }

    @Test
    void one_bed_or_a_clear_word_where_there_is_none() {
        assertThat(july("water", "damp").out()).contains("damp").doesNotContain("By the hedge");
        Cli.Result wrong = july("water", "dmap");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("there is no bed", "damp");
    }

    @Test
    void the_damp_bed_stands_first_in_the_comparison() {
        String out = july("water", "--compare").out();

        assertThat(out.indexOf("damp")).isBetween(1, out.indexOf("dry") - 1);
        assertThat(out).contains("As if full-grown blackcurrant filled each bed", "30 %")
                .contains("in a summer of mean weather", "A bush is best off in By the shed");
    }

    @Test
    void past_summers_tell_how_dry_it_gets() throws IOException {
        weather(2019, 2025);

        String out = july("water", "--compare").out();

        assertThat(out).contains("means of 7 measured summers, 2019 to 2025", "d in 2022");
        assertThat(out).doesNotContain("summer of mean weather");
    }

    @Test
    void the_comparison_is_told_to_other_programs_too() throws IOException {
        weather(2024, 2025);

        String json = july("water", "--compare", "--crop", "gooseberry", "--json").out();

        assertThat(json).contains("\"crop\": \"gooseberry\"", "\"measured\": true")
                .contains("\"summers\": [ \"2024\", \"2025\" ]")
                .contains("\"bed\": \"empty\"", "\"daysShort\":", "\"roofLitres\":");
    }

    @Test
    void a_crop_that_is_not_known_is_refused_with_a_hint() {
        Cli.Result run = july("water", "--compare", "--crop", "goosebery");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("there is no crop \"goosebery\"", "gooseberry");
    }

    @Test
    void wind_makes_a_bed_thirstier() throws IOException {
        weather(2019, 2025);
        double still = meanShort("empty");
        Path file = folder.resolve("garden.json");
        Files.writeString(file,
                Files.readString(file).replace("\"name\": \"Empty\"", "\"name\": \"Empty\", \"windy\": true"));

        assertThat(meanShort("empty")).isGreaterThan(still);
    }

    private double meanShort(String bed) {
        String json = july("water", "--compare", "--json").out();
        String of = json.substring(json.indexOf("\"bed\": \"" + bed + "\""));
        String after = of.substring(of.indexOf("\"meanDaysShort\": ") + 17);
        return Double.parseDouble(after.substring(0, after.indexOf(',')));
    }

    /** Seven days dry, one wet, through the years; 2022 has half the rain. */
    private void weather(int first, int last) throws IOException {
        StringBuilder days = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate end = LocalDate.of(last, 12, 31);
        for (LocalDate day = LocalDate.of(first, 1, 1); !day.isAfter(end); day = day.plusDays(1)) {
            double warm = 10 - 8 * Math.cos(2 * Math.PI * day.getDayOfYear() / 365);
            double rain = day.getDayOfMonth() % 8 == 0 ? 16 : 0;
            days.append(day).append(',').append(Math.rint(warm - 5)).append(',').append(Math.rint(warm + 6)).append(',')
                    .append(day.getYear() == 2022 ? rain / 2 : rain).append('\n');
        }
        Files.writeString(folder.resolve("weather.csv"), days);
    }

    @Test
    void without_a_climate_it_says_what_to_give_and_the_common_guide() throws IOException {
        garden("");

        Cli.Result run = july("water");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("cannot be said", "give garden.json a \"climate\"", "25 mm/wk");
    }

    @Test
    void without_a_climate_other_programs_get_the_guide_too() throws IOException {
        garden("");

        String json = july("water", "--json").out();

        assertThat(json).contains("\"lacking\": \"the garden's climate is not known")
                .contains("\"bed\": \"damp\"", "\"guideMmAWeek\": 25", "\"totalAvailableMm\": 42")
                .doesNotContain("heldMm");
    }

    @Test
    void json_has_the_account_of_each_bed() {
        String json = july("water", "--json").out();

        assertThat(json).contains("\"date\": \"2026-07-10\"", "\"bed\": \"dry\"", "\"short\": true")
                .contains("\"refillNow\": {", "\"each\": \"bush\"", "\"sources\": [ \"fao-56\"");
        assertThat(json).doesNotContain("\"lacking\"", "\"bed\": \"empty\"");
    }

    @Test
    void a_bed_asked_for_shows_what_its_figures_rest_on() {
        assertThat(july("water", "damp").out()).contains("other views of it", "(from memory)", "hug-redcurrant")
                .contains("Sources: fao-56");
        assertThat(july("water").out()).doesNotContain("other views of it");
    }

    @Test
    void options_that_do_not_go_together_are_refused() {
        assertThat(july("water", "--compare", "damp").err()).contains("leave out damp");
        Cli.Result run = july("water", "--crop", "gooseberry");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--crop goes with --compare");
    }

    @Test
    void weather_that_cannot_be_is_told_by_line_and_stops_it() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), "date,tmin,tmax,rain\n2026-06-01,10,5,0\n");

        for (String[] command : new String[][]{{"water"}, {"water", "--compare"}, {"tasks", "--craft", "water"}}) {
            Cli.Result run = july(command);
            assertThat(run.exit()).isEqualTo(1);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).contains("weather.csv:2", "least temperature above");
        }
    }

    @Test
    void without_a_garden_it_says_how_to_begin_one() {
        Cli.Result run = Cli.in(folder.resolve("..")).run("water");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("holds no garden.json", "oldwood start");
    }

    @Test
    void a_watering_and_a_wet_note_leave_more_in_the_ground() throws IOException {
        double before = held();
        journal("""
                {"id":"e3","date":"2026-07-09","entry":"watered","bed":"damp","minutes":3}
                """);
        double watered = held();
        journal("""
                {"id":"e3","date":"2026-07-09","entry":"moisture","bed":"damp","feel":"field-capacity"}
                """);

        assertThat(watered).isGreaterThan(before);
        assertThat(held()).isGreaterThan(before);
        assertThat(july("water", "damp").out()).contains("mm wetter than the account");
    }

    private double held() { return number(july("water", "damp", "--json").out(), "heldMm"); }

    @Test
    void what_one_plant_got_counts_by_its_share() throws IOException {
        double before = held();
        journal("""
                {"id":"e3","date":"2026-07-09","entry":"watered","plant":"b","litres":20}
                """);
        double plant = held();
        journal("""
                {"id":"e3","date":"2026-07-09","entry":"watered","bed":"damp","litres":20}
                """);

        assertThat(plant).isGreaterThan(before);
        assertThat(held()).isEqualTo(plant);
    }

    @Test
    void a_watering_in_minutes_without_a_known_flow_is_told() throws IOException {
        journal("""
                {"id":"e3","date":"2026-07-09","entry":"watered","bed":"dry","minutes":20}
                """);

        assertThat(july("water", "dry").out()).contains("waterings noted in minutes are left out, 1 of them")
                .contains("tapLitresPerMinute");
    }

    @Test
    void measured_rain_counts_before_the_means() throws IOException {
        double mean = held();
        StringBuilder dry = new StringBuilder("date,tmin,tmax,rain\n");
        for (int day = 1; day <= 30; day++) {
            dry.append(String.format("2026-06-%02d,12,26,0%n", day));
        }
        Files.writeString(folder.resolve("weather.csv"), dry);

        assertThat(held()).isLessThan(mean);
    }

    private static double number(String json, String name) {
        String after = json.substring(json.indexOf("\"" + name + "\": ") + name.length() + 4);
        return Double.parseDouble(after.substring(0, after.indexOf(',')));
    }

    @Test
    void notes_that_pull_one_way_are_told() throws IOException {
        journal("""
                {"id":"m1","date":"2026-05-20","entry":"moisture","bed":"damp","feel":"dry"}
                {"id":"m2","date":"2026-06-05","entry":"moisture","bed":"damp","feel":"dry"}
                {"id":"m3","date":"2026-06-20","entry":"moisture","bed":"damp","feel":"dry"}
                """);

        assertThat(july("water", "damp").out()).contains("Your last 3 notes all found it drier", "mm a week");
    }

    @Test
    void the_feel_of_soil_is_shown_without_a_garden() {
        Cli.Result run = run("water", "--feel", "--garden", folder.toString());

        assertThat(run.out()).contains("On sandy loams", "slightly-moist (25-50 %)", "nrcs-feel");
    }

    @Test
    void the_feel_of_a_beds_own_soil_is_shown_when_asked_and_nothing_is_noted() throws IOException {
        String before = Files.readString(folder.resolve("journal.jsonl"));

        Cli.Result run = run("note", "moisture", "damp", "--feel", "?");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("oldwood note moisture damp --feel moist", "very-moist (75-100 %)")
                .contains("nrcs-feel").doesNotContain("On sands");
        assertThat(Files.readString(folder.resolve("journal.jsonl"))).isEqualTo(before);
        assertThat(run("note", "moisture", "dmap", "--feel", "?").exit()).isEqualTo(2);
    }

    @Test
    void a_bed_or_plant_may_be_named_without_its_option() throws IOException {
        assertThat(run("note", "moisture", "damp", "--feel", "moist").exit()).isZero();
        assertThat(run("note", "watered", "b", "--litres", "9").exit()).isZero();
        assertThat(run("note", "watered", "dry", "--litres", "20").exit()).isZero();

        assertThat(Files.readString(folder.resolve("journal.jsonl"))).contains("\"bed\":\"damp\",\"feel\":\"moist\"")
                .contains("\"plant\":\"b\",\"litres\":9").contains("\"bed\":\"dry\",\"litres\":20");
        Cli.Result nowhere = run("note", "watered", "--litres", "9");
        assertThat(nowhere.exit()).isEqualTo(2);
        assertThat(nowhere.err()).contains("say which bed or plant");
        assertThat(run("note", "moisture", "--feel", "dry").err()).contains("say which: --bed ID");
    }

    @Test
    void the_south_has_the_same_summer_half_a_year_later() throws IOException {
        Files.writeString(folder.resolve("garden.json"), Files.readString(folder.resolve("garden.json"))
                .replace("52.2", "-42.9").replace("\"cambridge\"", "\"hobart\""));

        Cli.Result run = run("water", "dry", "--today", "2027-01-10");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Water now: ");
    }

    @Test
    void the_plan_waters_what_would_run_short_with_litres() {
        Cli.Result run = run("tasks", "--craft", "water", "--json", "--today", "2026-11-25");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("water-short", "runs short about", "l per bush");
    }

    @Test
    void the_plan_counts_measured_rain_and_waterings_as_water_does() throws IOException {
        String[] plan = {"tasks", "--craft", "water", "--json", "--today", "2026-07-01"};
        assertThat(run(plan).out()).doesNotContain("water-next@damp");
        StringBuilder dry = new StringBuilder("date,tmin,tmax,rain\n");
        for (LocalDate day = LocalDate.of(2026, 5, 1); day.isBefore(LocalDate.of(2026, 7, 1)); day = day.plusDays(1)) {
            dry.append(day).append(",12,26,0\n");
        }
        Files.writeString(folder.resolve("weather.csv"), dry);

        assertThat(run(plan).out()).contains("water-next@damp", "By the shed runs short next");
        journal("""
                {"id":"e3","date":"2026-07-01","entry":"watered","bed":"damp","litres":100}
                """);
        assertThat(run(plan).out()).doesNotContain("water-next@damp");
    }

    @Test
    void without_a_climate_the_plan_says_what_is_lacking() throws IOException {
        garden("");

        Cli.Result run = run("why", "--not", "water-short", "dry", "--today", "2026-11-25");

        assertThat(run.out() + run.err()).contains("climate is not known");
    }
}

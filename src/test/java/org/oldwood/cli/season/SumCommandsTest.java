package org.oldwood.cli.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.season.sums.DynamicModel;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherHints;
import org.oldwood.season.weather.WeatherReader;
import org.oldwood.store.Problems;

/** The commands {@code chill} and {@code heat}, from a weather file and from a garden. */
class SumCommandsTest {
    @TempDir
    Path folder;

    private Cli.Result run(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today";
        all[args.length + 1] = "2026-07-01";
        Cli.Result run = Cli.in(folder).run(all);
        return new Cli.Result(run.exit(), run.out().replaceAll("\\s+", " "), run.err().replaceAll("\\s+", " "));
    }

    /** Every day of a stretch at one temperature. */
    private void constant(String from, String to, double celsius) throws IOException {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate last = LocalDate.parse(to);
        for (LocalDate day = LocalDate.parse(from); !day.isAfter(last); day = day.plusDays(1)) {
            text.append(day + "," + celsius + "," + celsius + ",0\n");
        }
        Files.writeString(folder.resolve("w.csv"), text);
    }

    private static double total(String json) {
        int at = json.indexOf("\"total\": ") + 9;
        return Double.parseDouble(json.substring(at, json.indexOf(',', at)));
    }

    /**
     * Ten days of one temperature: hours times the weight that the model's own table prints for it (Weinberger 0 to 7.2
     * °C; Richardson and others 1974; Shaltout and Unrath 1983).
     */
    @ParameterizedTest
    @CsvSource({"hours-0-7.2,5,240", "hours-0-7.2,-1,0", "hours-below-7.2,-1,240", "hours-0-7.2,8,0", "utah,5,240",
            "utah,2,120", "utah,17,-120", "utah,20,-240", "positive-utah,20,0", "north-carolina,7,240"})
    void ten_days_at_one_temperature_weigh_what_the_tables_print(String model, double celsius, double expected)
            throws IOException {
        constant("2026-01-01", "2026-01-10", celsius);

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50", "--model", model, "--from",
                "2026-01-01", "--to", "2026-01-10", "--json");

        assertThat(run.err()).isEmpty();
        assertThat(total(run.out())).isCloseTo(expected, within(1e-9));
    }

    /** Degree days of a constant day are its degrees above the base; GDH of Anderson peaks at 25 °C. */
    @ParameterizedTest
    @CsvSource({"simple,15,5,100", "sine,15,5,100", "sine,3,5,0", "hours,25,5,5040", "hours,3,5,0"})
    void ten_days_of_heat(String model, double celsius, double base, double expected) throws IOException {
        constant("2026-05-01", "2026-05-10", celsius);

        Cli.Result run = run("heat", "--weather", "w.csv", "--latitude", "50", "--model", model, "--base",
                Double.toString(base), "--from", "2026-05-01", "--to", "2026-05-10", "--json");

        assertThat(run.exit()).isZero();
        assertThat(total(run.out())).isCloseTo(expected, within(1e-6));
    }

    /** Each table's weight of an hour at 5 °C, as printed, times 240 hours. */
    @Test
    void all_models_stand_beside_each_other() throws IOException {
        constant("2026-01-01", "2026-01-10", 5);
        String[] asked = {"chill", "--weather", "w.csv", "--latitude", "50", "--model", "all", "--from", "2026-01-01",
                "--to", "2026-01-10"};

        assertThat(run(asked).out()).startsWith("2026-01-01 to 2026-01-10 240.0 chilling hours from 0 to 7.2 °C ")
                .contains(" 240.0 Utah chill units ").contains(" 240.0 raspberry chill units ");

        String[] json = java.util.Arrays.copyOf(asked, asked.length + 1);
        json[asked.length] = "--json";
        assertThat(run(json).out()).contains("\"model\": \"utah\", \"unit\": \"Utah chill units\", \"total\": 240");
    }

    /** A day from 13 to 40 °C between 12 and 33 °C: 12.94, TrenchR's manual and tests. */
    @Test
    void warmth_above_an_upper_threshold_adds_nothing() throws IOException {
        Files.writeString(folder.resolve("w.csv"), "date,tmin,tmax\n2026-02-01,13,40\n");
        String[] line = "heat --weather w.csv --latitude 40 --base 12 --from 2026-02-01 --to 2026-02-01 --upper"
                .split(" ");

        assertThat(run(with(line, "33")).out()).contains("12.9 degree days above 12.0 °C to 33.0 °C");
        assertThat(run(with(line, "12")).err()).contains("--upper must lie above the base");
    }

    private static String[] with(String[] line, String last) {
        String[] all = java.util.Arrays.copyOf(line, line.length + 1);
        all[line.length] = last;
        return all;
    }

    /** Days before the record are not made up to start the models with. */
    @Test
    void a_record_that_begins_in_mid_winter_begins_there() throws IOException {
        constant("2026-01-10", "2026-02-10", 6);
        String[] line = "chill --weather w.csv --latitude 50 --from 2026-01-10 --to 2026-02-10".split(" ");
        Weather weather = WeatherReader.read(Files.readAllBytes(folder.resolve("w.csv")), "w.csv",
                LocalDate.of(2026, 3, 1), WeatherHints.NONE, new Problems()).orElseThrow().weather();
        Days days = new Days(weather.first(), weather.last());
        double expected = HourlySeries.of(50, weather, Optional.empty(), days.first(), days.last()).orElseThrow()
                .sums(List.of(DynamicModel.sameHour()), List.of(days))[0][0];

        assertThat(run(line).out()).contains("%.1f chill portions".formatted(expected)).doesNotContain("not measured");
    }

    @Test
    void a_file_that_is_wrong_on_every_line_is_told_by_twenty_of_them_and_a_count() throws IOException {
        Files.writeString(folder.resolve("w.csv"), "date,tmin,tmax,rain\n" + "32/12/2025,1,5,0\n".repeat(400));

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err().split("for its day", -1)).hasSize(21);
        assertThat(run.err()).contains("… and 380 more", "400 problems in 1 file");
    }

    /** As {@code season.sums.WintersTest} does for all fifty; here what the command says. */
    @ParameterizedTest
    @CsvSource({"1980-10-31, chill, dynamic, 80.2838, 0.001", "1980-10-31, heat, hours, 3133.136, 0.05",
            "2014-11-01, chill, dynamic, 76.5288, 0.001", "2014-11-01, heat, hours, 4547.443, 0.06"})
    void a_winter_meets_its_printed_total(LocalDate from, String sum, String model, double printed, double to) {
        String file = Path.of("src/test/resources/reference/winters.csv").toAbsolutePath().toString();

        assertThat(total(run(sum, "--weather", file, "--latitude=46.6", "--model", model, "--json", "--from",
                from.toString(), "--to", "%s-02-28".formatted(from.getYear() + 1)).out()))
                .isCloseTo(printed, within(to));
    }

    /** The evening of the last day runs towards the next morning, measured or not asked for. */
    @ParameterizedTest
    @CsvSource({"50", "-60"})
    void two_parts_of_a_winter_add_up_to_the_whole(String latitude) throws IOException {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        for (int day = 1; day <= 30; day++) {
            text.append("2026-01-%02d,%d,%d,0\n".formatted(day, day % 5, 7 + 3 * (day % 4)));
        }
        Files.writeString(folder.resolve("w.csv"), text);

        double parts = chill(latitude, "2026-01-02", "2026-01-11") + chill(latitude, "2026-01-12", "2026-01-21");

        assertThat(parts).isCloseTo(chill(latitude, "2026-01-02", "2026-01-21"), within(0.001));
    }

    private double chill(String latitude, String from, String to) {
        return total(run("chill", "--weather", "w.csv", "--latitude=" + latitude, "--model", "utah", "--from", from,
                "--to", to, "--json").out());
    }

    @Test
    void each_whole_winter_of_the_record_has_a_line() throws IOException {
        constant("2023-09-01", "2026-06-30", 6);

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("season 2024", "season 2025", "season 2026", "chill portions")
                .doesNotContain("not measured");
        assertThat(run("heat", "--weather", "w.csv", "--latitude", "-40").out())
                .contains("season 2024-25 184.0 degree days", "season 2025-26 184.0");
    }

    @Test
    void days_that_were_not_measured_are_counted() throws IOException {
        Files.writeString(folder.resolve("w.csv"),
                "date,tmin,tmax,rain\n2026-01-01,4,6,0\n2026-01-02,,,\n2026-01-04,4,6,0\n");

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50", "--model", "utah", "--from",
                "2026-01-01", "--to", "2026-01-04");

        assertThat(run.out()).contains("2 days not measured");
    }

    /** The garden lies in Tasmania: its January is no stopgap for one at 50° N. */
    @Test
    void a_file_from_elsewhere_takes_nothing_from_the_garden() throws IOException {
        constant("2026-01-01", "2026-01-10", 6);
        Files.writeString(folder.resolve("w.csv"), "2026-01-20,6,6,0\n", StandardOpenOption.APPEND);
        String[] line = "chill --weather w.csv --latitude 50 --from 2026-01-01 --to 2026-01-20".split(" ");
        String alone = run(line).out();

        garden("\"climate\": \"hobart\",");

        assertThat(run(line).out()).startsWith(alone.strip());
    }

    @Test
    void degrees_that_do_not_fit_the_garden_are_asked_about() throws IOException {
        constant("2026-07-01", "2026-07-20", 45);
        garden("\"climate\": \"hobart\",");

        assertThat(run("chill", "--weather", "w.csv", "--from", "2026-07-01", "--to", "2026-07-20").err())
                .contains("--degrees f");
    }

    @Test
    void a_part_of_a_season_gives_no_line_and_says_what_to_do() throws IOException {
        constant("2026-01-01", "2026-01-10", 6);

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50");

        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("give --from and --to");
    }

    @Test
    void a_garden_is_told_beside_its_crops() throws IOException {
        garden("\"climate\": \"hobart\",");

        Cli.Result run = run("chill");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("winter of season 2026-27", "not measured")
                .contains("blackcurrant wants 1800 h", "by source 1000 to 2000")
                .contains("enough by some sources, short by others").contains("haskap: what it wants is not known");
        assertThat(run("chill", "--json").out()).contains("\"crop\": \"blackcurrant\"", "\"doubtful\": 1",
                "\"crop\": \"haskap\"");
    }

    @Test
    void a_garden_without_climate_or_weather_is_told_what_to_give() throws IOException {
        garden("");

        Cli.Result run = run("chill");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("neither weather nor climate", "garden.json");
    }

    private void garden(String climate) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": -42.9, "longitude": %d, "zone": "UTC"}, %s
                 "beds": [{"id": "a", "areaM2": 4}]}
                """.formatted(climate.isEmpty() ? -110 : 147, climate));
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e1","date":"2020-06-15","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a"}
                {"id":"e2","date":"2020-06-15","entry":"planted","plant":"hk","crop":"haskap","bed":"a"}
                """);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|',
            value = {"chill --weather w.csv --latitude 50 --model utha | utah",
                    "chill --weather w.csv --latitude 95 | from -90 to 90", "chill --weather w.csv | --latitude",
                    "chill --weather w.csv --latitude 50 --from 2026-01-01 | --from and --to together",
                    "chill --weather w.csv --latitude 50 --from 2026-02-01 --to 2026-01-01 | not lie after",
                    "heat --weather w.csv --latitude 50 --model sin | sine",
                    "heat --weather none.csv --latitude 50 | none.csv"})
    void a_wrong_command_line_says_what_would_be_right(String line, String says) throws IOException {
        constant("2026-01-01", "2026-01-10", 6);

        Cli.Result run = run(line.trim().split(" "));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(says);
    }

    @Test
    void a_bad_weather_file_is_told_by_line_and_gives_no_sum() throws IOException {
        Files.writeString(folder.resolve("w.csv"), "date,tmin,tmax\n2026-01-01,9,3\n");

        Cli.Result run = run("chill", "--weather", "w.csv", "--latitude", "50");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("w.csv:2", "least temperature above its greatest");
    }
}

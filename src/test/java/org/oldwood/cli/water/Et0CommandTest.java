package org.oldwood.cli.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** The command {@code et0}: FAO-56 example 18 on the command line, whole and with gaps. */
class Et0CommandTest {
    @TempDir
    Path folder;

    private static final String[] DAY = {"et0", "--at", "50.8,4.35", "--altitude", "100", "--on", "2026-07-06",
            "--tmin", "12.3", "--tmax", "21.5"};

    private Cli.Result run(String... more) {
        String[] all = new String[DAY.length + more.length];
        System.arraycopy(DAY, 0, all, 0, DAY.length);
        System.arraycopy(more, 0, all, DAY.length, more.length);
        return plain(Cli.in(folder).run(all));
    }

    /** Without line ends and runs of spaces, which depend on the width of the terminal. */
    private static Cli.Result plain(Cli.Result run) {
        return new Cli.Result(run.exit(), run.out().replaceAll("\\s+", " "), run.err().replaceAll("\\s+", " "));
    }

    @Test
    void example_18_shows_its_terms() {
        Cli.Result run = run("--rh-min", "63", "--rh-max", "84", "--wind", "2.078", "--sun", "9.25");

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("2026-07-06: 3.88 mm").contains("41.09", "16.1", "22.07", "30.90", "13.28",
                "1.997", "1.409", "0.0666");
    }

    @Test
    void any_of_the_last_four_may_be_missing_and_the_substitute_is_said() {
        assertThat(run().out()).contains("eq. 48", "2 m/s", "eq. 50, inland");
        assertThat(run("--coast").out()).contains("eq. 50, coast");
        assertThat(run("--rh-max", "84").out()).contains("eq. 18");
        assertThat(run("--rh-min", "63").out()).contains("highest humidity not given: the lowest alone is not enough");
        assertThat(run("--sun", "9.25", "--wind", "2").out()).contains("eq. 48", "wind as measured", "eq. 35");
    }

    @Test
    void json_has_every_term() {
        assertThat(run("--json").out()).contains("\"et0Mm\":", "\"raMj\":", "\"basis\":", "\"date\": \"2026-07-06\"");
    }

    @Test
    void wind_at_ten_metres_is_brought_down() {
        assertThat(run("--wind", "3.2", "--wind-height", "10").out()).contains("2.39 m/s");
    }

    @Test
    void wrong_input_is_refused_in_words() {
        assertThat(run("--rh-min", "90", "--rh-max", "60").err()).contains("is above the highest");
        assertThat(run("--sun", "30").exit()).isEqualTo(2);
        assertThat(plain(Cli.in(folder).run("et0", "--tmin", "1", "--tmax", "2")).err()).contains("give --at LAT,LON");
        assertThat(plain(Cli.in(folder).run("et0", "--at", "95", "--tmin", "1", "--tmax", "2")).err())
                .contains("--at must be latitude");
        assertThat(plain(Cli.in(folder).run("et0", "--at", "50,4")).err()).contains("--tmin and --tmax");
    }

    @Test
    void more_sun_than_the_day_has_is_refused() {
        Cli.Result hours = run("--sun", "17");
        Cli.Result watts = run("--radiation", "55");

        assertThat(hours.exit()).isEqualTo(2);
        assertThat(hours.err()).contains("cannot have shone 17.0 h", "16.1 h long");
        assertThat(watts.exit()).isEqualTo(2);
        assertThat(watts.err()).contains("41.1 reach the top of the air", "0.0864");
        String[] high = {"et0", "--at", "50.8,4", "--altitude", "9500", "--tmin", "1", "--tmax", "2"};
        assertThat(plain(Cli.in(folder).run(high)).err()).contains("--altitude must be from -430 to 9000 m");
    }

    @Test
    void calm_air_counts_as_half_a_metre_a_second() {
        assertThat(run("--wind", "0").out()).contains("u2 0.50 m/s", "0.5 m/s at least");
        assertThat(run("--wind", "0.6").out()).contains("u2 0.60 m/s").doesNotContain("at least");
    }

    @Test
    void a_height_that_was_not_given_is_said() {
        String[] day = {"et0", "--at", "50.8,4.35", "--tmin", "1", "--tmax", "2"};

        assertThat(plain(Cli.in(folder).run(day)).out()).contains("height not given: sea level");
        assertThat(run().out()).doesNotContain("height not given");
    }

    private void garden(String climate) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Yard", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2d",
                 "site": {"latitude": 50.8, "longitude": 4.35, "heightM": 100, "zone": "Europe/Brussels"},
                 %s "beds": []}
                """.formatted(climate));
        Files.writeString(folder.resolve("weather.csv"), "date,tmin,tmax,rain\n2026-07-06,12.3,21.5,0\n");
    }

    private Cli.Result inGarden(String... args) {
        String[] all = new String[args.length + 3];
        all[0] = "et0";
        System.arraycopy(args, 0, all, 1, args.length);
        all[args.length + 1] = "--today";
        all[args.length + 2] = "2026-11-25";
        return plain(Cli.in(folder).run(all));
    }

    @Test
    void a_garden_gives_its_place_and_measured_temperatures() throws IOException {
        garden("");

        Cli.Result run = inGarden("--on", "2026-07-06", "--rh-min", "63", "--rh-max", "84", "--wind", "2.078", "--sun",
                "9.25");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("2026-07-06: 3.88 mm");
        assertThat(run.out()).contains("temperatures from weather.csv");
        assertThat(run.out()).doesNotContain("height not given");
    }

    @Test
    void where_nothing_was_measured_its_climate_gives_the_mean_day() throws IOException {
        garden("\"climate\": \"cambridge\",");

        Cli.Result run = inGarden("--on", "2026-07-07");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("temperatures not given", "Cambridge");
        garden("");
        assertThat(inGarden("--on", "2026-07-07").out()).contains("temperatures not given", "this place (from ");
    }

    @Test
    void one_temperature_alone_is_not_enough() {
        Cli.Result run = plain(Cli.in(folder).run("et0", "--at", "50.8,4.35", "--tmin", "12"));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("give both --tmin and --tmax");
    }

    @Test
    void days_without_temperatures_are_passed_over_and_counted() throws IOException {
        Files.writeString(folder.resolve("days.csv"), "date,tmin,tmax,rain\n2026-07-06,12.3,21.5,0\n2026-07-07,,,3\n");
        String[] line = {"et0", "--at", "50.8,4.35", "--altitude", "100", "days.csv"};

        assertThat(plain(Cli.in(folder).run(line)).out()).contains("in 1 day", "1 day without temperatures left out");
        String[] asJson = {"et0", "--at", "50.8,4.35", "days.csv", "--json"};
        assertThat(plain(Cli.in(folder).run(asJson)).out()).contains("\"withoutTemperatures\": 1", "\"togetherMm\":",
                "sea level");
    }

    @Test
    void a_file_of_days_is_worked_through() throws IOException {
        Files.writeString(folder.resolve("days.csv"), """
                date,tmin,tmax,rhmin,rhmax,wind,sun
                2026-07-06,12.3,21.5,63,84,2.078,9.25
                2026-07-07,12.3,21.5,,,,
                """);

        Cli.Result run = plain(Cli.in(folder).run("et0", "--at", "50.8,4.35", "--altitude", "100", "days.csv"));

        assertThat(run.out()).contains("2026-07-06 3.88", "2026-07-07", "in 2 days", "eq. 48");
        assertThat(run.exit()).isZero();
    }

    @Test
    void a_bad_file_is_told_line_by_line() throws IOException {
        Files.writeString(folder.resolve("days.csv"), """
                date,tmin,tmax,sun
                2026-02-30,1,2,3
                2026-03-01,9,2,3
                2026-03-02,warm,2,3
                2026-03-03,1,2,23
                """);

        Cli.Result run = Cli.in(folder).run("et0", "--at", "50.8,4.35", "days.csv");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("days.csv:2", "days.csv:3", "days.csv:4", "days.csv:5", "4 problems in 1");
    }
}

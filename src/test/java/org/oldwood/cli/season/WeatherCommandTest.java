package org.oldwood.cli.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** The command {@code weather add}: all of a file or nothing of it. */
class WeatherCommandTest {
    @TempDir
    Path folder;

    private static final String OLD = "date,tmin,tmax,rain\n2026-01-01,1.5,6.0,0.2\n";

    @BeforeEach
    void garden() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": 52, "longitude": 0, "zone": "UTC"}, "climate": "cambridge",
                 "beds": [{"id": "a", "areaM2": 4}]}
                """);
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e1","date":"2020-03-15","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a"}
                """);
    }

    private Cli.Result add(String text, String... more) throws IOException {
        Files.writeString(folder.resolve("new.csv"), text);
        String[] all = new String[5 + more.length];
        System.arraycopy(new String[]{"weather", "add", "new.csv", "--today", "2026-03-31"}, 0, all, 0, 5);
        System.arraycopy(more, 0, all, 5, more.length);
        return Cli.in(folder).run(all);
    }

    private String kept() throws IOException {
        return Files.readString(folder.resolve("weather.csv"), StandardCharsets.UTF_8);
    }

    @Test
    void takes_a_file_over_and_tells_what_it_held() throws IOException {
        Cli.Result run = add("date,tmin,tmax,rain,wind\n2026-01-01,1.5,6,0.2,3\n2026-01-04,99.9,5,,3\n");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("2 days read as date,tmin,tmax,rain in °C and mm", "not used: wind")
                .contains("From 2026-01-01 to 2026-01-04", "2 days are left out")
                .contains("2026-01-02 to 2026-01-03, 2 days", "1 day lacks a temperature");
        assertThat(run.err()).contains("weather.csv");
        assertThat(kept()).isEqualTo(OLD + "2026-01-04,,5.0,\n");
    }

    /** A winter in °F can be one in °C somewhere, but not here. */
    @Test
    void asks_about_degrees_that_do_not_fit_the_place() throws IOException {
        String winter = "date,tmin,tmax,rain\n2026-01-01,32,41,0\n2026-01-02,31,44,0.1\n2026-01-03,28,39,0\n";

        Cli.Result asked = add(winter);
        assertThat(asked.exit()).isEqualTo(1);
        assertThat(asked.err().replaceAll("\\s+", " ")).contains("warmer than the climate of this place",
                "--degrees f");
        assertThat(add(winter, "--degrees", "f").exit()).isZero();
        assertThat(kept()).contains("2026-01-01,0.0,5.0");
        assertThat(add(winter, "--degrees", "c", "--replace").exit()).isZero();
    }

    @Test
    void tells_the_same_in_json() throws IOException {
        Cli.Result run = add("date,tmin,tmax,rain\n2026-01-01,1,6,0\n2026-01-03,1,6,0\n", "--json");

        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("\"days\": 2", "\"first\": \"2026-01-01\"", "\"last\": \"2026-01-03\"")
                .contains("\"gaps\": [ { \"first\": \"2026-01-02\", \"last\": \"2026-01-02\" } ]")
                .contains("\"notMeasured\": 0");
    }

    @Test
    void reads_ghcn_daily_in_tenths_and_decimal_commas_alike() throws IOException {
        Cli.Result tenths = add("UK000047811,20260101,TMAX,60,,,E,\nUK000047811,20260101,TMIN,15,,,E,\n"
                + "UK000047811,20260101,PRCP,2,,,E,\n");
        assertThat(tenths.out()).contains("GHCN-Daily by element, in tenths");
        assertThat(kept()).isEqualTo(OLD);

        Cli.Result commas = add("\uFEFFdate;tmin;tmax;rain\r\n2026-01-01;1,5;6,0;0,2\r\n");
        assertThat(commas.exit()).isZero();
        assertThat(kept()).isEqualTo(OLD);
    }

    @Test
    void a_file_with_one_bad_line_changes_nothing() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), OLD);

        Cli.Result run = add("date,tmin,tmax,rain\n2026-01-02,1,6,0\n2026-01-03,9,3,0\n");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("new.csv:3", "least temperature above its greatest");
        assertThat(kept()).isEqualTo(OLD);
        assertThat(folder.toFile().list()).hasSize(4);
    }

    @Test
    void a_first_file_that_is_bad_makes_no_weather_csv() throws IOException {
        assertThat(add("nothing\n").exit()).isEqualTo(1);
        assertThat(folder.resolve("weather.csv")).doesNotExist();
    }

    @Test
    void decimal_commas_between_commas_are_not_taken_for_columns() throws IOException {
        Cli.Result run = add("date,tmin,tmax,rain\n2026-01-01,-1,5,6,25,0,2\n");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("new.csv:2", "7 cells", "4 columns", "semicolons");
    }

    @Test
    void other_weather_for_a_day_needs_replace() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), OLD);
        String other = "date,tmin,tmax,rain\n2026-01-01,2,7,0\n";

        Cli.Result refused = add(other);
        assertThat(refused.exit()).isEqualTo(1);
        assertThat(refused.err()).contains("2026-01-01", "--replace");
        assertThat(kept()).isEqualTo(OLD);

        assertThat(add(other, "--replace").exit()).isZero();
        assertThat(kept()).contains("2026-01-01,2.0,7.0,0.0");
    }

    @Test
    void a_warm_february_moves_the_stages() throws IOException {
        StringBuilder warm = new StringBuilder("date,tmin,tmax,rain\n");
        for (int day = 1; day <= 28; day++) {
            warm.append(String.format("2026-02-%02d,6,14,0%n", day));
        }
        String before = budBurst();

        assertThat(add(warm.toString()).exit()).isZero();

        assertThat(budBurst()).isLessThan(before);
    }

    private String budBurst() {
        String json = Cli.in(folder).run("stages", "bc", "--json", "--today", "2026-03-31").out().replaceAll("\\s+",
                " ");
        String before = "\"bud-burst\", \"bbch\": \"07\", \"date\": \"";
        int at = json.indexOf(before) + before.length();
        return json.substring(at, at + 10);
    }

    @Test
    void a_wrong_command_line_says_what_would_be_right() {
        Cli.Result word = Cli.in(folder).run("weather", "take", "new.csv");
        assertThat(word.exit()).isEqualTo(2);
        assertThat(word.err()).contains("oldwood weather add FILE");

        Cli.Result file = Cli.in(folder).run("weather", "add", "none.csv");
        assertThat(file.exit()).isEqualTo(2);
        assertThat(file.err()).contains("none.csv");

        assertThat(Cli.in(folder).run("weather").exit()).isEqualTo(2);
    }
}

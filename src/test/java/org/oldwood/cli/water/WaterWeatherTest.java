package org.oldwood.cli.water;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** Weather that stops before the day, or lacks rain: told by {@code water} and {@code check}, and less sure. */
class WaterWeatherTest {
    @TempDir
    Path folder;

    @BeforeEach
    void garden() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": 52.2, "longitude": 0.1, "zone": "UTC"}, "climate": "cambridge",
                 "beds": [{"id": "damp", "areaM2": 4, "texture": "silt-loam"}]}
                """);
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id":"e1","date":"2020-11-15","entry":"planted","plant":"b","crop":"blackcurrant","bed":"damp","bushes":3}
                        """);
    }

    @Test
    void weather_that_stops_or_lacks_something_is_told_and_makes_the_account_less_sure() throws IOException {
        weather(9, "12,24,1");
        assertThat(july("water")).doesNotContain("Note:");
        double sure = unsure();

        weather(0, "12,24,1");
        assertThat(july("water")).contains("Note: weather.csv ends on 2026-06-30");
        assertThat(july("check")).contains("weather.csv ends on 2026-06-30");
        assertThat(unsure()).isGreaterThan(sure);

        weather(9, "12,24,");
        assertThat(july("water")).contains("lacks the rain of 39 and the temperatures of 0");
        assertThat(unsure()).isGreaterThan(sure);

        weather(9, ",,1");
        assertThat(july("water")).contains("lacks the rain of 0 and the temperatures of 39");
        assertThat(unsure()).isGreaterThan(sure);
    }

    /** A thermometer alone makes a climate of its own after three years; the rain stays that of the stations around. */
    @Test
    void years_without_rain_take_no_account_away() throws IOException {
        Path garden = folder.resolve("garden.json");
        Files.writeString(garden, Files.readString(garden).replace("\"climate\": \"cambridge\",", ""));
        StringBuilder days = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate.of(2023, 1, 1).datesUntil(LocalDate.of(2026, 7, 10))
                .forEach(day -> days.append(day).append(",5,15,\n"));
        Files.writeString(folder.resolve("weather.csv"), days);

        assertThat(july("stages")).contains("own weather.csv");
        assertThat(july("water")).contains("it holds about", "is taken from the weather stations around");
    }

    private void weather(int ofJuly, String day) throws IOException {
        StringBuilder days = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate last = LocalDate.of(2026, 6, 30).plusDays(ofJuly);
        LocalDate.of(2026, 6, 1).datesUntil(last.plusDays(1))
                .forEach(date -> days.append(date).append(",").append(day).append("\n"));
        Files.writeString(folder.resolve("weather.csv"), days);
    }

    private String july(String command) {
        Cli.Result run = Cli.in(folder).run(command, "--today", "2026-07-10");
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    private double unsure() throws IOException {
        String json = Cli.in(folder).run("water", "damp", "--json", "--today", "2026-07-10").out();
        JsonNode bed = new ObjectMapper().readTree(json).at("/beds/0");
        return bed.get("heldMostMm").asDouble() - bed.get("heldLeastMm").asDouble();
    }
}

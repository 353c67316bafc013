package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/**
 * The files in {@code calendars/} are what Oldwood writes for the demo gardens as of 25 November 2026, byte for byte.
 * {@code -Dgolden.update=true} writes them anew.
 */
class DemoCalendarsTest {
    private static final Path COMMITTED = Path.of("calendars");

    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void the_committed_calendars_are_true(String name) throws IOException {
        Path garden = copy(Path.of("demo-data").resolve(name));
        Path out = scratch.resolve("out-" + name);

        int code = Cli.in(scratch).run("calendar", "--garden", garden.toString(), "--today", "2026-11-25", "--out",
                out.toString(), "--quiet").exit();

        assertThat(code).isZero();
        List<Path> written = files(out);
        assertThat(written).hasSize(2);
        for (Path file : written) {
            Path committed = COMMITTED.resolve(file.getFileName().toString());
            if (Boolean.getBoolean("golden.update")) { Files.write(committed, Files.readAllBytes(file)); }
            assertThat(Files.readString(file, StandardCharsets.UTF_8)).as(committed.toString())
                    .isEqualTo(Files.readString(committed, StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @CsvSource({"tr,Pacific/Kiritimati", "ar-EG,Pacific/Pago_Pago", "th-TH-u-ca-buddhist,Asia/Tokyo"})
    void they_are_the_same_under_any_locale_and_time_zone(String locale, String zone) throws IOException {
        Locale localeBefore = Locale.getDefault();
        TimeZone zoneBefore = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            the_committed_calendars_are_true("terrace-school");
            the_committed_calendars_are_true("fire-station-hedges");
        } finally {
            Locale.setDefault(localeBefore);
            TimeZone.setDefault(zoneBefore);
        }
    }

    private Path copy(Path from) throws IOException {
        Path to = Files.createDirectories(scratch.resolve(from.getFileName().toString()));
        for (String file : List.of("garden.json", "journal.jsonl")) {
            Files.copy(from.resolve(file), to.resolve(file));
        }
        if (Files.exists(from.resolve("weather.csv"))) {
            Files.copy(from.resolve("weather.csv"), to.resolve("weather.csv"));
        }
        return to;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".ics")).sorted().toList();
        }
    }
}

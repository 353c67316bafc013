package org.oldwood.season.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.store.Problems;

/**
 * Tables as weather services hand them out. The lines of names are those of public files: Deutscher Wetterdienst
 * (produkt_klima_tag), Météo-France (Q_RR-T-Vent), KNMI (daggegevens), Environment Canada (daily data), Bureau of
 * Meteorology (IDCJAC0010), MeteoSwiss (SwissMetNet), Norsk klimaservicesenter, NIWA CliFlo, NOAA GHCN-Daily; the
 * values below them are ours.
 */
class WeatherServicesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', quoteCharacter = '`',
            textBlock = """
                    Germany ! STATIONS_ID;MESS_DATUM;QN_3;  FX;QN_4; RSK;RSKF; TMK; TXK; TNK; TGK;eor|  1358;20260403;-999;-999;    1;   0.4;   0;   15.6;   19.6;   10.0;-999;eor ! 2026-04-03 10.0 19.6 0.4
                    France ! NUM_POSTE;NOM_USUEL;LAT;LON;ALTI;AAAAMMJJ;RR;QRR;TN;QTN;TX;QTX|1001;ADUR;45.1;5.5;90;20260403;0.4;1;10;1;19.6;1 ! 2026-04-03 10.0 19.6 0.4
                    Netherlands ! # RH = rain, -1 for less than 0.05 mm|# STN,YYYYMMDD,   TG,   TN,   TX,   RH|  356,20260403,  131,  -36,  197,   -1 ! 2026-04-03 -3.6 19.7 0.0
                    Canada ! "Longitude (x)","Station Name","Climate ID","Date/Time","Year","Month","Day","Max Temp (°C)","Max Temp Flag","Min Temp (°C)","Total Rain (mm)","Total Precip (mm)"|"-80","ADUR","7","2026-04-03","2026","04","03","19.6","","-3.6","0.1","0.4" ! 2026-04-03 -3.6 19.6 0.4
                    Australia ! Product code,Station Number,Year,Month,Day,Maximum temperature (Degree C),Days of accumulation,Quality|IDCJAC0010,086338,2026,4,3,19.6,,Y ! 2026-04-03 - 19.6 -
                    Switzerland ! station_abbr;reference_timestamp;tre200dn;tre200dx;rre150d0|CHZ;03.04.2026 00:00;-3.6;19.6;0.4 ! 2026-04-03 -3.6 19.6 0.4
                    Norway ! Navn;Stasjon;Tid(norsk normaltid);Minimumstemperatur (døgn);Maksimumstemperatur (døgn);Nedbør (døgn)|Adur;SN1;03.04.2026;-3,6;19,6;0,4|Data er gyldig per 12.10.2026;;;;; ! 2026-04-03 -3.6 19.6 0.4
                    New Zealand ! Station,Date(NZST),Tmax(C),Period(Hrs),Tmin(C),Period(Hrs)|Adur,20260403:0900,19.6,24,-3.6,24 ! 2026-04-03 -3.6 19.6 -
                    United States, °F ! "STATION","NAME","DATE","PRCP","TMAX","TMIN"|"US1","ADUR","2026-04-03","0.50","59","32" ! 2026-04-03 0.0 15.0 12.7
                    United States, fixed ! UK000047811202604TMAX-9999   -9999     196  E  205 XE|UK000047811202604TMIN-9999   -9999     -36  E-9999   |UK000047811202604SNWD    0  E    0  E    0  E    0  E ! 2026-04-03 -3.6 19.6 -
                    named in °F ! Day;Tmin °F;date;High temp (F);low temp (F);rain (in)|1;0;3/24/2026;59;32;0.5 ! 2026-03-24 0.0 15.0 12.7
                    """)
    void tables_of_services_are_read_by_their_own_names(String country, String file, String expected) {
        Problems problems = new Problems();

        Optional<WeatherImport> read = read(file.replace('|', '\n'), WeatherHints.NONE, problems);

        assertThat(problems.list()).as(country).isEmpty();
        String[] day = expected.split(" ");
        WeatherDay first = read.orElseThrow().weather().on(LocalDate.parse(day[0])).orElseThrow();
        assertThat(shown(first)).as(country).isEqualTo(expected);
    }

    @Test
    void hours_are_folded_to_days_and_a_day_of_few_hours_is_not_measured() {
        StringBuilder text = new StringBuilder("Time,Temp (F),Rain (in)\n");
        IntStream.range(0, 30).forEach(
                hour -> text.append("%d/3/2026 %d:00,%d,0.01%n".formatted(14 + hour / 24, hour % 24, 40 + hour % 24)));

        WeatherImport read = read(text.toString(), WeatherHints.NONE, new Problems()).orElseThrow();

        assertThat(read.weather().days().stream().map(WeatherServicesTest::shown))
                .containsExactly("2026-03-14 4.44 17.22 6.0", "2026-03-15 - - -");
        assertThat(read.notMeasured()).isEqualTo(1);
        assertThat(read.format()).contains("hours folded to days");
    }

    @Test
    void dates_that_read_in_two_ways_are_asked_about() {
        String text = "date,tmin,tmax\n03/04/2026,1,9\n";
        Problems problems = new Problems();
        assertThat(read(text, WeatherHints.NONE, problems)).isEmpty();
        assertThat(problems.list().get(0).inWords()).contains("w.csv:2", "03/04/2026", "--dates day-first");

        for (boolean dayFirst : new boolean[]{true, false}) {
            WeatherHints hints = new WeatherHints(Map.of(), Optional.empty(), Optional.of(dayFirst));
            assertThat(read(text, hints, new Problems()).orElseThrow().weather().first())
                    .isEqualTo(dayFirst ? LocalDate.of(2026, 4, 3) : LocalDate.of(2026, 3, 4));
        }
    }

    @Test
    void other_names_and_units_are_told_on_the_command_line() {
        WeatherHints hints = new WeatherHints(Map.of("date", "When", "tmin", "Low", "tmax", "High", "rain", "Wet"),
                Optional.of(WeatherUnits.F), Optional.empty());
        String text = "a garden's log\nWhen,High,Low,Wet,Note\n2026-04-03,59,32,0.5,frost\n";

        assertThat(shown(read(text, hints, new Problems()).orElseThrow().weather().days().get(0)))
                .isEqualTo("2026-04-03 0.0 15.0 12.7");

        Problems problems = new Problems();
        assertThat(read(text, WeatherHints.NONE, problems)).isEmpty();
        assertThat(problems.list().get(0).inWords()).contains("--columns");
    }

    /** In °F, or a June in whole °C with its rain in mm. */
    @ParameterizedTest
    @CsvSource({"40,''", "14,3"})
    void a_short_time_in_whole_degrees_without_a_unit_is_asked_about(int from, String rain) {
        StringBuilder text = new StringBuilder("STATION,DATE,TMAX,TMIN,PRCP\n");
        IntStream.rangeClosed(1, 28).forEach(
                day -> text.append("US1,2026-06-%02d,%d,%d,%s%n".formatted(day, from + day / 2, from - 8, rain)));
        Problems problems = new Problems();

        assertThat(read(text.toString(), WeatherHints.NONE, problems)).isEmpty();
        assertThat(problems.list()).singleElement()
                .satisfies(each -> assertThat(each.inWords()).contains("tenths of °C or whole °F", "--degrees"));
    }

    private static String shown(WeatherDay day) {
        return "%s %s %s %s".formatted(day.date(), day.minC().isEmpty() ? "-" : day.minC().getAsDouble(),
                day.maxC().isEmpty() ? "-" : day.maxC().getAsDouble(),
                day.rainMm().isEmpty() ? "-" : day.rainMm().getAsDouble());
    }

    private static Optional<WeatherImport> read(String text, WeatherHints hints, Problems problems) {
        return WeatherReader.read(text.getBytes(StandardCharsets.UTF_8), "w.csv", TODAY, hints, problems);
    }
}

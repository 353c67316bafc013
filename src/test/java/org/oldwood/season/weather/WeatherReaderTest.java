package org.oldwood.season.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.store.Problems;

/** Weather files as they come: read rightly, or a clear message by line and nothing taken over. */
class WeatherReaderTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void own_columns_with_gaps_repeats_and_missing_values() {
        WeatherImport read = good("date,tmin,tmax,rain\n2026-01-01,1.5,6,0.2\n2026-01-01,1.5,6,0.2\n"
                + "2026-01-02,99.9,7,-9999\n2026-01-05,-2,3,\n");

        assertThat(read.weather().count()).isEqualTo(3);
        assertThat(read.repeated()).isEqualTo(1);
        assertThat(read.notMeasured()).isEqualTo(1);
        assertThat(read.gaps()).singleElement().extracting(WeatherImport.Gap::days).isEqualTo(2);
        assertThat(read.weather().on(LocalDate.of(2026, 1, 2)).orElseThrow().minC()).isEmpty();
    }

    @Test
    void byte_order_mark_crlf_semicolons_and_decimal_commas() {
        WeatherImport read = good("\uFEFFdate;tmin;tmax;rain\r\n2026-01-01;-1,5;6,25;0,2\r\n");

        WeatherDay day = read.weather().on(LocalDate.of(2026, 1, 1)).orElseThrow();
        assertThat(day.minC()).hasValue(-1.5);
        assertThat(day.maxC()).hasValue(6.25);
        assertThat(day.rainMm()).hasValue(0.2);
    }

    @Test
    void ghcn_daily_rows_by_day_are_tenths_and_failed_checks_are_absent() {
        WeatherImport read = good(
                "\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\"\n"
                        + "\"USC00351862\",\"2020-07-01\",\"13\",\",,7\",\"289\",\",,7\",\"123\"\n"
                        + "\"USC00351862\",\"2020-07-02\",\"0\",\",,7\",\"999\",\",I,7\",\"120\"\n");

        WeatherDay day = read.weather().on(LocalDate.of(2020, 7, 1)).orElseThrow();
        assertThat(day.minC()).hasValue(12.3);
        assertThat(day.maxC()).hasValue(28.9);
        assertThat(day.rainMm()).hasValue(1.3);
        assertThat(read.weather().on(LocalDate.of(2020, 7, 2)).orElseThrow().maxC()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n"})
    void ghcn_daily_by_element_with_a_header_or_without(String head) {
        WeatherImport read = good(head + "UK000047811,20200701,TMAX,189,,,E,\nUK000047811,20200701,TMIN,101,,,E,\n"
                + "UK000047811,20200701,PRCP,25,,,E,\nUK000047811,20200701,SNWD,0,,,E,\n");

        WeatherDay day = read.weather().on(LocalDate.of(2020, 7, 1)).orElseThrow();
        assertThat(day.minC()).hasValue(10.1);
        assertThat(day.maxC()).hasValue(18.9);
        assertThat(day.rainMm()).hasValue(2.5);
    }

    @Test
    void ghcn_daily_in_fixed_columns_keeps_the_last_day_whose_flags_are_blank() {
        String values = "  189   ".repeat(31);
        WeatherImport read = good("UK000047811202007TMAX%s%nUK000047811202007TMIN%s".formatted(values, values));

        assertThat(read.weather().last()).isEqualTo("2020-07-31");
        assertThat(read.weather().on(LocalDate.of(2020, 7, 31)).orElseThrow().maxC()).hasValue(18.9);
    }

    @Test
    void single_faults_are_told_by_line() {
        String head = "date,tmin,tmax,rain\n2026-01-01,1,6,0\n";

        assertThat(bad(head + "2026-01-02,9,3,0\n")).contains("least-above-greatest w.csv:3");
        assertThat(bad(head + "2026-02-30,1,3,0\n")).contains("not-a-date w.csv:3");
        assertThat(bad(head + "03/01/2026,1,3,0\n")).contains("not-a-date w.csv:3");
        assertThat(bad(head + "2026-01-02,cold,3,0\n")).contains("not-a-number w.csv:3");
        assertThat(bad(head + "2026-01-01,2,6,0\n")).contains("day-twice w.csv:3");
        assertThat(bad(head + "2027-01-01,2,6,0\n")).contains("weather-after-today w.csv:3");
        assertThat(bad(head + "2026-01-02,1,3,-4\n")).contains("impossible-weather w.csv:3");
        assertThat(bad("day,low,high\n2026-01-01,1,6\n")).contains("missing-column w.csv:1");
        assertThat(bad("")).contains("empty-weather");
    }

    @Test
    void wrong_units_and_swapped_columns_are_told_for_the_whole_file() {
        assertThat(bad(year("date,tmin,tmax", 50, 85))).contains("°F and inches", "--degrees f");
        assertThat(bad(year("date,tmin,tmax", 278, 291))).contains("kelvins", "--degrees k");
        assertThat(bad(year("date,tmin,tmax", 85, 182))).contains("tenths of °C", "--degrees tenths");
        assertThat(bad(year("date,tmin,tmax", 14, 6))).contains("tmin and tmax are swapped");
        assertThat(bad(year("station,date,tmin,tmax", 50, 85))).contains("two-readings",
                "--degrees tenths, --degrees f or --degrees c");
    }

    private static String year(String head, int min, int max) {
        StringBuilder text = new StringBuilder(head).append('\n');
        for (int i = 0; i < 365; i++) {
            text.append(head.startsWith("station") ? "X," : "")
                    .append(LocalDate.of(2025, 1, 1).plusDays(i) + "," + min + "," + max + "\n");
        }
        return text.toString();
    }

    private static WeatherImport good(String text) {
        Problems problems = new Problems();
        Optional<WeatherImport> read = read(text, problems);
        assertThat(problems.list()).isEmpty();
        return read.orElseThrow();
    }

    private static String bad(String text) {
        Problems problems = new Problems();
        assertThat(read(text, problems)).isEmpty();
        StringBuilder all = new StringBuilder();
        problems.list().forEach(each -> all.append(each.name()).append(' ').append(each.inWords()));
        return all.toString();
    }

    private static Optional<WeatherImport> read(String text, Problems problems) {
        return WeatherReader.read(text.getBytes(StandardCharsets.UTF_8), "w.csv", TODAY, WeatherHints.NONE, problems);
    }
}

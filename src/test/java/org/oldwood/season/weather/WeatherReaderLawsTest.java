package org.oldwood.season.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.oldwood.store.Problems;

/**
 * A file that was spoilt in any of these ways is told, or what is read of it is true: every value is the one that was
 * written for its day, or absent and counted. Never another.
 */
class WeatherReaderLawsTest {
    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 1, 1);
    private static final int DAYS = 365;

    /** Ways to spoil one line. */
    private enum Fault {
        LOSE_LINE,
        SENTINEL,
        WORD,
        SWAP,
        HALF_LINE,
        EXTRA_CELL,
        DECIMAL_COMMAS,
        TIMES_TEN,
        TWICE_THE_SAME,
        TWICE_DIFFERENTLY,
        OTHER_DATE_STYLE,
        DATE_THAT_IS_NOT,
        NEGATIVE_RAIN,
        SPACES_AND_QUOTES,
        NONE
    }

    /** Ways to write the whole file. */
    private enum Style {
        PLAIN,
        BYTE_ORDER_MARK,
        CRLF,
        SEMICOLONS,
        TABS,
        FAHRENHEIT,
        KELVIN,
        TENTHS,
        SWAPPED_COLUMNS,
        HEADER_LOST
    }

    private static final Set<Style> OTHER_UNITS = Set.of(Style.FAHRENHEIT, Style.KELVIN, Style.TENTHS,
            Style.SWAPPED_COLUMNS);

    private record Row(LocalDate date, double min, double max, double rain) {}

    @Property(tries = 400)
    void nothing_untrue_is_read(@ForAll Fault fault, @ForAll Style style,
            @ForAll @IntRange(min = 0, max = DAYS - 2) int at, @ForAll @IntRange(min = 0, max = 99) int seed) {
        List<Row> rows = rows(seed);

        Problems problems = new Problems();
        Optional<WeatherImport> read = WeatherReader.read(text(rows, fault, style, at).getBytes(StandardCharsets.UTF_8),
                "w.csv", TODAY, WeatherHints.NONE, problems);

        assertThat(read.isPresent()).isEqualTo(problems.isEmpty());
        problems.list().forEach(each -> assertThat(each.inWords()).contains("w.csv"));
        read.ifPresent(each -> isTrue(each, rows));
        if (OTHER_UNITS.contains(style)) {
            assertThat(problems.list()).anyMatch(each -> each.name().equals("wrong-units"));
        }
        if (style == Style.PLAIN && fault == Fault.NONE) {
            assertThat(read.orElseThrow().weather().count()).isEqualTo(DAYS);
        }
    }

    private static void isTrue(WeatherImport read, List<Row> rows) {
        int absent = 0;
        for (Row row : rows) {
            Optional<WeatherDay> day = read.weather().on(row.date());
            if (day.isPresent()) {
                trueOrAbsent(day.get().minC(), row.min());
                trueOrAbsent(day.get().maxC(), row.max());
                trueOrAbsent(day.get().rainMm(), row.rain());
                absent += day.get().minC().isEmpty() || day.get().maxC().isEmpty() ? 1 : 0;
            }
        }
        assertThat(read.notMeasured()).isEqualTo(absent);
        assertThat(read.weather().count() + read.gaps().stream().mapToInt(WeatherImport.Gap::days).sum())
                .isLessThanOrEqualTo(DAYS);
        assertThat(read.weather().first()).isAfterOrEqualTo(FIRST);
        assertThat(read.weather().last()).isBeforeOrEqualTo(FIRST.plusDays(DAYS - 1));
    }

    private static void trueOrAbsent(OptionalDouble value, double written) {
        if (value.isPresent()) { assertThat(value.getAsDouble()).isEqualTo(written); }
    }

    /** Winters about 3 °C, summers about 21; tenths, so that a unit shows. */
    private static List<Row> rows(int seed) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < DAYS; i++) {
            double warm = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i - 15) / DAYS);
            long tenths = Math.round(10 + 120 * warm) + (i * 7 + seed) % 30;
            rows.add(new Row(FIRST.plusDays(i), tenths / 10.0, (tenths + 61 + (i + seed) % 20) / 10.0,
                    (i + seed) % 4 / 2.0));
        }
        return rows;
    }

    private static String text(List<Row> rows, Fault fault, Style style, int at) {
        StringBuilder text = new StringBuilder();
        if (style != Style.HEADER_LOST) {
            text.append(style == Style.SWAPPED_COLUMNS ? "date,tmax,tmin,rain\n" : "date,tmin,tmax,rain\n");
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            String line = row.date() + "," + unit(row.min(), style) + "," + unit(row.max(), style) + "," + row.rain();
            text.append(i == at ? spoilt(line, row, fault) : line + "\n");
        }
        return styled(text.toString(), style);
    }

    private static double unit(double celsius, Style style) {
        return switch (style) {
            case FAHRENHEIT -> Math.round(celsius * 18 + 320) / 10.0;
            case KELVIN -> Math.round(celsius * 10 + 2731.5) / 10.0;
            case TENTHS -> Math.round(celsius * 10);
            default -> celsius;
        };
    }

    private static String styled(String text, Style style) {
        return switch (style) {
            case BYTE_ORDER_MARK -> "\uFEFF" + text;
            case CRLF -> text.replace("\n", "\r\n");
            case SEMICOLONS -> text.replace(',', ';').replace('.', ',');
            case TABS -> text.replace(',', '\t');
            default -> text;
        };
    }

    private static String spoilt(String line, Row row, Fault fault) {
        String date = row.date().toString();
        return switch (fault) {
            case LOSE_LINE -> "";
            case SENTINEL -> date + ",99.9," + row.max() + ",-9999\n";
            case WORD -> date + ",cold," + row.max() + ",0\n";
            case SWAP -> date + "," + row.max() + "," + row.min() + ",0\n";
            case HALF_LINE -> date + "," + row.min() + "\n";
            case EXTRA_CELL -> line + ",5\n";
            case DECIMAL_COMMAS -> date + line.substring(10).replace('.', ',') + "\n";
            case TIMES_TEN -> date + "," + row.min() + "," + row.max() * 100 + ",0\n";
            case TWICE_THE_SAME -> line + "\n" + line + "\n";
            case TWICE_DIFFERENTLY -> line + "\n" + date + ",-1,0,0\n";
            case OTHER_DATE_STYLE -> "03/02/2025" + line.substring(10) + "\n";
            case DATE_THAT_IS_NOT -> "2025-02-30" + line.substring(10) + "\n";
            case NEGATIVE_RAIN -> date + "," + row.min() + "," + row.max() + ",-4\n";
            case SPACES_AND_QUOTES -> "\"" + line.replace(",", "\" , \"") + "\"\n";
            case NONE -> line + "\n";
        };
    }
}

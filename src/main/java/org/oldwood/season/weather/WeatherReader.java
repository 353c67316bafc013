package org.oldwood.season.weather;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.oldwood.season.weather.WeatherDates.Moment;
import org.oldwood.season.weather.WeatherTable.Row;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * Reads daily weather from a table whose columns are named as we or the weather services name them
 * ({@code season/weather-columns.json}), hours with time stamps, which are folded to days, or NOAA GHCN-Daily by value,
 * with commas or in fixed columns. All or nothing: a file with any problem gives no day at all.
 *
 * <p>Values that stand for "not measured" are read as absent and counted, and so are GHCN-Daily values that failed its
 * quality check.
 */
public final class WeatherReader {
    private static final Pattern FIXED = Pattern
            .compile("([A-Z0-9_-]{11})([0-9]{4})([0-9]{2})(TMIN|TMAX|PRCP)((?:[ 0-9-]{5}...){1,31}).*");
    private static final String ANY_FIXED = "[A-Z]{2}[A-Z0-9_-]{9}[0-9]{6}[A-Z0-9]{4}[ 0-9-]{5}.*";

    private final Place file;
    private final Problems problems;
    private final WeatherRows rows;
    private final WeatherHints hints;

    private WeatherReader(String name, LocalDate today, WeatherHints hints, Problems problems) {
        this.file = Place.of(name);
        this.problems = problems;
        this.hints = hints;
        this.rows = new WeatherRows(name, today, problems);
    }

    /**
     * Reads a file's bytes.
     *
     * @param today no day may lie after it
     * @param hints what the file itself does not say
     * @return what was read; empty where there was any problem, which {@code problems} then tells
     */
    public static Optional<WeatherImport> read(byte[] bytes, String name, LocalDate today, WeatherHints hints,
            Problems problems) {
        return new WeatherReader(name, today, hints, problems).read(WeatherTable.of(bytes, hints));
    }

    private Optional<WeatherImport> read(WeatherTable table) {
        int before = problems.count();
        String format = "";
        if (table.columns().isPresent()) {
            format = byColumns(table, table.columns().get());
        } else if (table.rows().isEmpty()) {
            problem("empty-weather", 0);
        } else {
            format = withoutNames(table);
        }
        rows.checkUnits();
        return problems.count() == before ? Optional.of(rows.result(format)) : Optional.empty();
    }

    private String withoutNames(WeatherTable table) {
        List<Row> lines = table.rows().stream().filter(row -> !row.cell(2).equals("ELEMENT")).toList();
        Row first = lines.isEmpty() ? table.rows().get(0) : lines.get(0);
        if (first.cell(0).matches(ANY_FIXED)) {
            lines.forEach(this::fixed);
        } else if (first.cell(0).length() == 11 && first.cell(1).matches("[0-9]{8}")) {
            lines.forEach(this::byElement);
        } else {
            problem("missing-column of-weather", first.line(), String.join(", ", first.cells()));
        }
        rows.units(WeatherUnits.TENTHS, WeatherUnits.TENTHS);
        rows.finish();
        return "GHCN-Daily by element, in tenths of °C and mm";
    }

    /** Station, YYYYMMDD, element, value, and three flags, the second of which tells a failed check. */
    private void byElement(Row row) {
        if (row.cell(2).matches("TMIN|TMAX|PRCP")) {
            WeatherDates.YEAR_FIRST.read(row.cell(1)).ifPresentOrElse(moment -> {
                rows.station(row.cell(0), row.line());
                rows.element(moment.day(), row.cell(2), row.cell(5).isEmpty() ? row.cell(3) : "", row.line());
            }, () -> notADate(row.cell(1), row.line()));
        }
    }

    /** Station, year, month, element, and for each day five places of value and three of flags. */
    private void fixed(Row row) {
        // blank flags at a line's end may have been cut off
        Matcher parts = FIXED.matcher(row.cell(0) + "   ");
        if (!parts.matches()) { return; }
        rows.station(parts.group(1), row.line());
        YearMonth month = YearMonth.of(Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3)));
        for (int day = 1; day <= month.lengthOfMonth() && day * 8 <= parts.group(5).length(); day++) {
            String value = parts.group(5).substring(day * 8 - 8, day * 8);
            if (!value.startsWith("-9999")) {
                String measured = value.charAt(6) == ' ' ? value.substring(0, 5).strip() : "";
                rows.element(month.atDay(day), parts.group(4), measured, row.line());
            }
        }
    }

    private String byColumns(WeatherTable table, WeatherColumns columns) {
        List<String> texts = table.rows().stream().map(row -> date(columns, row)).toList();
        Optional<WeatherDates> style = hints.dayFirst()
                .filter(given -> texts.stream().noneMatch(text -> text.matches("[0-9]{4}.*")))
                .map(first -> first ? WeatherDates.DAY_FIRST : WeatherDates.MONTH_FIRST)
                .or(() -> WeatherDates.of(texts));
        Optional<WeatherUnits> units = units(table, columns);
        if (style.isEmpty()) { problem("two-readings", table.rows().get(0).line(), texts.get(0)); }
        if (style.isEmpty() || units.isEmpty()) { return ""; }
        rows.units(units.get(),
                columns.unit("rain").map(unit -> unit == 'i' ? WeatherUnits.F : WeatherUnits.C).orElse(units.get()));
        rows.decimalCommas(table.separator() != ',');
        boolean hours = isHourly(style.get(), texts);
        int last = table.rows().size() - 1;
        for (int i = 0; i <= last; i++) {
            Row row = table.rows().get(i);
            Optional<Moment> moment = style.get().read(texts.get(i));
            boolean closingWords = i == last && i > 0 && isWords(row);
            if (moment.isEmpty() && !closingWords) {
                notADate(texts.get(i), row.line());
            } else if (moment.isPresent() && !isTooLong(row, columns)) {
                rows.station(columns.cell(row.cells(), "station"), row.line());
                take(columns, row, moment.get(), hours);
            }
        }
        rows.finish();
        return told(columns, units.get(), hours);
    }

    private static String told(WeatherColumns columns, WeatherUnits units, boolean hours) {
        String format = hours ? "hours folded to days by the file's own clock"
                : WeatherColumns.OURS.stream().filter(each -> columns.at().containsKey(each) && !each.equals("station"))
                        .collect(Collectors.joining(","));
        boolean rainApart = columns.unit("rain").isPresent() && units == WeatherUnits.F;
        String others = String.join(", ", columns.notUsed());
        return "%s in %s%s".formatted(format, rainApart ? "°F" : units.words(),
                others.isEmpty() ? "" : "; not used: " + others);
    }

    /** A closing line that tells of the file. */
    private static boolean isWords(Row row) {
        return row.cell(0).matches("\\p{L}.*") && row.cells().stream().skip(1).allMatch(String::isEmpty);
    }

    private void take(WeatherColumns columns, Row row, Moment moment, boolean hours) {
        boolean ofHour = !columns.at().containsKey("tmin") && !columns.at().containsKey("tmax");
        String min = columns.value(row.cells(), ofHour ? "temperature" : "tmin");
        String max = columns.value(row.cells(), ofHour ? "temperature" : "tmax");
        String rain = columns.value(row.cells(), "rain");
        if (columns.inTenths() && rain.equals("-1")) { rain = "0"; }
        if (hours) {
            rows.hour(moment, min, max, rain, row.line());
        } else if (ofHour && !min.isEmpty()) {
            problem("missing-column mean", row.line());
        } else {
            rows.day(moment.day(), min, max, rain, row.line());
        }
    }

    /** Year, month and day stand together or apart, and so may the time of day. */
    private static String date(WeatherColumns columns, Row row) {
        String day = columns.at().containsKey("date")
                ? columns.cell(row.cells(), "date").replaceFirst("^([0-9]{8})([0-9]{2})", "$1 $2:")
                : "%s-%s-%s".formatted(columns.cell(row.cells(), "year"), columns.cell(row.cells(), "month"),
                        columns.cell(row.cells(), "day"));
        return (day + " " + columns.cell(row.cells(), "time")).strip();
    }

    private static boolean isHourly(WeatherDates style, List<String> texts) {
        List<Moment> first = texts.stream().limit(3).flatMap(text -> style.read(text).stream())
                .filter(each -> each.hour().isPresent()).toList();
        return first.size() > 1 && first.stream().map(Moment::day).distinct().count() < first.size();
    }

    private Optional<WeatherUnits> units(WeatherTable table, WeatherColumns columns) {
        if (hints.units().isPresent()) { return hints.units(); }
        Optional<Character> named = columns.unit("tmax").or(() -> columns.unit("tmin"))
                .or(() -> columns.unit("temperature"));
        if (named.isPresent()) { return Optional.of(named.get() == 'f' ? WeatherUnits.F : WeatherUnits.C); }
        if (columns.inTenths()) { return Optional.of(WeatherUnits.TENTHS); }
        boolean ghcn = columns.known().containsKey("station")
                && (columns.known().containsKey("tmax") || columns.known().containsKey("tmin"));
        Optional<WeatherUnits> units = !ghcn ? Optional.of(WeatherUnits.C)
                : WeatherUnits.ofGhcn(cells(table, columns, List.of("tmin", "tmax")),
                        cells(table, columns, List.of("rain")));
        if (units.isEmpty()) { problem("two-readings of-degrees", table.rows().get(0).line()); }
        return units;
    }

    private static List<String> cells(WeatherTable table, WeatherColumns columns, List<String> of) {
        return table.rows().stream().flatMap(row -> of.stream().map(each -> columns.value(row.cells(), each))).toList();
    }

    /** A decimal comma among commas makes two cells of one value, and all that follow are wrong. */
    private boolean isTooLong(Row row, WeatherColumns columns) {
        int cells = row.cells().size();
        int named = columns.names().size();
        boolean tooLong = cells > named && !row.cell(cells - 1).isEmpty();
        if (tooLong) { problem("too-many-cells of-weather", row.line(), cells, named); }
        return tooLong;
    }

    private void notADate(String text, int line) { problem("not-a-date of-weather", line, text); }

    private void problem(String words, int line, Object... said) {
        problems.tell(words, line == 0 ? file : Place.of(file.file(), line), said);
    }
}

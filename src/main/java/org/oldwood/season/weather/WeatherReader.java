package org.oldwood.season.weather;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * Reads daily weather: our own columns {@code date,tmin,tmax,rain} in °C and mm, or NOAA GHCN-Daily in tenths of both,
 * as one row a day with a {@code STATION} column or as one row a value without a header. All or nothing: a file with
 * any problem gives no day at all.
 *
 * <p>Values that stand for "not measured" (an empty cell, NA, 99.9, -99.9, 999.9, -999.9, 9999, -9999) are read as
 * absent and counted, and so are GHCN-Daily values that failed its quality check.
 */
public final class WeatherReader {
    private static final String OWN_FORMAT = "date,tmin,tmax,rain in °C and mm";

    private final Place file;
    private final Problems problems;
    private final WeatherRows rows;

    private WeatherReader(String name, LocalDate today, Problems problems) {
        this.file = Place.of(name);
        this.problems = problems;
        this.rows = new WeatherRows(name, today, problems);
    }

    /**
     * Reads a file's bytes.
     *
     * @param today no day may lie after it
     * @return what was read; empty where there was any problem, which {@code problems} then tells
     */
    public static Optional<WeatherImport> read(byte[] bytes, String name, LocalDate today, Problems problems) {
        return new WeatherReader(name, today, problems).read(WeatherTable.of(bytes));
    }

    private Optional<WeatherImport> read(WeatherTable table) {
        int before = problems.count();
        if (table.rows().isEmpty()) {
            problems.add(
                    "empty-weather", file, "holds no line with weather", "The first line must be: date,tmin,tmax,rain");
            return Optional.empty();
        }
        String format = isByElement(table.rows().get(0)) ? byElement(table) : byDay(table);
        rows.checkUnits();
        return problems.count() == before ? Optional.of(rows.result(format)) : Optional.empty();
    }

    /** GHCN-Daily by station or year: ID, YYYYMMDD, element, value, three flags. */
    private static boolean isByElement(List<String> first) {
        return first.size() >= 4
                && first.get(0).length() == 11
                && first.get(1).length() == 8
                && first.get(1).chars().allMatch(Character::isDigit)
                && first.get(2).length() == 4;
    }

    private String byElement(WeatherTable table) {
        rows.tenths();
        for (int row = 0; row < table.rows().size(); row++) {
            int line = table.lines().get(row);
            String element = table.cell(row, 2);
            if (WeatherRows.isElement(element)) {
                Optional<LocalDate> date = date(table.cell(row, 1), line);
                boolean failed = !table.cell(row, 5).isEmpty();
                if (date.isPresent()) {
                    rows.station(table.cell(row, 0), line);
                    rows.element(date.get(), element, failed ? "" : table.cell(row, 3), line);
                }
            }
        }
        rows.finishElements();
        return "GHCN-Daily by element, in tenths of °C and mm";
    }

    private String byDay(WeatherTable table) {
        Map<String, Integer> columns = table.columns();
        boolean ghcn = columns.containsKey("station");
        if (!hasColumns(columns, table.lines().get(0))) {
            return "";
        }
        boolean decimals = ghcn && hasDecimals(table, columns);
        if (ghcn && !decimals) {
            rows.tenths();
        }
        rows.decimalCommas(table.separator() != ',');
        for (int row = 1; row < table.rows().size(); row++) {
            int line = table.lines().get(row);
            if (isTooLong(table, row, line)) {
                continue;
            }
            Optional<LocalDate> date = date(table.cell(row, columns.getOrDefault("date", -1)), line);
            if (ghcn) {
                rows.station(table.cell(row, columns.getOrDefault("station", -1)), line);
            }
            if (date.isPresent()) {
                rows.day(
                        date.get(),
                        value(table, row, columns, "tmin"),
                        value(table, row, columns, "tmax"),
                        value(table, row, columns, columns.containsKey("rain") ? "rain" : "prcp"),
                        line);
            }
        }
        if (ghcn) {
            return decimals ? "GHCN-Daily in °C and mm" : "GHCN-Daily in tenths of °C and mm";
        }
        return OWN_FORMAT + notUsed(columns);
    }

    /** A decimal comma among commas makes two cells of one value, and all that follow are wrong. */
    private boolean isTooLong(WeatherTable table, int row, int line) {
        int cells = table.rows().get(row).size();
        int columns = table.rows().get(0).size();
        boolean tooLong = cells > columns && !table.cell(row, cells - 1).isEmpty();
        if (tooLong) {
            problems.add(
                    "too-many-cells",
                    Place.of(file.file(), line),
                    "has " + cells + " cells, but there are " + columns + " columns",
                    "Where decimals are written with a comma, the cells must be parted by semicolons.");
        }
        return tooLong;
    }

    private static String notUsed(Map<String, Integer> columns) {
        List<String> others = new ArrayList<>(columns.keySet());
        others.removeAll(List.of("date", "tmin", "tmax", "rain", "prcp", ""));
        return others.isEmpty() ? "" : "; not used: " + String.join(", ", others);
    }

    private static boolean hasDecimals(WeatherTable table, Map<String, Integer> columns) {
        for (int row = 1; row < table.rows().size(); row++) {
            if (table.cell(row, columns.getOrDefault("tmax", -1)).indexOf('.') >= 0
                    || table.cell(row, columns.getOrDefault("tmin", -1)).indexOf('.') >= 0) {
                return true;
            }
        }
        return false;
    }

    private static String value(WeatherTable table, int row, Map<String, Integer> columns, String name) {
        Integer column = columns.get(name);
        if (column == null) {
            return "";
        }
        Integer attributes = columns.get(name + "_attributes");
        return attributes != null && failed(table.cell(row, attributes)) ? "" : table.cell(row, column);
    }

    /** The attributes are measurement, quality and source flag; a quality flag means a failed check. */
    private static boolean failed(String attributes) {
        int comma = attributes.indexOf(',');
        return comma >= 0
                && comma + 1 < attributes.length()
                && attributes.charAt(comma + 1) != ','
                && attributes.charAt(comma + 1) != ' ';
    }

    private boolean hasColumns(Map<String, Integer> columns, int line) {
        boolean all = true;
        for (String name : List.of("date", "tmin", "tmax")) {
            if (!columns.containsKey(name)) {
                problems.add(
                        "missing-column",
                        Place.of(file.file(), line),
                        "has no column " + name + " among " + String.join(", ", columns.keySet()),
                        "The first line must name the columns: date,tmin,tmax,rain");
                all = false;
            }
        }
        return all;
    }

    private Optional<LocalDate> date(String text, int line) {
        try {
            return Optional.of(IsoDate.parse(text.replaceFirst("^([0-9]{4})([0-9]{2})([0-9]{2})$", "$1-$2-$3")));
        } catch (DateTimeParseException e) {
            problems.add(
                    "not-a-date",
                    Place.of(file.file(), line),
                    "must begin with %s, but has \"%s\"".formatted(IsoDate.RULE, text),
                    "Write for example: 2026-11-20");
            return Optional.empty();
        }
    }
}

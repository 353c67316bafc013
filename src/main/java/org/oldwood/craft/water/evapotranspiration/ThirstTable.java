package org.oldwood.craft.water.evapotranspiration;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * Reads a table of days for reference evapotranspiration: {@code date,tmin,tmax} and any of
 * {@code rhmin,rhmax,wind,sun,radiation}, in °C, %, m/s at 2 m, hours and MJ/m². Empty cells are values that were not
 * measured.
 */
public final class ThirstTable {
    /** The columns that a table may have, in their usual order. */
    public static final List<String> COLUMNS =
            List.of("date", "tmin", "tmax", "rhmin", "rhmax", "wind", "sun", "radiation");

    /** What other programs call them; the rain is not needed here. */
    private static final List<String> PASSED_OVER = List.of("rain");

    private static final List<String> NEEDED = List.of("date", "tmin", "tmax");

    private final String file;
    private final boolean coast;
    private final Problems problems;
    private final Map<String, Integer> columns = new HashMap<>();

    /** A day of the table. */
    public record Row(LocalDate date, DayWeather weather, int line) {}

    /**
     * What was read.
     *
     * @param rows the days
     * @param passedOver lines without any temperature, on which nothing can be worked out
     */
    public record Days(List<Row> rows, int passedOver) {
        public Days {
            rows = List.copyOf(rows);
        }
    }

    private ThirstTable(String file, boolean coast, Problems problems) {
        this.file = file;
        this.coast = coast;
        this.problems = problems;
    }

    /**
     * Reads the lines. Every problem is added with its line; rows with problems are left out.
     *
     * @param coast whether radiation that was not measured is that of a coast
     */
    public static Days read(List<String> lines, String file, boolean coast, Problems problems) {
        ThirstTable table = new ThirstTable(file, coast, problems);
        List<Row> rows = new ArrayList<>();
        if (lines.isEmpty() || !table.heading(lines.get(0))) {
            return new Days(rows, 0);
        }
        int passedOver = 0;
        for (int i = 1; i < lines.size(); i++) {
            String[] cells = cells(lines.get(i));
            if (lines.get(i).isBlank()) {
                continue;
            }
            if (table.cell(cells, "tmin").isEmpty() && table.cell(cells, "tmax").isEmpty()) {
                passedOver++;
            } else {
                table.row(cells, i + 1).ifPresent(rows::add);
            }
        }
        return new Days(rows, passedOver);
    }

    private boolean heading(String line) {
        String[] names = cells(line.startsWith("\uFEFF") ? line.substring(1) : line);
        for (int i = 0; i < names.length; i++) {
            String name = names[i].toLowerCase(java.util.Locale.ROOT);
            if (!COLUMNS.contains(name) && !PASSED_OVER.contains(name)) {
                wrong(1, "unknown-column", "has an unknown column \"" + names[i] + "\"", Nearest.hint(name, COLUMNS));
            }
            columns.put(name, i);
        }
        for (String name : NEEDED) {
            if (!columns.containsKey(name)) {
                wrong(
                        1,
                        "missing-column",
                        "has no column " + name,
                        "The first line must name the columns, for example: " + String.join(",", COLUMNS));
            }
        }
        return columns.keySet().containsAll(NEEDED);
    }

    private Optional<Row> row(String[] cells, int number) {
        try {
            LocalDate date = LocalDate.parse(cell(cells, "date"));
            return Optional.of(new Row(date, weather(cells), number));
        } catch (DateTimeParseException e) {
            wrong(
                    number,
                    "not-a-date",
                    "has no date that exists, written year-month-day",
                    "Write for example: 2026-07-06");
        } catch (NumberFormatException e) {
            wrong(
                    number,
                    "not-a-number",
                    "has a cell that is no number: " + e.getMessage(),
                    "Write numbers with a decimal point; leave a cell empty where nothing was" + " measured.");
        } catch (IllegalArgumentException e) {
            wrong(number, "impossible-weather", String.valueOf(e.getMessage()), "Look whether columns are swapped.");
        }
        return Optional.empty();
    }

    private DayWeather weather(String[] cells) {
        OptionalDouble tmin = number(cells, "tmin");
        OptionalDouble tmax = number(cells, "tmax");
        if (tmin.isEmpty() || tmax.isEmpty()) {
            throw new NumberFormatException("tmin and tmax must both be given");
        }
        return new DayWeather(
                tmin.getAsDouble(),
                tmax.getAsDouble(),
                Humidity.of(number(cells, "rhmin"), number(cells, "rhmax")),
                number(cells, "wind"),
                new Sunshine(number(cells, "sun"), number(cells, "radiation"), coast));
    }

    private OptionalDouble number(String[] cells, String name) {
        String text = cell(cells, name);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private String cell(String[] cells, String name) {
        Integer column = columns.get(name);
        return column == null || column >= cells.length ? "" : cells[column];
    }

    private static String[] cells(String line) {
        String[] cells = line.split(",", -1);
        for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].strip();
        }
        return cells;
    }

    private void wrong(int line, String name, String message, String remedy) {
        problems.add(name, Place.of(file, line), message, remedy);
    }
}

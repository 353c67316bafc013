package org.oldwood.season.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Gathers the rows of one weather file and judges them, each by itself and all together. */
final class WeatherRows {
    private static final Set<String> NOT_MEASURED = Set.of(
            "", "na", "nan", "null", "-", "m", "99.9", "-99.9", "999.9", "-999.9", "999", "-999", "9999", "-9999",
            "9999.9", "-9999.9");
    private static final double COLDEST_C = -90;
    private static final double WARMEST_C = 57;
    private static final double WETTEST_MM = 1900;

    private final String file;
    private final LocalDate today;
    private final Problems problems;
    private final Map<LocalDate, WeatherDay> days = new TreeMap<>();
    private final Map<LocalDate, Integer> lines = new HashMap<>();
    private final Map<LocalDate, Map<String, String>> elements = new TreeMap<>();
    private final Set<String> stations = new HashSet<>();
    private final List<WeatherDay> odd = new ArrayList<>();
    private double unit = 1;
    private boolean decimalCommas;
    private int repeated;
    private int notMeasured;
    private int swapped;

    WeatherRows(String file, LocalDate today, Problems problems) {
        this.file = file;
        this.today = today;
        this.problems = problems;
    }

    /** Values are in tenths of °C and of mm. */
    void tenths() {
        unit = 0.1;
    }

    void decimalCommas(boolean may) {
        decimalCommas = may;
    }

    static boolean isElement(String element) {
        return element.equals("TMIN") || element.equals("TMAX") || element.equals("PRCP");
    }

    void station(String station, int line) {
        if (stations.add(station) && stations.size() == 2) {
            problem("two-stations", line, "is of a second station, " + station, "Keep the lines of one station only.");
        }
    }

    void element(LocalDate date, String element, String value, int line) {
        lines.putIfAbsent(date, line);
        Map<String, String> values = elements.computeIfAbsent(date, day -> new HashMap<>());
        String before = values.put(element, value);
        if (before != null && !before.equals(value)) {
            problem(
                    "day-twice",
                    line,
                    "gives " + element + " of " + date + " a second time, differently",
                    "Keep one of the two.");
        }
    }

    void finishElements() {
        Map<LocalDate, Integer> at = Map.copyOf(lines);
        lines.clear();
        elements.forEach((date, values) -> day(
                date,
                values.getOrDefault("TMIN", ""),
                values.getOrDefault("TMAX", ""),
                values.getOrDefault("PRCP", ""),
                at.getOrDefault(date, 0)));
    }

    void day(LocalDate date, String min, String max, String rain, int line) {
        int before = problems.count();
        WeatherDay day =
                new WeatherDay(date, number(min, "tmin", line), number(max, "tmax", line), number(rain, "rain", line));
        if (date.isAfter(today)) {
            problem("weather-after-today", line, "is of a day after today, " + date, "");
        }
        if (problems.count() > before) {
            return;
        }
        if (judge(day, line)) {
            keep(day, line);
        }
    }

    private void keep(WeatherDay day, int line) {
        WeatherDay before = days.putIfAbsent(day.date(), day);
        if (before == null) {
            lines.put(day.date(), line);
            notMeasured += lacksTemperature(day) ? 1 : 0;
        } else if (before.equals(day)) {
            repeated++;
        } else {
            problem(
                    "day-twice",
                    line,
                    "gives " + day.date() + " again, differently from line " + lines.getOrDefault(day.date(), 0),
                    "Keep one of the two.");
        }
    }

    static boolean lacksTemperature(WeatherDay day) {
        return day.minC().isEmpty() || day.maxC().isEmpty();
    }

    private OptionalDouble number(String text, String name, int line) {
        String plain = decimalCommas ? text.replace(',', '.') : text;
        if (NOT_MEASURED.contains(plain.toLowerCase(Locale.ROOT))) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(plain);
            // dividing keeps 123 tenths at exactly 12.3
            return OptionalDouble.of(unit < 1 ? value / 10 : value);
        } catch (NumberFormatException e) {
            problem(
                    "not-a-number",
                    line,
                    name + " must be a number but is \"" + text + "\"",
                    "Leave the cell empty where nothing was measured.");
            return OptionalDouble.empty();
        }
    }

    private boolean judge(WeatherDay day, int line) {
        if (!possible(day.minC(), day.maxC(), day.rainMm())) {
            odd.add(day);
            problem(
                    "impossible-weather",
                    line,
                    "cannot be in °C and mm: " + shown(day),
                    "Temperatures lie from -90 to 57 °C, a day's rain from 0 to 1900 mm.");
            return false;
        }
        if (day.minC().isPresent()
                && day.maxC().isPresent()
                && day.minC().getAsDouble() > day.maxC().getAsDouble()) {
            swapped++;
            problem(
                    "least-above-greatest",
                    line,
                    "has its least temperature above its greatest: " + shown(day),
                    "Look whether the two are swapped.");
            return false;
        }
        return true;
    }

    static boolean possible(OptionalDouble least, OptionalDouble greatest, OptionalDouble rain) {
        return !outside(least, COLDEST_C, WARMEST_C)
                && !outside(greatest, COLDEST_C, WARMEST_C)
                && !outside(rain, 0, WETTEST_MM);
    }

    private static boolean outside(OptionalDouble value, double least, double most) {
        return value.isPresent() && !(value.getAsDouble() >= least && value.getAsDouble() <= most);
    }

    private static String shown(WeatherDay day) {
        return "tmin " + shown(day.minC()) + ", tmax " + shown(day.maxC()) + ", rain " + shown(day.rainMm());
    }

    private static String shown(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "not measured";
    }

    /** Tells what the whole file looks like when its values cannot be °C and mm. */
    void checkUnits() {
        WeatherUnits.suspicion(days.values(), odd, swapped, unit < 1)
                .ifPresent(words -> problems.add("wrong-units", Place.of(file), words.what(), words.remedy()));
    }

    WeatherImport result(String format) {
        return new WeatherImport(Weather.of(days.values()), format, repeated, notMeasured, Optional.of(file));
    }

    private void problem(String name, int line, String message, String remedy) {
        problems.add(name, Place.of(file, line), message, remedy);
    }
}

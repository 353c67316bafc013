package org.oldwood.season.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.oldwood.crop.Figure;
import org.oldwood.season.weather.WeatherDates.Moment;
import org.oldwood.store.Documents;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Gathers the rows of one weather file and judges them, each by itself and all together. */
final class WeatherRows {
    private static final Set<String> NOT_MEASURED = Set.of("", "na", "nan", "null", "-", "m", "999.9", "-999.9", "9999",
            "-9999", "9999.9", "-9999.9");
    private static final Set<String> NOT_MEASURED_IN_C = Set.of("99.9", "-99.9", "999", "-999");
    private static final Set<String> TRACE = Set.of("t", "tr", "trace");
    private static final double COLDEST_C = -90;
    private static final double WARMEST_C = 57;
    private static final double WETTEST_MM = 1900;

    private final String file;
    private final LocalDate today;
    private final Problems problems;
    private final Map<LocalDate, WeatherDay> days = new TreeMap<>();
    private final Map<LocalDate, Integer> lines = new HashMap<>();
    private final Map<LocalDate, Map<String, String>> elements = new TreeMap<>();
    private final Map<LocalDate, Hours> hours = new TreeMap<>();
    private final Set<String> stations = new HashSet<>();
    private final List<WeatherDay> odd = new ArrayList<>();
    private WeatherUnits temperatures = WeatherUnits.C;
    private WeatherUnits rains = WeatherUnits.C;
    private boolean decimalCommas;
    private int repeated;
    private int notMeasured;
    private int swapped;

    WeatherRows(String file, LocalDate today, Problems problems) {
        this.file = file;
        this.today = today;
        this.problems = problems;
    }

    void units(WeatherUnits temperatures, WeatherUnits rains) {
        this.temperatures = temperatures;
        this.rains = rains;
    }

    void decimalCommas(boolean may) { decimalCommas = may; }

    void station(String station, int line) {
        if (!station.isEmpty() && stations.add(station) && stations.size() == 2) {
            problem("two-stations", line, station);
        }
    }

    void element(LocalDate date, String element, String value, int line) {
        lines.putIfAbsent(date, line);
        Map<String, String> values = elements.computeIfAbsent(date, day -> new HashMap<>());
        String before = values.put(element, value);
        if (before != null && !before.equals(value)) { problem("day-twice element", line, element, date); }
    }

    /** The hours of one day together. */
    private static final class Hours {
        private final Set<Integer> warm = new HashSet<>();
        private final Set<Integer> wet = new HashSet<>();
        private double min = Double.POSITIVE_INFINITY;
        private double max = Double.NEGATIVE_INFINITY;
        private double rain;
    }

    void hour(Moment at, String min, String max, String rain, int line) {
        lines.putIfAbsent(at.day(), line);
        Hours day = hours.computeIfAbsent(at.day(), each -> new Hours());
        int hour = at.hour().orElse(0);
        OptionalDouble least = number(min, "tmin", line);
        OptionalDouble greatest = number(max, "tmax", line);
        if (least.isPresent() && greatest.isPresent()) {
            day.warm.add(hour);
            day.min = Math.min(day.min, least.getAsDouble());
            day.max = Math.max(day.max, greatest.getAsDouble());
        }
        number(rain, "rain", line).ifPresent(fell -> {
            day.wet.add(hour);
            day.rain += fell;
        });
    }

    /** Takes the days over that were read value by value or hour by hour. */
    void finish() {
        Map<LocalDate, Integer> at = Map.copyOf(lines);
        int least = (int) Figure.read(Documents.bundled().fields(WeatherColumns.DATA), "leastHours").is();
        if (!elements.isEmpty() || !hours.isEmpty()) { lines.clear(); }
        elements.forEach((date, values) -> day(date, values.getOrDefault("TMIN", ""), values.getOrDefault("TMAX", ""),
                values.getOrDefault("PRCP", ""), at.getOrDefault(date, 0)));
        hours.forEach(
                (date, day) -> take(
                        new WeatherDay(date,
                                day.warm.size() < least ? OptionalDouble.empty() : OptionalDouble.of(day.min),
                                day.warm.size() < least ? OptionalDouble.empty() : OptionalDouble.of(day.max),
                                day.wet.size() < least ? OptionalDouble.empty()
                                        : OptionalDouble.of(WeatherUnits.hundredths(day.rain))),
                        at.getOrDefault(date, 0)));
    }

    void day(LocalDate date, String min, String max, String rain, int line) {
        int before = problems.count();
        WeatherDay day = new WeatherDay(date, number(min, "tmin", line), number(max, "tmax", line),
                number(rain, "rain", line));
        if (problems.count() == before) { take(day, line); }
    }

    private void take(WeatherDay day, int line) {
        if (day.date().isAfter(today)) {
            problem("weather-after-today", line, day.date());
        } else if (judge(day, line)) { keep(day, line); }
    }

    private void keep(WeatherDay day, int line) {
        WeatherDay before = days.putIfAbsent(day.date(), day);
        if (before == null) {
            lines.put(day.date(), line);
            notMeasured += day.hasTemperatures() ? 0 : 1;
        } else if (before.equals(day)) {
            repeated++;
        } else {
            problem("day-twice days", line, day.date(), lines.getOrDefault(day.date(), 0));
        }
    }

    private OptionalDouble number(String text, String name, int line) {
        String plain = (decimalCommas ? text.replace(',', '.') : text).toLowerCase(Locale.ROOT);
        boolean ofRain = name.equals("rain");
        WeatherUnits units = ofRain ? rains : temperatures;
        if (NOT_MEASURED.contains(plain) || (units == WeatherUnits.C && NOT_MEASURED_IN_C.contains(plain))
                || (ofRain && plain.equals("99.99"))) {
            return OptionalDouble.empty();
        }
        if (ofRain && TRACE.contains(plain)) { return OptionalDouble.of(0); }
        try {
            double value = Double.parseDouble(plain);
            return OptionalDouble.of(ofRain ? units.millimetres(value) : units.celsius(value));
        } catch (NumberFormatException e) {
            problem("not-a-number of-weather", line, name, text);
            return OptionalDouble.empty();
        }
    }

    private boolean judge(WeatherDay day, int line) {
        if (!possible(day.minC(), day.maxC(), day.rainMm())) {
            odd.add(day);
            problem("impossible-weather units", line, shown(day));
            return false;
        }
        if (day.hasTemperatures() && day.minC().getAsDouble() > day.maxC().getAsDouble()) {
            swapped++;
            problem("least-above-greatest of-weather", line, shown(day));
            return false;
        }
        return true;
    }

    static boolean possible(OptionalDouble least, OptionalDouble greatest, OptionalDouble rain) {
        return !outside(least, COLDEST_C, WARMEST_C) && !outside(greatest, COLDEST_C, WARMEST_C)
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
        WeatherUnits.suspicion(days.values(), odd, swapped)
                .ifPresent(words -> problems.add("wrong-units", Place.of(file), words.what(), words.remedy()));
    }

    WeatherImport result(String format) {
        return new WeatherImport(Weather.of(days.values()), format, repeated, notMeasured);
    }

    private void problem(String words, int line, Object... said) { problems.tell(words, Place.of(file, line), said); }
}

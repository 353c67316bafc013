package org.oldwood.season.weather;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.season.Months;

/** What a weather file's temperatures are in, and its rain with them. */
public enum WeatherUnits {
    C("°C and mm"),
    F("°F and inches"),
    K("kelvins and mm"),
    TENTHS("tenths of °C and mm");

    // Nowhere on earth is a month's mean minimum above or its mean maximum above these.
    private static final double MOST_MEAN_MIN_C = 33;
    private static final double MOST_MEAN_MAX_C = 48;
    private static final double KELVIN_FROM = 240;
    private static final double KELVIN_TO = 330;
    private static final double FAHRENHEIT_TO = 135;

    /** Days so far from a place's means that fit them in °F are asked about, °C; no month of any year is so warm. */
    private static final double FAR_C = 12;

    private final String words;

    WeatherUnits(String words) { this.words = words; }

    String words() { return words; }

    double celsius(double value) {
        return switch (this) {
            case C -> value;
            case F -> hundredths((value - 32) / 1.8);
            case K -> hundredths(value - 273.15);
            case TENTHS -> value / 10; // dividing keeps 123 tenths at exactly 12.3
        };
    }

    double millimetres(double value) {
        return this == TENTHS ? value / 10 : this == F ? hundredths(value * 25.4) : value;
    }

    static double hundredths(double value) { return Math.round(value * 100) / 100.0; }

    /** What seems wrong with all its days together, and what to do. */
    record Suspicion(String what, String remedy) {}

    static Optional<Suspicion> suspicion(Collection<WeatherDay> good, List<WeatherDay> odd, int swapped) {
        int all = good.size() + odd.size() + swapped;
        if (swapped > 1 && swapped * 10 >= all * 9) {
            return Optional.of(new Suspicion("has the least temperature above the greatest in almost every line",
                    "The columns tmin and tmax are swapped: change their names."));
        }
        List<WeatherDay> days = new ArrayList<>(good);
        days.addAll(odd);
        double most = days.stream().mapToDouble(day -> day.maxC().orElse(-99)).max().orElse(0);
        double meanMax = mean(days, true);
        if (days.isEmpty() || (odd.size() * 10 < all && mayBeCelsius(mean(days, false), meanMax))) {
            return Optional.empty();
        }
        WeatherUnits units = meanMax > KELVIN_FROM && most <= KELVIN_TO ? K : most <= FAHRENHEIT_TO ? F : TENTHS;
        return Optional.of(new Suspicion("looks as if it is in " + units.words,
                "If it is, give --degrees %s.".formatted(units.key())));
    }

    /** Why days read as °C, where the place's mean temperatures are known, may be °F: a mild winter looks like either. */
    public static Optional<String> mayBeFahrenheit(Weather weather, Months meansC) {
        double asC = warmer(weather, meansC, C);
        boolean far = asC > FAR_C && Math.abs(warmer(weather, meansC, F)) < asC / 2;
        return Optional.of("would be %.0f °C warmer than the climate of this place, read as °C".formatted(asC))
                .filter(words -> far);
    }

    private static double warmer(Weather weather, Months meansC, WeatherUnits units) {
        return weather.days().stream().filter(WeatherDay::hasTemperatures)
                .mapToDouble(day -> units.celsius((day.minC().getAsDouble() + day.maxC().getAsDouble()) / 2)
                        - meansC.in(day.date().getMonthValue()))
                .average().orElse(0);
    }

    private String key() { return name().toLowerCase(Locale.ROOT); }

    public static List<String> keys() { return Arrays.stream(values()).map(WeatherUnits::key).toList(); }

    public static WeatherUnits of(String key) { return valueOf(key.toUpperCase(Locale.ROOT)); }

    /** Whether these means of many days can be in °C. */
    static boolean mayBeCelsius(double meanMin, double meanMax) {
        return meanMax <= MOST_MEAN_MAX_C && meanMin <= MOST_MEAN_MIN_C;
    }

    private static double mean(List<WeatherDay> days, boolean greatest) {
        return days.stream().map(day -> greatest ? day.maxC() : day.minC()).flatMapToDouble(OptionalDouble::stream)
                .average().orElse(0);
    }

    /**
     * The units of GHCN-Daily, which is handed out in three kinds without a word: decimals in a temperature are °C,
     * whole ones with decimals in the rain °F. Whole ones throughout are tenths where no thermometer could show them in
     * °F, or rain is told in whole numbers and none could show them in °C.
     *
     * @return nothing where it may be either
     */
    static Optional<WeatherUnits> ofGhcn(List<String> temperatures, List<String> rains) {
        if (temperatures.stream().anyMatch(each -> each.contains("."))) { return Optional.of(C); }
        if (rains.stream().anyMatch(each -> each.contains("."))) { return Optional.of(F); }
        IntSummaryStatistics whole = temperatures.stream().filter(each -> each.matches("-?[0-9]{1,3}"))
                .mapToInt(Integer::parseInt).summaryStatistics();
        boolean beyond = whole.getMax() > FAHRENHEIT_TO || whole.getMin() < -80;
        boolean beyondC = whole.getMax() > 57 || whole.getMin() < -50;
        boolean wet = rains.stream().filter(each -> each.matches("[1-9][0-9]*")).count() > 2;
        return beyond || (wet && beyondC) ? Optional.of(TENTHS) : Optional.empty();
    }
}

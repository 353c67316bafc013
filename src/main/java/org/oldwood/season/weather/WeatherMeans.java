package org.oldwood.season.weather;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.oldwood.season.Climate;
import org.oldwood.season.Months;
import org.oldwood.season.SeasonMethods;
import org.oldwood.words.Dates;

/**
 * Monthly means out of a garden's own measured days. A month of a year counts where few of its days are missing; the
 * means hold where every month of the year was measured often enough. How many days and years: {@code weatherMeans} in
 * {@code season/methods.json}.
 */
public final class WeatherMeans {
    private final SeasonMethods.Means rules;
    private final Column max = new Column();
    private final Column min = new Column();
    private final Column rain = new Column();

    private WeatherMeans(SeasonMethods.Means rules) { this.rules = rules; }

    public static WeatherMeans of(Weather weather, SeasonMethods methods) {
        WeatherMeans means = new WeatherMeans(methods.weatherMeans());
        weather.days().stream()
                .collect(Collectors.groupingBy(day -> YearMonth.from(day.date()), TreeMap::new, Collectors.toList()))
                .forEach(means::count);
        return means;
    }

    private void count(YearMonth of, List<WeatherDay> days) {
        int least = of.lengthOfMonth() - (int) rules.mostMissingDays().is();
        int at = of.getMonthValue() - 1;
        List<WeatherDay> warmth = days.stream().filter(WeatherDay::hasTemperatures).toList();
        if (warmth.size() >= least) {
            max.add(at, mean(warmth, WeatherDay::maxC));
            min.add(at, mean(warmth, WeatherDay::minC));
        }
        if (days.stream().filter(day -> day.rainMm().isPresent()).count() >= least) {
            rain.add(at, mean(days, WeatherDay::rainMm) * of.lengthOfMonth());
        }
    }

    private static double mean(List<WeatherDay> days, Function<WeatherDay, OptionalDouble> value) {
        return days.stream().flatMapToDouble(day -> value.apply(day).stream()).average().orElseThrow();
    }

    /** How many years every month of the year was measured in, temperatures only. */
    public int years() {
        return min.years();
    }

    /** The mean year, where there are enough years. */
    public Optional<Climate> climate() {
        int least = (int) rules.leastYears().is();
        if (years() < least) { return Optional.empty(); }
        return Optional.of(new Climate("the garden's own weather.csv (" + inWords() + ")", Optional.empty(),
                max.means(), min.means(), rain.years() < least ? Optional.empty() : Optional.of(rain.means()),
                List.of(), "", 0));
    }

    /** Why they make no mean year yet: the month that was measured in the fewest years. */
    public String tooShort() {
        return "weather.csv makes no climate of its own yet: it has %s in %s years, and from %.0f years of each month on its means are taken."
                .formatted(Dates.monthName(LocalDate.of(2000, min.scarcest() + 1, 1)), years(),
                        rules.leastYears().is());
    }

    private String inWords() {
        int trusted = (int) rules.trustedYears().is();
        return "means of %s years%s".formatted(years(),
                years() < trusted ? "; from " + trusted + " years on they can be trusted" : "");
    }

    /** Twelve months, each over the years in which it counts. */
    private static final class Column {
        private final double[] sums = new double[12];
        private final int[] counts = new int[12];

        void add(int month, double value) {
            sums[month] += value;
            counts[month]++;
        }

        /** The month, from 0, that was measured in the fewest years. */
        int scarcest() {
            return IntStream.range(0, 12).boxed().min(Comparator.comparingInt(i -> counts[i])).orElse(0);
        }

        int years() { return Arrays.stream(counts).min().orElse(0); }

        Months means() { return Months.of(IntStream.range(0, 12).mapToDouble(i -> sums[i] / counts[i]).toArray()); }
    }
}

package org.oldwood.season.weather;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Finds a weather file that is in other units than it should be, from all its days together. The bounds are physical:
 * nowhere on earth is a month's mean minimum above 33 °C or its mean maximum above 48 °C.
 */
final class WeatherUnits {
    private static final double MOST_MEAN_MIN_C = 33;
    private static final double MOST_MEAN_MAX_C = 48;
    private static final double KELVIN_FROM = 200;
    private static final double KELVIN_TO = 330;
    private static final double FAHRENHEIT_TO = 135;
    private static final int A_YEAR = 300;
    private static final double WARM_SOMETIME_C = 13.5;

    private WeatherUnits() {}

    /** What seems wrong, and what to do. */
    record Suspicion(String what, String remedy) {}

    static Optional<Suspicion> suspicion(
            Collection<WeatherDay> good, List<WeatherDay> odd, int swapped, boolean tenths) {
        int all = good.size() + odd.size() + swapped;
        if (swapped > 1 && swapped * 10 >= all * 9) {
            return Optional.of(new Suspicion(
                    "has the least temperature above the greatest in almost every line",
                    "The columns tmin and tmax are swapped: change their names."));
        }
        List<WeatherDay> days = new ArrayList<>(good);
        days.addAll(odd);
        double most =
                days.stream().mapToDouble(day -> day.maxC().orElse(-99)).max().orElse(0);
        double meanMax = mean(days, true);
        double meanMin = mean(days, false);
        if (tenths) {
            return all >= A_YEAR && most < WARM_SOMETIME_C && meanMax > 0
                    ? Optional.of(notTenths(most))
                    : Optional.empty();
        }
        if (odd.size() * 10 < all && mayBeCelsius(meanMin, meanMax)) {
            return Optional.empty();
        }
        return Optional.of(new Suspicion("looks as if " + unit(meanMax, most), remedy()));
    }

    /** Whether these means of many days can be in °C. */
    static boolean mayBeCelsius(double meanMin, double meanMax) {
        return meanMax <= MOST_MEAN_MAX_C && meanMin <= MOST_MEAN_MIN_C;
    }

    private static double mean(List<WeatherDay> days, boolean greatest) {
        return days.stream()
                .map(day -> greatest ? day.maxC() : day.minC())
                .filter(value -> value.isPresent())
                .mapToDouble(value -> value.getAsDouble())
                .average()
                .orElse(0);
    }

    private static String unit(double mean, double most) {
        if (mean >= KELVIN_FROM && most <= KELVIN_TO && mean > 240) {
            return "its temperatures are in kelvins";
        }
        if (most <= FAHRENHEIT_TO) {
            return "its temperatures are in degrees Fahrenheit";
        }
        return "its temperatures are in tenths of a degree";
    }

    private static Suspicion notTenths(double mostC) {
        return new Suspicion(
                "looks as if it is not in tenths: the warmest day of more than "
                        + A_YEAR
                        + " would have "
                        + mostC
                        + " °C",
                remedy());
    }

    private static String remedy() {
        return "Turn it into °C and mm with the columns date,tmin,tmax,rain; nothing was taken over.";
    }
}

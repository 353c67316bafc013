package org.oldwood.season.sums;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.oldwood.season.Bell;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.SeasonDays;
import org.oldwood.season.SunTimes;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;

/**
 * Days in a row at one place, for sums hour by hour. A day that was not measured counts as the
 * mean of such days in the climate; without
 * a climate it takes a straight line between the days beside it. Such days are counted.
 */
public final class HourlySeries {
    private final LocalDate first;
    private final double[] min;
    private final double[] max;
    private final double[] half;
    private final boolean[] filled;
    private final double spreadC;

    private HourlySeries(LocalDate first, int days, double spreadC) {
        this.first = first;
        this.spreadC = spreadC;
        this.min = new double[days];
        this.max = new double[days];
        this.half = new double[days];
        this.filled = new boolean[days];
    }

    /**
     * The days from {@code first} to {@code last}, both included. Where nothing at all was measured and there is no
     * climate, all temperatures are absent and the sums are too.
     */
    public static Optional<HourlySeries> of(double latitude, Weather weather, Optional<GardenClimate> climate,
            LocalDate first, LocalDate last) {
        HourlySeries series = new HourlySeries(first, (int) (last.toEpochDay() - first.toEpochDay()) + 1,
                climate.map(GardenClimate::spreadC).orElse(0.0));
        boolean any = climate.isPresent();
        double[] halfDays = SunTimes.halfDays(latitude);
        LocalDate date = first;
        for (int i = 0; i < series.min.length; i++, date = date.plusDays(1)) {
            int day = SeasonDays.normalDay(date);
            series.half[i] = halfDays[SeasonDays.sunDay(date)];
            Optional<WeatherDay> measured = weather.on(date);
            OptionalDouble least = measured.map(WeatherDay::minC).orElse(OptionalDouble.empty());
            OptionalDouble most = measured.map(WeatherDay::maxC).orElse(OptionalDouble.empty());
            if (least.isPresent() && most.isPresent()) {
                series.min[i] = least.getAsDouble();
                series.max[i] = most.getAsDouble();
                any = true;
            } else {
                series.filled[i] = true;
                series.min[i] = climate.map(each -> each.normalMinC(day)).orElse(Double.NaN);
                series.max[i] = climate.map(each -> each.normalMaxC(day)).orElse(Double.NaN);
            }
        }
        if (any) {
            bridge(series.min);
            bridge(series.max);
        }
        return any ? Optional.of(series) : Optional.empty();
    }

    /** Puts a straight line over each run of absent values; at the ends the nearest value stays. */
    private static void bridge(double[] values) {
        int before = -1;
        for (int i = 0; i <= values.length; i++) {
            if (i < values.length && Double.isNaN(values[i])) { continue; }
            for (int gap = before + 1; gap < i; gap++) {
                values[gap] = between(values, before, i, gap);
            }
            before = i;
        }
    }

    private static double between(double[] values, int before, int after, int at) {
        if (before < 0) { return values[after]; }
        if (after >= values.length) { return values[before]; }
        double share = (double) (at - before) / (after - before);
        return values[before] + share * (values[after] - values[before]);
    }

    /** The days of a stretch, both ends included, that were not measured. */
    public int filled(Days days) {
        return (int) IntStream.rangeClosed(index(days.first()), index(days.last())).filter(day -> filled[day]).count();
    }

    /** A stretch of days, both ends included. */
    public record Days(LocalDate first, LocalDate last) {}

    /**
     * What each sum gives on each stretch, by sum and stretch. All are fed once, in one go from the first day of the
     * series on, so that what they remember is right when a stretch begins.
     */
    public double[][] sums(List<HourlySum> sums, List<Days> stretches) {
        int end = stretches.stream().mapToInt(days -> index(days.last())).max().orElse(-1);
        double[][] byDay = new double[sums.size()][end + 1];
        double[] hours = new double[24];
        for (int i = 0; i <= end; i++) {
            HourlyTemperature.fill(min, max, half, i, hours);
            for (int each = 0; each < byDay.length; each++) {
                byDay[each][i] = sums.get(each).day(hours, filled[i] ? spreadC : 0);
            }
        }
        double[][] totals = new double[byDay.length][];
        Arrays.setAll(totals, each -> stretches.stream().mapToDouble(days -> total(byDay[each], days)).toArray());
        return totals;
    }

    private double total(double[] byDay, Days days) {
        return IntStream.rangeClosed(index(days.first()), index(days.last())).mapToDouble(i -> byDay[i]).reduce(0,
                Double::sum);
    }

    /** The sum over a stretch of what each day's least and greatest temperature give. */
    public double ofDays(DoubleBinaryOperator ofDay, Days days) {
        return IntStream
                .rangeClosed(index(days.first()), index(days.last())).mapToDouble(i -> Bell
                        .mean(filled[i] ? spreadC : 0, warmer -> ofDay.applyAsDouble(min[i] + warmer, max[i] + warmer)))
                .sum();
    }

    private int index(LocalDate date) { return (int) (date.toEpochDay() - first.toEpochDay()); }
}

package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.stream.IntStream;
import org.oldwood.season.sums.HourlySum;
import org.oldwood.season.sums.HourlyTemperature;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;

/**
 * Every day of one season at one place, a month before it and four months after it: least, greatest and mean
 * temperature as measured, or else from the climate's mean year.
 */
public final class SeasonDays {
    private static final int DAYS = 520;

    private final Season season;
    private final SunYear sun;
    private final LocalDate first;
    private final double spreadC;
    private final double[] min = new double[DAYS];
    private final double[] max = new double[DAYS];
    private final boolean[] measured = new boolean[DAYS];
    private final int[] sunDays = new int[DAYS];
    private final double[] halfDays = new double[DAYS];
    private final double[] hours = new double[24];
    private int measuredDays;

    public SeasonDays(Season season, Place place) {
        this.season = season;
        this.sun = place.sun();
        this.first = season.start().minusDays(31);
        this.spreadC = place.spreadC();
        LocalDate date = first;
        for (int i = 0; i < DAYS; i++) {
            int day = normalDay(date);
            sunDays[i] = sunDay(date);
            halfDays[i] = sun.halfDay(sunDays[i]);
            min[i] = place.dailyMinC().on(day);
            max[i] = place.dailyMaxC().on(day);
            date = date.plusDays(1);
        }
        for (WeatherDay day : place.weather().between(first, first.plusDays(DAYS - 1L))) {
            if (day.hasTemperatures()) {
                int i = index(day.date());
                min[i] = day.minC().getAsDouble();
                max[i] = day.maxC().getAsDouble();
                measured[i] = true;
                measuredDays++;
            }
        }
    }

    /** A place's mean year, day by day, and what was measured there. */
    public record Place(SunYear sun, MeanCurve dailyMinC, MeanCurve dailyMaxC, double spreadC, Weather weather) {}

    /** The day's place in a year of 365; 29 February stands with the 28th. */
    public static int normalDay(LocalDate date) {
        int day = date.getDayOfYear();
        return date.isLeapYear() && day > 59 ? day - 2 : day - 1;
    }

    /** The day's place in the sun's year, as the leap year counts. */
    public static int sunDay(LocalDate date) {
        return date.getDayOfYear() - 1;
    }

    public Season season() { return season; }

    public int measuredDays() { return measuredDays; }

    /** The day of this season that has the northern year's month and day. */
    public LocalDate on(MonthDay northern) {
        return season.day(northern);
    }

    /** The place of a day among these, from 0. */
    public int index(LocalDate date) {
        return (int) (date.toEpochDay() - first.toEpochDay());
    }

    public LocalDate day(int index) { return first.plusDays(index); }

    public double meanC(int day) { return (min[day] + max[day]) / 2; }

    public boolean isMeasured(int day) { return measured[day]; }

    /** How many days from {@code from} to the day before {@code to} were not measured. */
    int unmeasured(LocalDate from, LocalDate to) {
        return (int) IntStream.range(index(from), index(to)).filter(day -> !measured[day]).count();
    }

    /** The last measured day from {@code from} on; empty where none was. */
    Optional<LocalDate> lastMeasured(LocalDate from) {
        for (int day = DAYS - 1; day >= index(from); day--) {
            if (measured[day]) { return Optional.of(day(day)); }
        }
        return Optional.empty();
    }

    public double dayLengthH(int day) { return sun.lengthH(sunDays[day]); }

    /**
     * The heat of a day above a base, °C·d. Of a day that was not measured it is what such days give on the average:
     * their means lie about the normal one, and the warm ones count.
     */
    public double heat(int day, double baseC) {
        double mean = meanC(day);
        return measured[day] ? Math.max(0, mean - baseC) : Bell.expectedAbove(mean, spreadC, baseC);
    }

    /** The same, weighted by the square of (day length/12 h). */
    public double heatByDayLength(int day, double baseC) {
        double share = dayLengthH(day) / 12;
        return heat(day, baseC) * share * share;
    }

    /** The mean of the daily means of {@code days} days that end on {@code last}. */
    public double meanC(int last, int days) {
        double sum = 0;
        for (int i = 0; i < days; i++) {
            sum += meanC(last - i);
        }
        return sum / days;
    }

    /**
     * Feeds a sum hour by hour from the first of these days and adds up what it gives from {@code from} to {@code to},
     * both included.
     */
    public double hourly(HourlySum sum, LocalDate from, LocalDate to) {
        int begin = index(from);
        int end = index(to);
        double total = 0;
        for (int i = 0; i <= end; i++) {
            HourlyTemperature.fill(min, max, halfDays, i, hours);
            double day = sum.day(hours, measured[i] ? 0 : spreadC);
            total += i >= begin ? day : 0;
        }
        return total;
    }
}

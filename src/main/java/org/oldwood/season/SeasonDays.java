package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;
import org.oldwood.garden.Season;

/**
 * Every day of one season at one place, a month before it and four months after it: least, greatest
 * and mean temperature as measured, or else from the climate's mean year.
 */
final class SeasonDays {
    private static final int DAYS = 520;

    private final Season season;
    private final double latitude;
    private final LocalDate first;
    private final double spreadC;
    private final double[] min = new double[DAYS];
    private final double[] max = new double[DAYS];
    private final boolean[] measured = new boolean[DAYS];
    private int measuredDays;

    SeasonDays(Season season, Place place) {
        this.season = season;
        this.latitude = place.latitude();
        this.first = season.start().minusDays(31);
        this.spreadC = place.spreadC();
        for (int i = 0; i < DAYS; i++) {
            int day = normalDay(first.plusDays(i));
            min[i] = place.dailyMinC().on(day);
            max[i] = place.dailyMaxC().on(day);
        }
        for (WeatherDay day : place.weather().between(first, first.plusDays(DAYS - 1L))) {
            if (day.minC().isPresent() && day.maxC().isPresent()) {
                int i = index(day.date());
                min[i] = day.minC().getAsDouble();
                max[i] = day.maxC().getAsDouble();
                measured[i] = true;
                measuredDays++;
            }
        }
    }

    /** A place's mean year, day by day, and what was measured there. */
    record Place(
            double latitude,
            MeanCurve dailyMinC,
            MeanCurve dailyMaxC,
            double spreadC,
            Weather weather) {}

    /** The day's place in a year of 365; 29 February stands with the 28th. */
    static int normalDay(LocalDate date) {
        int day = date.getDayOfYear();
        return date.isLeapYear() && day > 59 ? day - 2 : day - 1;
    }

    Season season() {
        return season;
    }

    LocalDate first() {
        return first;
    }

    LocalDate last() {
        return first.plusDays(DAYS - 1L);
    }

    int measuredDays() {
        return measuredDays;
    }

    /** The day of this season that has the northern year's month and day. */
    LocalDate on(MonthDay northern) {
        return season.day(northern.getMonthValue(), northern.getDayOfMonth());
    }

    private int index(LocalDate date) {
        return (int) (date.toEpochDay() - first.toEpochDay());
    }

    double meanC(LocalDate date) {
        int i = index(date);
        return (min[i] + max[i]) / 2;
    }

    double minC(LocalDate date) {
        return min[index(date)];
    }

    boolean isMeasured(LocalDate date) {
        return measured[index(date)];
    }

    double dayLengthH(LocalDate date) {
        return DayLength.hours(latitude, normalDay(date) + 1);
    }

    /**
     * The heat of a day above a base, °C·d. Of a day that was not measured it is what such days
     * give on the average: their means lie about the normal one, and the warm ones count.
     */
    double heat(LocalDate date, double baseC) {
        double mean = meanC(date);
        return isMeasured(date)
                ? Math.max(0, mean - baseC)
                : Bell.expectedAbove(mean, spreadC, baseC);
    }

    /** The same, weighted by the square of (day length/12 h). */
    double heatByDayLength(LocalDate date, double baseC) {
        double share = dayLengthH(date) / 12;
        return heat(date, baseC) * share * share;
    }

    /** The mean of the daily means of {@code days} days that end on {@code last}. */
    double meanC(LocalDate last, int days) {
        double sum = 0;
        for (int i = 0; i < days; i++) {
            sum += meanC(last.minusDays(i));
        }
        return sum / days;
    }

    /**
     * Feeds a sum hour by hour from the first of these days and adds up what it gives from {@code
     * from} to {@code to}, both included.
     */
    double hourly(HourlySum sum, LocalDate from, LocalDate to) {
        double[] half = new double[DAYS];
        int end = index(to);
        for (int i = 0; i <= Math.min(end + 1, DAYS - 1); i++) {
            half[i] = SunTimes.halfDay(latitude, normalDay(first.plusDays(i)) + 1);
        }
        double[] hours = new double[24];
        double total = 0;
        int begin = index(from);
        for (int i = 0; i <= end; i++) {
            HourlyTemperature.fill(min, max, half, i, hours);
            double day = 0;
            for (double hour : hours) {
                day += sum.hour(hour);
            }
            total += i >= begin ? day : 0;
        }
        return total;
    }

    /** The first day on which such a sum, begun on {@code from}, reaches {@code need}. */
    LocalDate reaches(HourlySum sum, LocalDate from, double need, LocalDate latest) {
        double[] half = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            half[i] = SunTimes.halfDay(latitude, normalDay(first.plusDays(i)) + 1);
        }
        double[] hours = new double[24];
        double total = 0;
        for (int i = index(from); i < index(latest); i++) {
            HourlyTemperature.fill(min, max, half, i, hours);
            for (double hour : hours) {
                total += sum.hour(hour);
            }
            if (total >= need) {
                return first.plusDays(i);
            }
        }
        return latest;
    }
}

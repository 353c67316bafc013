package org.oldwood.season.sums;

import java.time.LocalDate;
import org.oldwood.season.SeasonDays;

/**
 * One chill sum through a winter, day by day, worked out as far as it was asked for: crops that want different amounts
 * by one model share it.
 */
public final class ChillCourse {
    private final SeasonDays days;
    private final HourlySum sum;
    private final int first;
    private final double[] totals;
    private int known;

    /** Begins the sum on {@code from}; no day from {@code end} on is asked for. */
    public ChillCourse(SeasonDays days, HourlySum sum, LocalDate from, LocalDate end) {
        this.days = days;
        this.sum = sum;
        this.first = days.index(from);
        this.totals = new double[Math.max(0, days.index(end) - first)];
    }

    /** The first day on which the sum reaches {@code need}; {@code end} where it does not. */
    public LocalDate reaches(double need) {
        for (int i = 0; i < totals.length; i++) {
            if (total(i) >= need) {
                return days.day(first + i);
            }
        }
        return days.day(first + totals.length);
    }

    private double total(int day) {
        if (day == known) {
            double before = day == 0 ? 0 : totals[day - 1];
            totals[day] = days.hours(sum, first + day, before);
            known++;
        }
        return totals[day];
    }
}

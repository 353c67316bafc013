package org.oldwood.sheet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;

/**
 * Days laid along a picture, in per cent of its width: a day begins at {@link #at} of it and ends at {@link #at} of the
 * day after.
 *
 * @param first the first day
 * @param end the day after the last
 */
record Axis(LocalDate first, LocalDate end) {
    private static final double WHOLE = 100;
    private static final int LETTERS = 3;

    Axis {
        if (!end.isAfter(first)) { throw new IllegalArgumentException("no day from " + first + " to before " + end); }
    }

    /** Where a month begins, and its name. */
    record Tick(String x, String label) {}

    static Axis of(Season season) { return new Axis(season.start(), season.end().plusDays(1)); }

    /** Where a day begins, in per cent; days beyond the ends lie at the ends. */
    double at(LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(first, day) / ChronoUnit.DAYS.between(first, end);
        return WHOLE * Math.max(0, Math.min(1, share));
    }

    double middle(LocalDate day) { return (at(day) + at(day.plusDays(1))) / 2; }

    boolean holds(LocalDate day) { return !day.isBefore(first) && day.isBefore(end); }

    /** Where each month begins, from the first one that begins on the axis. */
    List<Tick> months() {
        LocalDate month = first.withDayOfMonth(1);
        return Stream
                .iterate(month.isBefore(first) ? month.plusMonths(1) : month, this::holds, day -> day.plusMonths(1))
                .map(day -> new Tick(Shown.percent(at(day)), Dates.month(day).substring(0, LETTERS))).toList();
    }
}

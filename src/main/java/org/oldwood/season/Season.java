package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * A growing year: from one leaf fall to the next, named by the year in which its fruit ripens. In the north season 2027
 * runs from 1 November 2026 to 31 October 2027; in the south season 2026-27 runs from 1 May 2026 to 30 April 2027. The
 * two nominal days stand for leaf fall wherever it was not seen; they only decide to which season a day belongs, never
 * when a job is due.
 *
 * @param year the year in which the season ends
 * @param hemisphere where
 */
public record Season(int year, Hemisphere hemisphere) implements Comparable<Season> {
    private static final int FIRST_MONTH_NORTH = 11;
    private static final int FIRST_MONTH_SOUTH = 5;

    public static Season containing(LocalDate day, Hemisphere hemisphere) {
        return new Season(year(day, hemisphere), hemisphere);
    }

    public static int year(LocalDate day, Hemisphere hemisphere) {
        return day.getMonthValue() >= firstMonth(hemisphere) ? day.getYear() + 1 : day.getYear();
    }

    private static int firstMonth(Hemisphere hemisphere) {
        return hemisphere == Hemisphere.NORTH ? FIRST_MONTH_NORTH : FIRST_MONTH_SOUTH;
    }

    /** The first day, included. */
    public LocalDate start() {
        return LocalDate.of(year - 1, firstMonth(hemisphere), 1);
    }

    /** The last day, included. */
    public LocalDate end() { return start().plusYears(1).minusDays(1); }

    public boolean contains(LocalDate day) { return year(day, hemisphere) == year; }

    public Season plus(int seasons) { return new Season(year + seasons, hemisphere); }

    /** The same of a month and day together. */
    public LocalDate day(MonthDay northern) {
        return day(northern.getMonthValue(), northern.getDayOfMonth());
    }

    /** The day of this season that has the given month and day in a northern year; the south is six months later. */
    public LocalDate day(int northernMonth, int northernDay) {
        LocalDate start = start();
        int month = hemisphere == Hemisphere.NORTH ? northernMonth : (northernMonth + 5) % 12 + 1;
        int wanted = month >= start.getMonthValue() ? start.getYear() : start.getYear() + 1;
        int last = LocalDate.of(wanted, month, 1).lengthOfMonth();
        return LocalDate.of(wanted, month, Math.min(northernDay, last));
    }

    /** {@code 2027} in the north, {@code 2026-27} in the south. */
    public String label() {
        return hemisphere == Hemisphere.NORTH ? Integer.toString(year)
                : (year - 1) + "-" + (year % 100 < 10 ? "0" : "") + year % 100;
    }

    @Override
    public int compareTo(Season other) { return Integer.compare(year, other.year); }

    @Override
    public String toString() { return label(); }
}

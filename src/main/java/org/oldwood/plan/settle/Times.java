package org.oldwood.plan.settle;

import java.time.LocalDate;

/**
 * The times of one job in three years: what was done belongs to the one that it lies nearest to. Of two as near it is
 * the earlier one, for work is late more often than half a year early.
 *
 * @param before the job's time the year before
 * @param own the time asked about
 * @param after the job's time the year after
 * @param notBefore what lies before this day cannot have been the work
 */
public record Times(Span before, Span own, Span after, LocalDate notBefore) {

    /** A time that comes but once, or of which only the days inside count. */
    public static Times within(Span own) {
        return new Times(own.plusYears(-1), own, own.plusYears(1), own.first());
    }

    /** Whether work of that day belongs to the time asked about. */
    public boolean has(LocalDate day) {
        long off = own.daysTo(day);
        return !day.isBefore(notBefore) && off < before.daysTo(day) && off <= after.daysTo(day);
    }

    /** How far the day lies from the nearest of the three. */
    public long daysTo(LocalDate day) {
        return Math.min(own.daysTo(day), Math.min(before.daysTo(day), after.daysTo(day)));
    }
}

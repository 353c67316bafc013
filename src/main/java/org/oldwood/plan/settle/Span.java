package org.oldwood.plan.settle;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** From a first to a last day, both included. */
public record Span(LocalDate first, LocalDate last) {

    /** How many days the day lies off it; 0 inside. */
    public long daysTo(LocalDate day) {
        if (day.isBefore(first)) { return ChronoUnit.DAYS.between(day, first); }
        return day.isAfter(last) ? ChronoUnit.DAYS.between(last, day) : 0;
    }

    /** The same days so many years later. */
    public Span plusYears(int years) {
        return new Span(first.plusYears(years), last.plusYears(years));
    }
}

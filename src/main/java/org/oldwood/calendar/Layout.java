package org.oldwood.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How rounds are shown. All choices are about looks: the true window stands in the words of every item.
 *
 * @param due what a to-do's due day is
 * @param alarm when the first event of a day rings; empty for never
 * @param workDays the days of the week on which to put events where their windows allow
 * @param mostADay events on one day, 1 or more
 * @param mostAWeek events from Monday to Sunday, 1 or more
 */
public record Layout(Due due, Optional<LocalTime> alarm, Set<DayOfWeek> workDays, int mostADay, int mostAWeek) {
    private static final int MOST_A_DAY = 3;
    private static final int MOST_A_WEEK = 4;

    /** What DUE says. RFC 5545, 3.6.2 can be read as "before this day"; most clients show it as the last day. */
    public enum Due {
        LAST_DAY,
        DAY_AFTER
    }

    /** What suits most people: not more than they can do, on any day, with a reminder in the morning. */
    public static Layout usual() {
        return new Layout(Due.LAST_DAY, Optional.of(LocalTime.of(8, 0)), EnumSet.allOf(DayOfWeek.class), MOST_A_DAY,
                MOST_A_WEEK);
    }

    public Layout with(Due otherDue, Optional<LocalTime> otherAlarm, Set<DayOfWeek> days) {
        return new Layout(otherDue, otherAlarm, days, mostADay, mostAWeek);
    }

    LocalDate due(Item.Days days) { return due == Due.LAST_DAY ? days.last() : days.last().plusDays(1); }

    /**
     * DUE must be later than DTSTART (3.8.2.3), so a to-do of one day opens the day before: without a start, programs
     * show it as due all the months before.
     */
    LocalDate start(Item.Days days) {
        LocalDate dayBefore = due(days).minusDays(1);
        return days.best().isAfter(dayBefore) ? dayBefore : days.best();
    }

    /** The dates as they stand in event and to-do; when they change, SEQUENCE does. */
    String shown(Item.Days days) {
        return "%s/%s %s/%s".formatted(days.best(), days.best().plusDays(1), start(days), due(days));
    }
}

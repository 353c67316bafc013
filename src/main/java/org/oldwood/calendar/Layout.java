package org.oldwood.calendar;

import java.time.LocalDate;

/**
 * How a window is shown. All choices are about looks: the true window stands in the words of every item, whatever is
 * chosen.
 */
public record Layout(EventDays eventDays, Due due, Alarms alarms) {
    /** A longer bar fills a month's page; longer windows are shown on their best day. */
    private static final int LONGEST_BAR_DAYS = 31;

    /** Which days an event takes. */
    public enum EventDays {
        /** The whole window up to about a month; a longer one its best day. */
        USUAL,
        SPAN,
        BEST_DAY
    }

    /** What DUE says. RFC 5545, 3.6.2 can be read as "before this day"; most clients show it as the last day. */
    public enum Due {
        LAST_DAY,
        DAY_AFTER
    }

    /** Whether an item reminds. */
    public enum Alarms {
        /** At eight in the morning of its first day. */
        MORNING,
        NONE
    }

    /** What suits most calendars. */
    public static Layout usual() {
        return new Layout(EventDays.USUAL, Due.LAST_DAY, Alarms.MORNING);
    }

    LocalDate eventStart(Item.Days days) {
        return spans(days) ? days.first() : days.best();
    }

    /** The day after the last one: DTEND is not included (RFC 5545, 3.6.1). */
    LocalDate eventEnd(Item.Days days) {
        return (spans(days) ? days.last() : days.best()).plusDays(1);
    }

    LocalDate due(Item.Days days) {
        return due == Due.LAST_DAY ? days.last() : days.last().plusDays(1);
    }

    /** DUE must be later than DTSTART (3.8.2.3), so a to-do of one day has no DTSTART. */
    boolean todoHasStart(Item.Days days) {
        return due(days).isAfter(days.first());
    }

    private boolean spans(Item.Days days) {
        return switch (eventDays) {
            case SPAN -> true;
            case BEST_DAY -> false;
            case USUAL -> days.count() <= LONGEST_BAR_DAYS;
        };
    }
}

package org.oldwood.cli.calendar;

import org.oldwood.calendar.Layout;
import picocli.CommandLine.Option;

/** The options for how tasks look in a calendar. */
final class CalendarLooks {
    @Option(names = "--event-days", paramLabel = "DAYS", description = "what an event covers: ${COMPLETION-CANDIDATES}")
    EventDays eventDays = EventDays.usual;

    @Option(names = "--due", paramLabel = "DAY", description = "what a to-do's due day is: ${COMPLETION-CANDIDATES}")
    Due due = Due.last;

    @Option(names = "--no-reminder", description = "write no reminders")
    boolean noReminder;

    /** What an event covers. */
    enum EventDays {
        usual,
        window,
        day
    }

    /** What a to-do's due day is. */
    enum Due {
        last,
        after
    }

    Layout layout() {
        Layout.EventDays days =
                switch (eventDays) {
                    case usual -> Layout.EventDays.USUAL;
                    case window -> Layout.EventDays.SPAN;
                    case day -> Layout.EventDays.BEST_DAY;
                };
        return new Layout(
                days,
                due == Due.last ? Layout.Due.LAST_DAY : Layout.Due.DAY_AFTER,
                noReminder ? Layout.Alarms.NONE : Layout.Alarms.MORNING);
    }
}

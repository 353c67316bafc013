package org.oldwood.cli.calendar;

import org.oldwood.calendar.Layout;
import org.oldwood.cli.command.Spelled;

/** The options for how tasks look in a calendar. */
final class CalendarLooks {
    private EventDays eventDays = EventDays.usual;
    private Due due = Due.last;
    private boolean noReminder;

    Spelled options() {
        return Spelled.options()
                .value(
                        "--event-days",
                        "DAYS",
                        "what an event covers: ${COMPLETION-CANDIDATES}",
                        EventDays.class,
                        given -> eventDays = given)
                .value(
                        "--due",
                        "DAY",
                        "what a to-do's due day is: ${COMPLETION-CANDIDATES}",
                        Due.class,
                        given -> due = given)
                .flag("--no-reminder", "write no reminders", given -> noReminder = given);
    }

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

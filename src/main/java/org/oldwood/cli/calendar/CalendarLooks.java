package org.oldwood.cli.calendar;

import java.util.Optional;
import org.oldwood.calendar.Layout;
import org.oldwood.garden.Garden;
import picocli.CommandLine.Option;

/** The options for how rounds look in a calendar. */
final class CalendarLooks {
    @Option(names = "--due", paramLabel = "DAY")
    Due due = Due.last;

    @Option(names = "--no-reminder")
    boolean noReminder;

    @Option(names = "--each")
    boolean each;

    /** What a to-do's due day is. */
    enum Due {
        last,
        after
    }

    /** With the days of work and the hour of the garden. */
    Layout layout(Garden garden) {
        return Layout.usual().with(due == Due.last ? Layout.Due.LAST_DAY : Layout.Due.DAY_AFTER,
                noReminder ? Optional.empty() : garden.wishes().alarm(), garden.workDays());
    }
}

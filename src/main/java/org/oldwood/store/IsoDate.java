package org.oldwood.store;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;

/** Dates as they are written in files and on the command line: {@code 2026-11-20}, {@code 11-20}. */
public final class IsoDate {
    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2999;

    /** What a date must be, for a message. */
    public static final String RULE =
            "a date that exists, written year-month-day (2026-11-20), from %d to %d".formatted(FIRST_YEAR, LAST_YEAR);

    private IsoDate() {}

    /**
     * The date.
     *
     * @throws DateTimeParseException where the text is no date that exists, or of years in which nobody keeps a garden
     *     with this program: they are slips of the hand
     */
    public static LocalDate parse(String text) {
        LocalDate date = LocalDate.parse(text);
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new DateTimeParseException("must be " + RULE, text, 0);
        }
        return date;
    }

    /**
     * A day of any year, {@code 11-20}.
     *
     * @throws DateTimeParseException where the text is no such day
     */
    public static MonthDay monthDay(String text) {
        return MonthDay.parse("--" + text);
    }
}

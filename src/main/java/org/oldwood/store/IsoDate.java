package org.oldwood.store;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as they are written in files and on the command line: {@code 2026-11-20}, {@code 11-20}. */
public final class IsoDate {
    private static final int FIRST_YEAR = 1800;
    private static final int LAST_YEAR = 2999;

    /** What a date must be, for a message. */
    public static final String RULE = "a date that exists, written year-month-day (2026-11-20), from the years 1800 to 2999";

    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");

    private IsoDate() {}

    /**
     * The date; empty where the text is no date that exists, or of years in which nobody keeps a garden with this
     * program: they are slips of the hand.
     */
    public static Optional<LocalDate> find(String text) {
        Matcher parts = DATE.matcher(text);
        int year = parts.matches() ? Integer.parseInt(parts.group(1)) : 0;
        if (year < FIRST_YEAR || year > LAST_YEAR) { return Optional.empty(); }
        try {
            return Optional.of(LocalDate.of(year, Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A day of any year, {@code 11-20}; empty where the text is no such day. */
    public static Optional<MonthDay> monthDay(String text) {
        try {
            return Optional.of(MonthDay.parse("--" + text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}

package org.oldwood.store;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeParseException;

/**
 * Reads dates of ten characters, {@code 2026-11-20}, without the formatters of {@code java.time}, which cost a short
 * run more than all its dates. Anything else is left to them.
 */
public final class IsoDate {
    private IsoDate() {}

    /**
     * The date.
     *
     * @throws DateTimeParseException where the text is no date that exists
     */
    public static LocalDate parse(String text) {
        if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
            return LocalDate.parse(text);
        }
        int year = digits(text, 0, 4);
        int month = digits(text, 5, 7);
        int day = digits(text, 8, 10);
        if (year < 0 || month < 0 || day < 0) {
            return LocalDate.parse(text);
        }
        return month < 1 || month > 12 || day < 1 || day > lengthOf(month, year)
                ? LocalDate.parse(text)
                : LocalDate.of(year, month, day);
    }

    /**
     * A day of any year, {@code 11-20}.
     *
     * @throws DateTimeParseException where the text is no such day
     */
    public static MonthDay monthDay(String text) {
        int month = text.length() == 5 ? digits(text, 0, 2) : -1;
        int day = text.length() == 5 ? digits(text, 3, 5) : -1;
        if (month < 1 || month > 12 || day < 1 || day > Month.of(month).maxLength() || text.charAt(2) != '-') {
            return MonthDay.parse("--" + text);
        }
        return MonthDay.of(month, day);
    }

    /** Days of a month; asked of {@code YearMonth}, it would set up its formatter first. */
    private static int lengthOf(int month, int year) {
        return Month.of(month).length(IsoChronology.INSTANCE.isLeapYear(year));
    }

    /** The number from {@code from} to before {@code to}; -1 where there is more than digits. */
    private static int digits(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            number = number * 10 + c - '0';
        }
        return number;
    }
}

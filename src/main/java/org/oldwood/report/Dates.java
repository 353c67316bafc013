package org.oldwood.report;

import java.time.LocalDate;

/** Dates in words, the same in every locale and without loading one. */
public final class Dates {
    private static final String[] MONTHS = {
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December"
    };
    private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

    private Dates() {}

    /** {@code November 2026}. */
    public static String month(LocalDate day) {
        return MONTHS[day.getMonthValue() - 1] + " " + day.getYear();
    }

    /** {@code Sat 28}. */
    public static String weekday(LocalDate day) {
        return DAYS[day.getDayOfWeek().getValue() - 1]
                + (day.getDayOfMonth() < 10 ? "  " : " ")
                + day.getDayOfMonth();
    }

    /** {@code 28 Nov 2026}. */
    public static String shortDay(LocalDate day) {
        return day.getDayOfMonth()
                + " "
                + MONTHS[day.getMonthValue() - 1].substring(0, 3)
                + " "
                + day.getYear();
    }
}

package org.oldwood.words;

import java.time.LocalDate;

/** Dates in words, the same in every locale and without loading one. */
public final class Dates {
    private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

    private static final String[] MONTHS = {"January", "February", "March", "April", "May", "June", "July", "August",
            "September", "October", "November", "December"};

    private Dates() {}

    /** The name of the month of a day, {@code November}. */
    public static String monthName(LocalDate day) {
        return MONTHS[day.getMonthValue() - 1];
    }

    public static String month(LocalDate day) { return monthName(day) + " " + day.getYear(); }

    /** {@code Sat 28}. */
    public static String weekday(LocalDate day) {
        return DAYS[day.getDayOfWeek().getValue() - 1] + (day.getDayOfMonth() < 10 ? "  " : " ") + day.getDayOfMonth();
    }

    /** {@code 28 Nov}; for days less than a year away. */
    public static String dayMonth(LocalDate day) {
        return day.getDayOfMonth() + " " + monthName(day).substring(0, 3);
    }

    /** {@code 28 Nov 2026}. */
    public static String shortDay(LocalDate day) {
        return day.getDayOfMonth() + " " + monthName(day).substring(0, 3) + " " + day.getYear();
    }
}

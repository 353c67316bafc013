package org.oldwood.report;

import java.time.LocalDate;
import org.oldwood.garden.MonthNames;

/** Dates in words, the same in every locale and without loading one. */
public final class Dates {
    private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

    private Dates() {}

    /** {@code November 2026}. */
    public static String month(LocalDate day) {
        return MonthNames.of(day) + " " + day.getYear();
    }

    /** {@code Sat 28}. */
    public static String weekday(LocalDate day) {
        return DAYS[day.getDayOfWeek().getValue() - 1] + (day.getDayOfMonth() < 10 ? "  " : " ") + day.getDayOfMonth();
    }

    /** {@code 28 Nov 2026}. */
    public static String shortDay(LocalDate day) {
        return day.getDayOfMonth() + " " + MonthNames.of(day).substring(0, 3) + " " + day.getYear();
    }
}

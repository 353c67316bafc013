package org.oldwood.garden;

import java.time.LocalDate;

/** The months' English names, the same in every locale and without loading one. */
public final class MonthNames {
    private static final String[] NAMES = {
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

    private MonthNames() {}

    /** The name of the month of a day, such as {@code November}. */
    public static String of(LocalDate day) {
        return NAMES[day.getMonthValue() - 1];
    }
}

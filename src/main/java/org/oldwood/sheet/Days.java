package org.oldwood.sheet;

import java.time.LocalDate;
import org.oldwood.words.Dates;

/** Days in words, short. */
final class Days {
    /** A space at which no line breaks. */
    private static final char KEPT = '\u00a0';

    private Days() {}

    /** {@code 28 Nov}. */
    static String day(LocalDate day) { return Dates.dayMonth(day).replace(' ', KEPT); }

    /** {@code 28 Nov to 3 Mar}. */
    static String span(LocalDate first, LocalDate last) {
        return first.equals(last) ? day(first) : day(first) + " to " + day(last);
    }

    /** {@code ± 9 d}, with a space before it; nothing where it is sure. */
    static String give(int plusMinusDays) {
        return plusMinusDays == 0 ? "" : " ±" + KEPT + plusMinusDays + KEPT + "d";
    }
}

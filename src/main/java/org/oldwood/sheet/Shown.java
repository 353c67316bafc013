package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.Locale;
import org.oldwood.words.Dates;

/** Numbers and days as they stand on the page, short, the same in every locale. */
final class Shown {
    private static final double HUNDRED = 100;

    /** A space at which no line breaks. */
    private static final char KEPT = '\u00a0';

    private Shown() {}

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

    /** Up to two decimals and no needless zeros: for places in a picture. */
    static String plain(double value) {
        double rounded = Math.rint(value * HUNDRED) / HUNDRED;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }

    /** {@code 12.5%}: for places along a picture that may be any width. */
    static String percent(double value) {
        return plain(value) + "%";
    }

    /** Kilograms, {@code 3.1}; two decimals below one. */
    static String kg(double value) {
        return String.format(Locale.ROOT, value < 1 ? "%.2f" : "%.1f", value);
    }
}

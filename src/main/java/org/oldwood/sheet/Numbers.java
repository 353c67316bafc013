package org.oldwood.sheet;

import java.util.Locale;

/** Numbers as they stand on the page, the same in every locale. */
final class Numbers {
    private static final double HUNDRED = 100;

    private Numbers() {}

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

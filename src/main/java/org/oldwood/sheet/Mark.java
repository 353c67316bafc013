package org.oldwood.sheet;

import java.time.LocalDate;

/**
 * Something drawn along an {@link Axis}.
 *
 * @param kind its shape: {@code window}, {@code done}, {@code day}, {@code maybe}, {@code bud}, {@code flower},
 *     {@code ripe}, {@code leaf}, {@code step}
 * @param first its first day
 * @param last its last day
 * @param x where it begins; of a shape that stands on one day, the middle of that day
 * @param width how far it reaches; 0 for a shape that stands on one day
 * @param before whether it began before the axis does
 * @param after whether it goes on after the axis ends
 */
record Mark(String kind, LocalDate first, LocalDate last, String x, String width, boolean before, boolean after) {

    /** From the beginning of a day to the end of another. */
    static Mark span(String kind, Axis axis, LocalDate first, LocalDate last) {
        double from = axis.at(first);
        double to = axis.at(last.plusDays(1));
        return new Mark(kind, first, last, Shown.percent(from), Shown.percent(to - from), first.isBefore(axis.first()),
                !last.isBefore(axis.end()));
    }

    /** In the middle of a day. */
    static Mark on(String kind, Axis axis, LocalDate day) {
        return new Mark(kind, day, day, Shown.percent(axis.middle(day)), "0", false, false);
    }

    private static final int MIDDLE = 9;

    /** How high a span is drawn, px. */
    int height() {
        return switch (kind) {
            case "maybe" -> 2;
            case "flower" -> 10;
            case "leaf" -> 6;
            default -> 8;
        };
    }

    /** Where its upper edge lies, px. */
    int top() { return MIDDLE - height() / 2; }

    boolean isSpan() { return !width.equals("0"); }
}

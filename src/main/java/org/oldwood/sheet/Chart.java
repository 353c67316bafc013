package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Rows of marks along one axis.
 *
 * @param title what the rows are of; empty for none
 * @param first the axis' first day
 * @param end the day after its last
 * @param ticks where months begin
 * @param today where today lies, if it lies on the axis
 * @param rows the rows from the top
 */
record Chart(String title, LocalDate first, LocalDate end, List<Axis.Tick> ticks, Optional<String> today,
        List<Row> rows) {

    /**
     * One row.
     *
     * @param key what the row is of, for programs; the same row has the same key
     * @param sign the sign before the label; empty for none
     * @param text the same as the marks, in words
     */
    record Row(String key, String sign, String label, String text, List<Mark> marks) {}

    static Chart of(String title, Axis axis, LocalDate day, List<Row> rows) {
        return new Chart(title, axis.first(), axis.end(), axis.months(),
                axis.holds(day) ? Optional.of(Shown.percent(axis.middle(day))) : Optional.empty(), rows);
    }
}

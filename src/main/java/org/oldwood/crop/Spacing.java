package org.oldwood.crop;

import org.oldwood.store.Fields;

/**
 * How far plants of one form stand apart.
 *
 * @param inRow from plant to plant along the row, metres
 * @param betweenRows from row to row, metres
 */
public record Spacing(Figure inRow, Figure betweenRows) {

    static Spacing read(Fields fields) {
        Spacing spacing = new Spacing(Figure.read(fields, "inRow"), Figure.read(fields, "betweenRows"));
        fields.done();
        return spacing;
    }

    /** Ground that one plant takes, square metres. */
    public double areaM2() {
        return inRow.is() * betweenRows.is();
    }
}

package org.oldwood.crop;

/**
 * How far plants of one form stand apart.
 *
 * @param inRow from plant to plant along the row, metres
 * @param betweenRows from row to row, metres
 */
public record Spacing(Figure inRow, Figure betweenRows) {

    /** Ground that one plant takes, square metres. */
    public double areaM2() {
        return inRow.is() * betweenRows.is();
    }
}

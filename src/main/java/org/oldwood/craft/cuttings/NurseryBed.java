package org.oldwood.craft.cuttings;

import java.util.Optional;

/**
 * The room that cuttings take.
 *
 * @param rowM length of row, m
 * @param areaM2 ground, m², where the distance of the rows is known
 */
public record NurseryBed(double rowM, Optional<Double> areaM2) {

    /** The room for {@code number} cuttings; empty where the method has no distance. */
    public static Optional<NurseryBed> of(int number, Method.Measures measures) {
        return measures.spacingCm().map(spacing -> {
            double rowM = number * spacing.is() / 100;
            return new NurseryBed(rowM, measures.rowGapCm().map(gap -> rowM * gap.is() / 100));
        });
    }

}

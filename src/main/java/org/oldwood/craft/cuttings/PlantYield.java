package org.oldwood.craft.cuttings;

import org.oldwood.crop.Range;

/**
 * The full crop of one plant and how likely it is to be less. Half of all gardens are taken to lie from the low end to
 * the default, half from the default to the high end, each half evenly: the least that a default and a range say.
 *
 * @param kg kg per plant and season, at least 0
 */
public record PlantYield(Range kg) {
    public PlantYield {
        if (!(kg.low() >= 0 && Double.isFinite(kg.high()))) {
            throw new IllegalArgumentException("a yield must be at least 0 kg but is " + kg);
        }
    }

    /** The chance that a plant's full crop is less than {@code limit}, kg. */
    public double chanceBelow(double limit) {
        if (limit <= kg.low()) { return 0; }
        if (limit <= kg.is()) { return 0.5 * (limit - kg.low()) / (kg.is() - kg.low()); }
        return limit > kg.high() ? 1 : 0.5 + 0.5 * (limit - kg.is()) / (kg.high() - kg.is());
    }
}

package org.oldwood.craft.water;

/**
 * What a bed's account needs to know of the bed.
 *
 * @param totalAvailableMm what the root zone holds from field capacity to wilting point, mm; more than 0
 * @param fraction depletion fraction at a demand of 5 mm a day, 0 to 1
 * @param areaM2 area, m²; more than 0
 * @param roof the roof that sheds onto it
 * @param competing share of what is drawn from the bed that goes to roots of neighbours, 0 to 0.9
 * @param open share of the rain that falls on it, 0 under a roof, 1 in the open
 */
public record BedWater(double totalAvailableMm, double fraction, double areaM2, RoofWater roof, double competing,
        double open) {
    /** Beyond this share a bed is the neighbour's. */
    public static final double MOST_COMPETING = 0.9;

    public BedWater {
        if (!(totalAvailableMm > 0 && areaM2 > 0 && fraction > 0 && fraction < 1)) {
            throw new IllegalArgumentException(
                    "a bed must hold water and have an area, and its depletion fraction must lie between 0 and 1, but they are %s mm, %s m², %s"
                            .formatted(totalAvailableMm, areaM2, fraction));
        }
        if (!(competing >= 0 && competing <= MOST_COMPETING)) {
            throw new IllegalArgumentException(
                    "the share that competing roots take must be from 0 to 0.9 but is " + competing);
        }
    }

    /** The same bed where the rain already counts what a roof sheds. */
    public BedWater withoutRoof() {
        return new BedWater(totalAvailableMm, fraction, areaM2, RoofWater.NONE, competing, open);
    }

    /** The share of the water held, 0 to 1, at a depletion. */
    public double heldShare(double depletionMm) {
        return 1 - depletionMm / totalAvailableMm;
    }
}

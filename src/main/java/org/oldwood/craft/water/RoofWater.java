package org.oldwood.craft.water;

/**
 * Rain that a roof sheds onto a bed.
 *
 * <p>Litres = plan area × rain × run-off coefficient, after the first flush that wets or cleans the roof. Checked
 * against {@code reference/roof-water.csv}.
 *
 * @param areaM2 plan area of the roof, m²
 * @param coefficient share of the rain that runs off, 0 to 1
 * @param firstFlushMm rain that never leaves the roof or is led aside, mm a day with rain
 */
public record RoofWater(double areaM2, double coefficient, double firstFlushMm) {
    public static final RoofWater NONE = new RoofWater(0, 0, 0);

    public RoofWater {
        if (!(areaM2 >= 0 && coefficient >= 0 && coefficient <= 1 && firstFlushMm >= 0)) {
            throw new IllegalArgumentException(
                    "a roof's area and first flush must be 0 or more and its coefficient from 0 to 1, but are %s, %s, %s"
                            .formatted(areaM2, firstFlushMm, coefficient));
        }
    }

    /** Litres from a day's rain. */
    public double litres(double rainMm) {
        return areaM2 * coefficient * Math.max(0, rainMm - firstFlushMm);
    }
}

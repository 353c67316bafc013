package org.oldwood.craft.feeding.liming;

import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/**
 * How much acid a liming material neutralises. Two scales are in print and are easily mixed up: British bags give the
 * percent of calcium oxide that does the same work (good limestone about 50 to 55), American bags the percent of
 * calcium carbonate (about 100). Kept on the second; made from either.
 *
 * @param percentCaCO3 percent of calcium carbonate that does the same work, more than 0, at most that of pure calcium
 *     oxide
 */
public record NeutralisingValue(double percentCaCO3) {
    private static final double PURE_OXIDE = 100 * MolarMass.CACO3 / MolarMass.CAO;
    private static final double ROUNDED = 0.5;

    public NeutralisingValue {
        if (!(percentCaCO3 > 0 && percentCaCO3 <= PURE_OXIDE + ROUNDED)) {
            throw new RecordException(Problem.of("neutralising-value-out-of-range", Place.of("neutralising value"),
                    Math.round(percentCaCO3)));
        }
    }

    /** From percent CaO, the British scale. */
    public static NeutralisingValue ofCaO(double percent) {
        return new NeutralisingValue(percent * MolarMass.CACO3 / MolarMass.CAO);
    }

    /** From a figure of the data, whose unit tells the scale. */
    static NeutralisingValue of(double percent, String unit) {
        return switch (unit) {
            case "% CaO" -> ofCaO(percent);
            case "% CaCO3" -> new NeutralisingValue(percent);
            default -> throw new IllegalArgumentException("no scale of neutralising value: " + unit);
        };
    }

    public double percentCaO() { return percentCaCO3 * MolarMass.CAO / MolarMass.CACO3; }

    /** How many grams of this do the work of {@code grams} of {@code other}. */
    public double inPlaceOf(double grams, NeutralisingValue other) {
        return grams * other.percentCaCO3 / percentCaCO3;
    }
}

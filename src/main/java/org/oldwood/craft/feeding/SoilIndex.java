package org.oldwood.craft.feeding;

import java.util.List;
import org.oldwood.crop.Key;

/**
 * Turns what a laboratory measured (mg/l of soil) into the British soil index.
 *
 * <p>Source: RB209 section 7 (AHDB 2020), Table 7.2; the bounds stand in {@code feeding.json}. Phosphorus by the Olsen
 * method. Values above the last bound are told as that index.
 *
 * @param phosphorus least mg/l of index 0, 1, 2 …
 * @param potassium least mg/l of index 0, 1, 2 …
 * @param magnesium least mg/l of index 0, 1, 2 …
 */
public record SoilIndex(@Key("P") List<Double> phosphorus, @Key("K") List<Double> potassium,
        @Key("Mg") List<Double> magnesium) {
    public int ofPhosphorus(double mgPerLitre) { return index(phosphorus, mgPerLitre); }

    public int ofPotassium(double mgPerLitre) { return index(potassium, mgPerLitre); }

    public int ofMagnesium(double mgPerLitre) { return index(magnesium, mgPerLitre); }

    /** The bounds are printed as whole numbers, so the measured value is rounded first. */
    private static int index(List<Double> bounds, double mgPerLitre) {
        double rounded = Math.round(mgPerLitre);
        int index = 0;
        while (index + 1 < bounds.size() && rounded >= bounds.get(index + 1)) {
            index++;
        }
        return index;
    }
}

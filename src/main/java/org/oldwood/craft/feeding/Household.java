package org.oldwood.craft.feeding;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.words.Words;

/**
 * Grams told in spoons, cups and handfuls. Only where the density of the material was read, or a handful was weighed;
 * grams always stand beside.
 *
 * <p>Where two densities are in print the higher one is the default, so that measuring by volume errs on the side of
 * too little. Checked against {@code reference/household.csv}.
 */
public final class Household {
    /** A vessel: its content in ml and the step to which a count of it is rounded. */
    public enum Vessel {
        SPOON("level 10 ml spoon", "level 10 ml spoons", 10, 0.5),
        TABLESPOON("level tablespoon (15 ml)", "level tablespoons (15 ml)", 15, 0.5),
        CUP("US cup", "US cups", 236.588, 0.25);

        private final String one;
        private final String many;
        private final double ml;
        private final double step;

        Vessel(String one, String many, double ml, double step) {
            this.one = one;
            this.many = many;
            this.ml = ml;
            this.step = step;
        }
    }

    private static final double CUPS_FROM_ML = 200;
    private static final double LITRES_FROM_ML = 2000;
    private static final double ML_PER_LITRE = 1000;
    private static final double LEAST_HANDFUL = 0.75;

    private Household() {}

    /** How many vessels hold so many grams, not rounded. */
    public static double count(double grams, double kgPerLitre, Vessel vessel) {
        return grams / kgPerLitre / vessel.ml;
    }

    /** Millilitres that so many grams fill. */
    public static double millilitres(double grams, double kgPerLitre) {
        return grams / kgPerLitre;
    }

    /** How many handfuls hold so many grams, not rounded. */
    public static double handfuls(double grams, double gramsEach) {
        return grams / gramsEach;
    }

    /**
     * {@code about 9 level 10 ml spoons}; empty where the density was never read or the amount is too small or too
     * great for spoons and cups.
     */
    public static Optional<String> inWords(double grams, Optional<Figure> density) {
        if (density.isEmpty()) {
            return Optional.empty();
        }
        double kgPerLitre = density.get().is();
        double ml = millilitres(grams, kgPerLitre);
        if (ml >= LITRES_FROM_ML) {
            return Optional.of("about " + Words.fixed(ml / ML_PER_LITRE, 1) + " l");
        }
        Vessel vessel = millilitres(grams, kgPerLitre) >= CUPS_FROM_ML ? Vessel.CUP : Vessel.SPOON;
        double rounded = Math.rint(count(grams, kgPerLitre, vessel) / vessel.step) * vessel.step;
        if (rounded == 0) {
            return Optional.empty();
        }
        return Optional.of("about " + Words.fixed(rounded, 2) + " " + (rounded <= 1 ? vessel.one : vessel.many));
    }

    /** {@code about 6 handfuls (small-open hand, 65 g)}; empty where much less than one. */
    public static Optional<String> inHandfuls(double grams, String hand, Figure gramsEach) {
        double count = handfuls(grams, gramsEach.is());
        long rounded = Math.round(count);
        return count < LEAST_HANDFUL
                ? Optional.empty()
                : Optional.of("about "
                        + Words.count(rounded, "handful", "handfuls")
                        + " ("
                        + hand
                        + " hand, "
                        + Words.amount(gramsEach.is())
                        + " g)");
    }

    /** Whole packs to buy for so many grams; none for nothing. */
    public static long packs(double grams, double packKg) {
        return (long) Math.ceil(grams / (packKg * 1000) - 1e-9);
    }
}

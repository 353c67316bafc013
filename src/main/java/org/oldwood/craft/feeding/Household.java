package org.oldwood.craft.feeding;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.words.Words;

/**
 * Grams told in spoons, millilitres and handfuls. Only where the density of the material was read, or a handful was
 * weighed; grams always stand beside.
 *
 * <p>Where two densities are in print the higher one is the default, so that measuring by volume errs on the side of
 * too little. Checked against {@code reference/household.csv}.
 */
public final class Household {
    private static final double SPOON_ML = 10;

    /** Nobody counts more spoons or handfuls than that without losing count. */
    private static final double MOST = 8;

    private static final double LITRES_FROM_ML = 2000;
    private static final double ML_PER_LITRE = 1000;
    private static final double LEAST_HANDFUL = 0.75;

    private Household() {}

    /**
     * {@code about 9 level 10 ml spoons}; empty where the density was never read or the amount is too small for a
     * spoon.
     */
    public static Optional<String> inWords(double grams, Optional<Figure> density) {
        return density.flatMap(it -> ofVolume(grams / it.is()));
    }

    private static Optional<String> ofVolume(double ml) {
        if (ml >= LITRES_FROM_ML) { return Optional.of("about %s l".formatted(Words.fixed(ml / ML_PER_LITRE, 1))); }
        double halves = Words.nearest(ml / SPOON_ML, 0.5);
        if (halves > MOST) {
            return Optional.of("about %s ml in a measuring jug".formatted(Words.fixed(Words.nearest(ml, 10), 0)));
        }
        return halves == 0 ? Optional.empty()
                : Optional.of("about %s level 10 ml spoon%s".formatted(Words.fixed(halves, 2), halves <= 1 ? "" : "s"));
    }

    /** {@code about 6 handfuls (small-open hand, 65 g)}; empty where much less than one, or too many to count. */
    public static Optional<String> inHandfuls(double grams, String hand, Figure gramsEach) {
        double count = grams / gramsEach.is();
        long rounded = Math.round(count);
        return count < LEAST_HANDFUL || rounded > MOST ? Optional.empty()
                : Optional.of("about %s (%s hand, %s g%s)".formatted(Words.count(rounded, "handful", "handfuls"), hand,
                        Words.amount(gramsEach.is()), gramsEach.seen().beside()));
    }
}

package org.oldwood.craft.feeding;

import org.oldwood.words.Words;

/** Rounds grams to what a kitchen scale and a steady hand can do. */
public final class Portion {
    private static final double[] UP_TO = {20, 100, 500, 1000, 10_000, 100_000};
    private static final double[] STEP = {1, 5, 10, 50, 100, 500};
    private static final double LARGEST_STEP = 5000;
    private static final double HAIR = 1e-9;

    private Portion() {}

    /** The nearest sensible amount; something never becomes nothing. */
    public static double rounded(double grams) {
        double step = step(grams);
        double near = Words.nearest(grams, step);
        return near == 0 && grams > 0 ? Math.max(grams, 0) : near;
    }

    /** The nearest sensible amount; the one below where that would pass a limit. */
    public static double within(double grams, double most) {
        double near = rounded(grams);
        if (near <= most + HAIR) { return near; }
        double step = step(grams);
        double below = Math.floor(grams / step + HAIR) * step;
        return below == 0 ? grams : below;
    }

    private static double step(double grams) {
        for (int i = 0; i < UP_TO.length; i++) {
            if (grams < UP_TO[i]) { return STEP[i]; }
        }
        return LARGEST_STEP;
    }
}

package org.oldwood.craft.pruning;

import java.util.Arrays;
import org.oldwood.crop.Range;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;

/**
 * What the stems that stay bear, against a bush in order: each stem counted by what its age bears, the sum against that
 * of the crop's reference bush, and crowding in between. With {@code x} for the one over the other it is {@code (1 + k)
 * x / (x + k)}: in proportion where {@code k} is large, nearly level where it is small. The name of the way followed
 * plays no part.
 *
 * <p>Youth is in the yearly series of the crop and counted there alone: a young bush is held against the ages that it
 * can have. The weights by age are assumptions, and {@code k} is borrowed for most crops; see
 * {@code docs/method-pruning.md}. Checked against {@code reference/crop-hindcast.csv}.
 */
public final class WoodCrop {
    /** No evidence reaches beyond a tenth more than a bush in order bears. */
    private static final double MOST = 1.1;

    /** The least that the band is wide to either side. */
    private static final double BAND = 0.25;

    private WoodCrop() {}

    /**
     * Share of the crop of a bush in order.
     *
     * @param reference the stems of a bush in order; where there are none the share is 1
     * @param seasons growing seasons completed; stems older than that are in no young bush
     */
    public static Range share(Stems stems, Stems reference, int seasons, String form, Yield yield) {
        double[] shares = new double[9];
        for (int i = 0; i < 9; i++) {
            double full = weighed(reference, seasons, form, yield, i / 3);
            if (full == 0) { return new Range(1, 1, 1); }
            double most = seasons < reference.oldest() ? 1 : MOST;
            double x = weighed(stems, Stems.OLDEST_CLASS, form, yield, i / 3) / full;
            shares[i] = Math.min(most, crowded(x, yield.crowding(i % 3)));
        }
        return new Range(Arrays.stream(shares).min().orElseThrow(), shares[4],
                Arrays.stream(shares).max().orElseThrow());
    }

    /** The same, at least a quarter of the middle wide to either side. */
    public static Range banded(Range range) {
        return new Range(Math.min(range.low(), (1 - BAND) * range.is()), range.is(),
                Math.max(range.high(), (1 + BAND) * range.is()));
    }

    /** The crop with {@code x} of the bearing wood of a bush in order. */
    static double crowded(double x, double k) {
        return x == 0 ? 0 : (1 + k) * x / (x + k);
    }

    private static double weighed(Stems stems, int seasons, String form, Yield yield, int which) {
        double sum = 0;
        for (int age = 1; age <= Math.min(stems.oldest(), seasons); age++) {
            sum += stems.at(age) * yield.weight(form, age, which);
        }
        return sum;
    }
}

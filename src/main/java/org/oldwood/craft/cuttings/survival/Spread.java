package org.oldwood.craft.cuttings.survival;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** A number of plants that is not known for sure: the chance of each number from 0 to {@link #most()}. Immutable. */
public final class Spread {
    private final double[] chances;

    Spread(double[] chances) { this.chances = chances.clone(); }

    /** The greatest number that can be. */
    public int most() { return chances.length - 1; }

    /** The chance of exactly {@code number}. */
    public double chance(int number) {
        return number < 0 || number > most() ? 0 : chances[number];
    }

    /** The expected number. */
    public double mean() { return Math.min(mean(number -> number), most()); }

    /** The mean of something that goes with the number. */
    public double mean(IntToDoubleFunction of) {
        return IntStream.rangeClosed(0, most()).mapToDouble(k -> chances[k] * of.applyAsDouble(k)).reduce(0,
                Double::sum);
    }

    /** The least number that is not exceeded with a chance of {@code share} or more. */
    public int quantile(double share) {
        double sum = 0;
        for (int k = 0; k < most(); k++) {
            sum += chances[k];
            if (sum >= share) { return k; }
        }
        return most();
    }
}

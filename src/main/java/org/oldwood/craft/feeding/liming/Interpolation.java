package org.oldwood.craft.feeding.liming;

import java.util.List;
import java.util.OptionalDouble;

/** Reads between the rows of a printed table, in a straight line, and never outside them. */
final class Interpolation {
    private Interpolation() {}

    /** The value at {@code x}; empty below the first or above the last row. */
    static OptionalDouble inside(List<Double> xs, List<Double> ys, double x) {
        for (int i = 0; i + 1 < xs.size(); i++) {
            double left = xs.get(i);
            double right = xs.get(i + 1);
            if (x >= left && x <= right) {
                double share = (x - left) / (right - left);
                return OptionalDouble.of(ys.get(i) + share * (ys.get(i + 1) - ys.get(i)));
            }
        }
        return OptionalDouble.empty();
    }
}

package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Range;
import org.oldwood.crop.WoodAge;

/**
 * How much of its full crop a bush bears with the stems that it has: the stems by age, each counted by what its age
 * bears, against the structure that the plan aims at. Never above 1: print gives no ground for promising more from a
 * crowded bush.
 *
 * <p>The weights by age are assumptions with a wide range (see the crop's yield data), since no published table was
 * found.
 */
public final class WoodCrop {
    private WoodCrop() {}

    /** Share of the full crop, from 0 to 1. Where nothing is aimed at, 1. */
    public static Range factor(Stems stems, Stems target, Optional<WoodAge> wood) {
        if (target.total() == 0) {
            return new Range(1, 1, 1);
        }
        double[] shares = new double[3];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.min(1, weighed(stems, wood, i) / weighed(target, wood, i));
        }
        double low = Math.min(shares[1], Math.min(shares[0], shares[2]));
        double high = Math.max(shares[1], Math.max(shares[0], shares[2]));
        return new Range(low, shares[1], high);
    }

    private static double weighed(Stems stems, Optional<WoodAge> wood, int which) {
        double sum = 0;
        for (int age = 1; age <= stems.oldest(); age++) {
            sum += stems.at(age) * weight(age, wood, which);
        }
        return sum;
    }

    private static double weight(int age, Optional<WoodAge> wood, int which) {
        if (wood.isEmpty()) {
            return 1;
        }
        return switch (which) {
            case 0 -> wood.get().low(age);
            case 1 -> wood.get().expected(age);
            default -> wood.get().high(age);
        };
    }
}

package org.oldwood.craft.cuttings.parent;

import java.util.Optional;
import org.oldwood.craft.cuttings.Method;

/**
 * What length of shoot gives how many cuttings. A shoot that is good enough for a cutting gives at least one, whatever
 * its length; the record does not hold lengths.
 */
public final class ParentWood {
    private ParentWood() {}

    /** The length from which a shoot gives two, cm; empty where no figure is known. */
    public static Optional<Double> forTwoCm(Method.Measures measures) {
        return measures.softTipPercent()
                .flatMap(soft -> measures.lengthCm().map(length -> shootCm(2, soft.is() / 100, length.is())));
    }

    /**
     * The length of shoot that gives so many cuttings, cm.
     *
     * @param softShare share at the tip that is too soft to use, 0 to below 1
     * @param lengthCm length of a cutting, cm, above 0
     */
    public static double shootCm(int cuttings, double softShare, double lengthCm) {
        if (!(softShare >= 0 && softShare < 1 && lengthCm > 0)) {
            throw new IllegalArgumentException(
                    "no shoot can be reckoned less " + softShare + " of it, cut at " + lengthCm + " cm");
        }
        return cuttings * lengthCm / (1 - softShare);
    }
}

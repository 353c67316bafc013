package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Splits a total into single doses. The doses always add up to the total. */
public final class Doses {
    private static final double HAIR = 1e-9;

    private Doses() {}

    /** As few equal doses as keep each at {@code most} or below; none where the total is nothing. */
    public static List<Double> equal(double total, double most) {
        if (total <= 0) { return List.of(); }
        int count = Math.max(1, (int) Math.ceil(total / most - HAIR));
        return Collections.nCopies(count, total / count);
    }

    /** As large a dose as allowed each time; the last takes what is left. */
    public static List<Double> largestFirst(double total, double most) {
        List<Double> doses = new ArrayList<>();
        double left = total;
        while (left > HAIR) {
            doses.add(Math.min(left, most));
            left -= most;
        }
        return doses;
    }
}

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
        if (total <= 0) {
            return List.of();
        }
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

    /** In proportion to the shares, which need not add up to one; the last takes what is left. */
    public static List<Double> byShares(double total, List<Double> shares) {
        double all = shares.stream().mapToDouble(Double::doubleValue).sum();
        List<Double> doses = new ArrayList<>();
        double left = total;
        for (int i = 0; i < shares.size(); i++) {
            double dose = i == shares.size() - 1 ? left : total * shares.get(i) / all;
            doses.add(dose);
            left -= dose;
        }
        return doses;
    }
}

package org.oldwood.craft.feeding;

import java.util.List;
import java.util.Optional;

/**
 * Solves how much of each material gives exactly what is wanted of as many nutrients as there are materials: linear
 * equations, by elimination with the largest pivot.
 *
 * <p>Checked against the published mixes in {@code reference/feed-arithmetic.csv}.
 */
final class Mix {
    private static final double NOTHING = 1e-12;

    private Mix() {}

    /**
     * How much of each material, in their order, so that together they give what is {@code wanted} of each of
     * {@code exactly}. Empty where no answer exists, or only one with less than nothing of a material.
     *
     * @param ofOne what one gram of each material gives
     * @param exactly the nutrients to meet; as many as materials
     * @param wanted how much of each nutrient
     */
    static Optional<double[]> exact(List<Nutrients> ofOne, List<Nutrient> exactly, Nutrients wanted) {
        int size = ofOne.size();
        if (exactly.size() != size) {
            throw new IllegalArgumentException(
                    size + " materials can meet " + size + " nutrients, not " + exactly.size());
        }
        double[][] rows = new double[size][size + 1];
        for (int row = 0; row < size; row++) {
            Nutrient nutrient = exactly.get(row);
            for (int column = 0; column < size; column++) {
                rows[row][column] = ofOne.get(column).of(nutrient);
            }
            rows[row][size] = wanted.of(nutrient);
        }
        double[] answer = new double[size];
        return solve(rows, answer) ? Optional.of(answer) : Optional.empty();
    }

    /**
     * Solves the rows, which it changes: a row for each nutrient with what a gram of each material gives of it, and
     * what is wanted at its end. False where there is no answer of at least nothing of each.
     */
    private static boolean solve(double[][] rows, double[] answer) {
        int size = rows.length;
        for (int column = 0; column < size; column++) {
            int pivot = largest(rows, column);
            if (Math.abs(rows[pivot][column]) < NOTHING) { return false; }
            double[] swap = rows[column];
            rows[column] = rows[pivot];
            rows[pivot] = swap;
            clear(rows, column);
        }
        for (int row = 0; row < size; row++) {
            answer[row] = rows[row][size] / rows[row][row];
            if (answer[row] < -NOTHING) { return false; }
        }
        return true;
    }

    private static int largest(double[][] rows, int column) {
        int best = column;
        for (int row = column + 1; row < rows.length; row++) {
            if (Math.abs(rows[row][column]) > Math.abs(rows[best][column])) { best = row; }
        }
        return best;
    }

    private static void clear(double[][] rows, int column) {
        for (int row = 0; row < rows.length; row++) {
            if (row != column) {
                double factor = rows[row][column] / rows[column][column];
                for (int each = column; each < rows[row].length; each++) {
                    rows[row][each] -= factor * rows[column][each];
                }
            }
        }
    }
}

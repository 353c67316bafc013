package org.oldwood.craft.feeding.liming;

import java.util.List;
import java.util.Optional;

/**
 * What to give to change the pH of a piece of ground, dose by dose; or why nothing is given.
 *
 * @param refused why nothing may be given; absent where something may, or where nothing is needed
 * @param gPerM2 the whole need of this material, g/m²
 * @param dosesGrams the doses for the whole area, g, in order; empty where nothing is needed
 * @param monthsBetween months from one dose to the next, with a new test between
 * @param lines the arithmetic, a line for each step
 * @param notes what to know and to watch
 */
public record PhPlan(Optional<String> refused, double gPerM2, List<Double> dosesGrams, double monthsBetween,
        List<String> lines, List<String> notes, List<String> sources) {

    public static PhPlan refused(String why, List<String> sources) {
        return new PhPlan(Optional.of(why), 0, List.of(), 0, List.of(), List.of(), sources);
    }

    /** Grams for the whole area, all doses together. */
    public double totalGrams() {
        return dosesGrams.stream().mapToDouble(Double::doubleValue).sum();
    }

    public boolean nothingToDo() { return dosesGrams.isEmpty(); }
}

package org.oldwood.craft.feeding.liming;

import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.Portion;
import org.oldwood.words.Words;

/**
 * What to give to change the pH of a piece of ground, dose by dose; or why nothing is given.
 *
 * @param refused why nothing may be given; absent where something may, or where nothing is needed
 * @param gPerM2 the whole need of this material, g/m²
 * @param dosesGrams the doses for the whole area, g, in order; empty where nothing is needed
 * @param mostGrams the largest single dose for the whole area, g
 * @param monthsBetween months from one dose to the next
 * @param retest whether each further dose needs a new test; else all go by the one
 * @param lines the arithmetic, a line for each step
 * @param notes what to know and to watch
 */
public record PhPlan(Optional<String> refused, double gPerM2, List<Double> dosesGrams, double mostGrams,
        double monthsBetween, boolean retest, List<String> lines, List<String> notes, List<String> sources) {

    public static PhPlan refused(String why, List<String> sources) {
        return new PhPlan(Optional.of(why), 0, List.of(), 0, 0, false, List.of(), List.of(), sources);
    }

    /** The doses as they are weighed out, g. */
    public List<Double> portions() {
        return dosesGrams.stream().map(each -> Portion.within(each, mostGrams)).toList();
    }

    /** All portions together, g. */
    public double totalGrams() {
        return portions().stream().mapToDouble(it -> it).sum();
    }

    /** {@code 12 months or more apart, each after a new test}. */
    public String apart() {
        return "%s months or more apart, %s".formatted(Words.amount(monthsBetween),
                retest ? "each after a new test" : "all by the one test");
    }

    public boolean nothingToDo() { return dosesGrams.isEmpty(); }
}

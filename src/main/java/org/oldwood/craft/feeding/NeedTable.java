package org.oldwood.craft.feeding;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.Seen;

/**
 * One published table of the need of one nutrient: a value for each class of soil, or each soil index, or each age of
 * the plant, or one for all.
 *
 * @param id unique
 * @param by {@code soil}, {@code index}, {@code age} or {@code all}
 * @param unit {@code g/m2}, {@code lb/acre}, {@code g/bush} or {@code g/m row}
 * @param values the values by soil class, index or age
 * @param otherwise the value where soil, index or age is not known; absent where none is told
 * @param note what to know about it
 */
@Notes({"low", "high"})
public record NeedTable(String id, @Key(words = {
        "soil", "index", "age", "all"}) String by, @Key(words = {"g/m2", "lb/acre", "g/bush", "g/m row"}) String unit,
        @Key(least = 0, most = 1000) Map<String, Double> values, @Key(least = 0, most = 1000) OptionalDouble otherwise,
        List<String> sources, Seen seen, String note){
    /** The value for a soil class; empty where the table has no such class. */
    OptionalDouble forSoil(String soilClass) {
        return values.containsKey(soilClass) ? OptionalDouble.of(values.get(soilClass)) : OptionalDouble.empty();
    }

    /**
     * The value for an index or an age: that of the highest row at or below it, since nothing is read between rows.
     * Below the first row, the first.
     */
    double forStep(int step) {
        return values.entrySet().stream().filter(row -> Integer.parseInt(row.getKey()) <= step)
                .mapToDouble(Map.Entry::getValue).reduce(forAll(), (before, last) -> last);
    }

    /** The one value of a table for all. */
    double forAll() { return values.values().iterator().next(); }
}

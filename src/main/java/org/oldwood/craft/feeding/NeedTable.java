package org.oldwood.craft.feeding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * One published table of the need of one nutrient: a value for each class of soil, or each soil index, or each age of
 * the plant, or one for all.
 *
 * @param id unique
 * @param by {@code soil}, {@code index}, {@code age} or {@code all}
 * @param unit {@code g/m2}, {@code lb/acre}, {@code g/bush} or {@code g/m row}
 * @param values the values by soil class, index or age
 * @param otherwise the value where soil, index or age is not known; absent where none is told
 * @param sources source keys
 * @param seen how it was seen
 * @param note what to know about it
 */
public record NeedTable(
        String id,
        String by,
        String unit,
        Map<String, Double> values,
        OptionalDouble otherwise,
        List<String> sources,
        Seen seen,
        String note) {
    static NeedTable read(Fields fields) {
        NeedTable table = new NeedTable(
                fields.text("id"),
                fields.oneOf("by", List.of("soil", "index", "age", "all")),
                fields.oneOf("unit", List.of("g/m2", "lb/acre", "g/bush", "g/m row")),
                values(fields),
                fields.optionalNumber("otherwise", 0, 1000),
                fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())),
                fields.text("note", ""));
        fields.optionalNumber("low", 0, 1000);
        fields.optionalNumber("high", 0, 1000);
        fields.done();
        return table;
    }

    private static Map<String, Double> values(Fields fields) {
        Map<String, Double> values = new LinkedHashMap<>();
        fields.object("values")
                .ifPresent(inner -> inner.keys().forEach(key -> values.put(key, inner.number(key, 0, 1000))));
        return values;
    }

    /** The value for a soil class; empty where the table has no such class. */
    OptionalDouble forSoil(String soilClass) {
        return values.containsKey(soilClass) ? OptionalDouble.of(values.get(soilClass)) : OptionalDouble.empty();
    }

    /**
     * The value for an index or an age: that of the highest row at or below it, since nothing is read between rows.
     * Below the first row, the first.
     */
    double forStep(int step) {
        double found = values.values().iterator().next();
        for (Map.Entry<String, Double> row : values.entrySet()) {
            if (Integer.parseInt(row.getKey()) <= step) {
                found = row.getValue();
            }
        }
        return found;
    }

    /** The one value of a table for all. */
    double forAll() {
        return values.values().iterator().next();
    }
}

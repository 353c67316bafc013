package org.oldwood.garden;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.oldwood.store.Json;

/**
 * Stems by age class: completed growing seasons → number of stems. A shoot is 0 in its first summer and 1 from the leaf
 * fall after it. The oldest class may be open ({@code 4+}: four seasons or more). A class that is absent was not
 * counted; one with 0 was counted and empty.
 *
 * @param openFrom the age from which on the classes were lumped together, if they were; then the last key
 */
public record StemAges(SortedMap<Integer, Integer> counts, OptionalInt openFrom) {
    public static final StemAges NONE = new StemAges(new TreeMap<>(), OptionalInt.empty());

    public StemAges {
        counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
    }

    /** From {@code {"1": 5, "2": 4, "4+": 3}}, already checked. */
    static StemAges of(Json.Obj object) {
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        OptionalInt open = OptionalInt.empty();
        for (Map.Entry<String, Json> member : object.members().entrySet()) {
            String key = member.getKey();
            boolean lumped = key.endsWith("+");
            int age = Integer.parseInt(lumped ? key.substring(0, key.length() - 1) : key);
            open = lumped ? OptionalInt.of(age) : open;
            counts.put(age, (int) ((Json.Num) member.getValue()).value());
        }
        return new StemAges(counts, open);
    }

    public boolean isEmpty() { return counts.isEmpty(); }

    public int total() { return sum(counts); }

    private static int sum(SortedMap<Integer, Integer> counts) {
        int sum = 0;
        for (int count : counts.values()) {
            sum += count;
        }
        return sum;
    }

    /** Stems of {@code age} or more. */
    public int atLeast(int age) { return sum(counts.tailMap(age)); }

    /** {@code 1=5, 2=4, 4+=3}; {@code none} where nothing was counted. */
    public String inWords() {
        return isEmpty() ? "none"
                : counts.entrySet().stream()
                        .map(entry -> entry.getKey()
                                + (openFrom.isPresent() && openFrom.getAsInt() == entry.getKey() ? "+" : "") + "="
                                + entry.getValue())
                        .collect(Collectors.joining(", "));
    }
}

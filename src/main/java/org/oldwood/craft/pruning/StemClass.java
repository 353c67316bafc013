package org.oldwood.craft.pruning;

import java.util.SortedMap;
import java.util.TreeMap;

/** Reads classes of stems as people write them: {@code 1=5,2=4,3=4,4+=3}. */
public final class StemClass {
    private static final String REMEDY = "; write for example 1=5,2=4,3=4,4+=3";

    private StemClass() {}

    /**
     * Counts by class from one line.
     *
     * @throws IllegalArgumentException with words for the person who wrote it
     */
    public static Stems parse(String line) {
        SortedMap<Integer, Integer> byAge = new TreeMap<>();
        int open = 0;
        for (String part : line.split(",", -1)) {
            int equals = part.trim().indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException(
                        "\"" + part.trim() + "\" is not an age, an equals sign and a number" + REMEDY);
            }
            String name = part.trim().substring(0, equals).trim();
            boolean lumped = name.endsWith("+");
            int count = whole(part.trim().substring(equals + 1).trim(), 0, 10_000, "the number of stems");
            int age = whole(lumped ? name.substring(0, name.length() - 1) : name, 1, Stems.OLDEST_CLASS,
                    "an age of stems");
            if (byAge.put(age, count) != null) {
                throw new IllegalArgumentException("age " + name + " is given twice" + REMEDY);
            }
            open = lumped ? age : open;
        }
        if (open != 0 && open < byAge.lastKey()) {
            throw new IllegalArgumentException(
                    "only the oldest class may be open, but " + open + "+ stands beside age " + byAge.lastKey());
        }
        return Stems.from(byAge, open != 0);
    }

    private static int whole(String digits, int least, int most, String what) {
        try {
            int value = Integer.parseInt(digits);
            if (value >= least && value <= most) { return value; }
        } catch (NumberFormatException e) {
            // told below, together with numbers out of range
        }
        throw new IllegalArgumentException(
                what + " must be a whole number from " + least + " to " + most + " but is \"" + digits + "\"" + REMEDY);
    }
}

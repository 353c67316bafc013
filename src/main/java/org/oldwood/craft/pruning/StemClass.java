package org.oldwood.craft.pruning;

import java.util.LinkedHashMap;
import java.util.Map;

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
        Map<String, Integer> byClass = new LinkedHashMap<>();
        int start = 0;
        while (start <= line.length()) {
            int comma = line.indexOf(',', start);
            int end = comma < 0 ? line.length() : comma;
            one(line.substring(start, end).trim(), byClass);
            start = end + 1;
        }
        return Stems.from(byClass);
    }

    private static void one(String part, Map<String, Integer> byClass) {
        int equals = part.indexOf('=');
        if (equals < 1) {
            throw new IllegalArgumentException("\"" + part + "\" is not an age, an equals sign and a number" + REMEDY);
        }
        String name = part.substring(0, equals).trim();
        int count = whole(part.substring(equals + 1).trim(), 0, 10_000, "the number of stems");
        if (byClass.put(name, count) != null) {
            throw new IllegalArgumentException("age " + name + " is given twice" + REMEDY);
        }
    }

    static boolean isOpen(String name) {
        return name.endsWith("+");
    }

    /** The age of a class name, {@code 4} of {@code 4+}. */
    static int age(String name) {
        String digits = isOpen(name) ? name.substring(0, name.length() - 1) : name;
        return whole(digits, 1, Stems.OLDEST_CLASS, "an age of stems");
    }

    private static int whole(String digits, int least, int most, String what) {
        try {
            int value = Integer.parseInt(digits);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, together with numbers out of range
        }
        throw new IllegalArgumentException(
                what + " must be a whole number from " + least + " to " + most + " but is \"" + digits + "\"" + REMEDY);
    }
}

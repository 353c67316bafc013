package org.oldwood.feeding;

import java.util.List;

/** Lists in a sentence. */
final class Lists {
    private Lists() {}

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String and(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}

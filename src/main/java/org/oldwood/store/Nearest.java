package org.oldwood.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Nearest {
    private static final int MOST = 60;

    private Nearest() {}

    /** A sentence with the nearest of {@code known}; where none is near, with all of them, if they are few. */
    public static String hint(String seen, Collection<String> known) {
        if (known.isEmpty()) { return ""; }
        return to(seen, known).map("Did you mean \"%s\"?"::formatted)
                .orElseGet(() -> known.size() > MOST ? "It is near none of the %s there are.".formatted(known.size())
                        : "Known here: " + String.join(", ", known.stream().sorted().toList()));
    }

    /** The nearest of {@code known}, if one is at most a third of its letters away. */
    public static Optional<String> to(String seen, Collection<String> known) {
        return known.stream().sorted().min(Comparator.comparingInt(word -> distance(seen, word)))
                .filter(best -> distance(seen, best) <= Math.max(1, best.length() / 3));
    }

    /** How many letters must be put in, taken out or changed (Levenshtein distance). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}

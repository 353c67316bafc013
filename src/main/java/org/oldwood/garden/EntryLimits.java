package org.oldwood.garden;

import java.util.List;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Checks that a part is not more than its whole, inside one entry. */
final class EntryLimits {
    private EntryLimits() {}

    static void check(Entry entry, Problems problems) {
        switch (entry.kind()) {
            case COUNTED -> stems(entry, List.of("weak", "damaged", "low"), "counted", problems);
            case PRUNED -> stems(entry, List.of("diseased"), "taken out", problems);
            case LIFTED ->
                    most(
                            entry,
                            "good",
                            entry.count("rooted").orElse(0),
                            "the number that had rooted",
                            problems);
            default -> {
                // says nothing of parts
            }
        }
    }

    private static void stems(Entry entry, List<String> keys, String done, Problems problems) {
        for (String key : keys) {
            most(entry, key, entry.stems().total(), "the number of stems " + done, problems);
        }
    }

    private static void most(Entry entry, String key, int most, String what, Problems problems) {
        int part = entry.count(key).orElse(0);
        if (part > most) {
            Json value = entry.values().get(key);
            Place place = value == null ? entry.place() : value.place();
            problems.add(
                    "part-above-whole",
                    place,
                    "must be at most " + most + ", " + what + ", but is " + part,
                    "");
        }
    }
}

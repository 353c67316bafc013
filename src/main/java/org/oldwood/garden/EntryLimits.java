package org.oldwood.garden;

import java.util.List;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/** Checks that a part is not more than its whole, inside one entry. */
final class EntryLimits {
    private static final List<String> FAULTS = List.of("dead", "weak", "damaged", "low");

    private EntryLimits() {}

    static void check(Entry entry, Problems problems) {
        switch (entry.kind()) {
            case COUNTED -> {
                for (String key : FAULTS) {
                    stems(entry, key, "counted", problems);
                    byAge(entry, key, problems);
                }
            }
            case CANES -> {
                int fresh = entry.count("fresh").orElse(0);
                most(entry, "dead", fresh, "the number of fresh canes", problems);
                most(entry, "weak", fresh, "the number of fresh canes", problems);
            }
            case PRUNED -> stems(entry, "diseased", "taken out", problems);
            case LIFTED -> most(entry, "good", entry.count("rooted").orElse(0), "the number that had rooted", problems);
            default -> {
                // says nothing of parts
            }
        }
    }

    /** Most entries say nothing of the part; only then are the stems added up. */
    private static void stems(Entry entry, String key, String done, Problems problems) {
        if (entry.count(key).isPresent()) {
            most(entry, key, entry.stems().total(), "the number of stems " + done, problems);
        }
    }

    /** A part by age names only classes that were counted, and no more of each. */
    private static void byAge(Entry entry, String key, Problems problems) {
        if (!entry.values().containsKey(key)) {
            return;
        }
        StemAges counted = entry.stems();
        StemAges part = entry.stems(key);
        boolean sameClasses = part.openFrom().isEmpty() || part.openFrom().equals(counted.openFrom());
        for (int age : part.counts().keySet()) {
            int there = sameClasses ? counted.counts().getOrDefault(age, 0) : 0;
            int said = part.counts().getOrDefault(age, 0);
            if (said > there) {
                problems.add(
                        "part-above-whole",
                        entry.values()
                                .getOrDefault(key, new Json.Nothing(entry.place()))
                                .place(),
                        "says " + said + " of age " + age + ", but " + there + " were counted",
                        "Use the ages of \"stems\", and no more of each than stand there.");
            }
        }
    }

    private static void most(Entry entry, String key, int most, String what, Problems problems) {
        int part = entry.count(key).orElse(0);
        if (part > most) {
            Json value = entry.values().get(key);
            Place place = value == null ? entry.place() : value.place();
            problems.add("part-above-whole", place, "must be at most " + most + ", " + what + ", but is " + part, "");
        }
    }
}

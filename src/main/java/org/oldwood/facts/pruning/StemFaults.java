package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stems;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LeafFalls;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/**
 * What was noted of dead, diseased, weak, damaged and low stems at the last count, so long as nothing was cut since.
 *
 * @param sick dead or diseased stems by age
 * @param weak weak, damaged or low stems by age, sick ones not among them
 * @param sickInAll dead or diseased stems noted without their ages
 * @param weakInAll weak, damaged and low stems noted without their ages
 */
public record StemFaults(Stems sick, Stems weak, int sickInAll, int weakInAll) {
    static final StemFaults NONE = new StemFaults(Stems.NONE, Stems.NONE, 0, 0);
    private static final List<String> WEAK = List.of("weak", "damaged", "low");

    /** What was noted without ages, which cannot be counted off by age: a sentence each. */
    public List<String> inWords() {
        List<String> lines = new ArrayList<>();
        if (sickInAll > 0) {
            lines.add(
                    "Noted without their age: %s dead or diseased. They come out first, all of them; what they are of these numbers is done with them."
                            .formatted(sickInAll));
        }
        if (weakInAll > 0) {
            lines.add("Noted without their age: %s weak, damaged or low. Take them first of these numbers."
                    .formatted(weakInAll));
        }
        return lines;
    }

    /** Those of a bush, aged to the season, of {@code stems} that stand there. */
    static StemFaults of(PlantState state, Crop crop, Season season, LeafFalls falls, Stems stems) {
        Optional<Entry> counted = lastUncut(state, EntryKind.COUNTED);
        if (counted.isEmpty()) { return NONE; }
        Entry entry = counted.get();
        int older = season.year() - falls.seasonYear(crop.id(), entry.date());
        Stems sick = within(sum(entry, List.of("dead"), older), stems, Stems.NONE);
        return new StemFaults(sick, within(sum(entry, WEAK, older), stems, sick), entry.count("dead").orElse(0),
                WEAK.stream().mapToInt(key -> entry.count(key).orElse(0)).sum());
    }

    /** Those of the new canes of a row, of {@code canes} that stand there. */
    static StemFaults ofCanes(PlantState state, Stems canes) {
        Optional<Entry> counted = lastUncut(state, EntryKind.CANES);
        if (counted.isEmpty()) { return NONE; }
        Entry entry = counted.get();
        Stems sick = within(Map.of(1, entry.count("dead").orElse(0)), canes, Stems.NONE);
        return new StemFaults(sick, within(Map.of(1, entry.count("weak").orElse(0)), canes, sick), 0, 0);
    }

    /** The last count; empty where there is none, or a cut followed. */
    private static Optional<Entry> lastUncut(PlantState state, EntryKind kind) {
        return state.entries().stream().filter(entry -> entry.kind() == kind || entry.kind() == EntryKind.PRUNED)
                .reduce((earlier, later) -> later).filter(last -> last.kind() == kind);
    }

    private static Map<Integer, Integer> sum(Entry entry, List<String> keys, int older) {
        Map<Integer, Integer> sum = new HashMap<>();
        keys.forEach(
                key -> entry.stems(key).byAge().forEach((age, count) -> sum.merge(age + older, count, Integer::sum)));
        return sum;
    }

    /** As many of each age as stand there and are not in {@code taken}. */
    private static Stems within(Map<Integer, Integer> faults, Stems stems, Stems taken) {
        if (faults.isEmpty()) { return Stems.NONE; }
        int[] counts = new int[stems.oldest()];
        for (int age = 1; age <= counts.length; age++) {
            int there = stems.at(age) - taken.at(age);
            counts[age - 1] = Math.max(0, Math.min(there, faults.getOrDefault(age, 0)));
        }
        return Stems.of(counts);
    }
}

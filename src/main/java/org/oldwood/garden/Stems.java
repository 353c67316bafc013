package org.oldwood.garden;

import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A plant's stems by the season in which each grew, so that ages follow from the day asked about: a
 * shoot of season 2026 is 0 in that season and 1 in season 2027. Immutable.
 *
 * @param bySeason season year in which the stem grew → number of stems
 * @param openUntil the season year up to which older seasons were lumped together, if they were
 */
public record Stems(SortedMap<Integer, Integer> bySeason, OptionalInt openUntil) {
    static final Stems UNKNOWN = new Stems(new TreeMap<>(), OptionalInt.empty());

    /** The stems as counted in the season of that year. */
    static Stems counted(StemAges ages, int seasonYear) {
        SortedMap<Integer, Integer> by = new TreeMap<>();
        ages.counts().forEach((age, count) -> by.put(seasonYear - age, count));
        OptionalInt open =
                ages.openFrom().isPresent()
                        ? OptionalInt.of(seasonYear - ages.openFrom().getAsInt())
                        : OptionalInt.empty();
        return new Stems(by, open);
    }

    /** A new count replaces the classes it names; the others stay as they were. */
    Stems recounted(StemAges ages, int seasonYear) {
        Stems fresh = counted(ages, seasonYear);
        SortedMap<Integer, Integer> by = new TreeMap<>(bySeason);
        if (fresh.openUntil.isPresent()) {
            by.headMap(fresh.openUntil.getAsInt() + 1).clear();
        }
        by.putAll(fresh.bySeason);
        return new Stems(by, fresh.openUntil.isPresent() ? fresh.openUntil : openUntil);
    }

    /**
     * What is left after stems were taken out. More than were known leaves none, never less than
     * none. An age that was lumped with older ones is taken from that class.
     */
    Stems without(StemAges ages, int seasonYear) {
        SortedMap<Integer, Integer> by = new TreeMap<>(bySeason);
        for (Map.Entry<Integer, Integer> taken : ages.counts().entrySet()) {
            int grewIn = seasonYear - taken.getKey();
            boolean open =
                    ages.openFrom().isPresent() && ages.openFrom().getAsInt() == taken.getKey();
            boolean lumped = openUntil.isPresent() && grewIn <= openUntil.getAsInt();
            int upTo = lumped ? openUntil.getAsInt() : grewIn;
            takeOut(by, upTo, open || lumped, taken.getValue());
        }
        return new Stems(by, openUntil);
    }

    /** From an open class the oldest go first. */
    private static void takeOut(
            SortedMap<Integer, Integer> by, int grewIn, boolean open, int number) {
        int left = number;
        for (int season :
                open ? by.headMap(grewIn + 1).keySet() : by.subMap(grewIn, grewIn + 1).keySet()) {
            int there = by.getOrDefault(season, 0);
            int gone = Math.min(there, left);
            by.put(season, there - gone);
            left -= gone;
        }
    }

    /** The stems by age in the season of that year. */
    public StemAges ages(int seasonYear) {
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        bySeason.forEach((grewIn, count) -> counts.merge(seasonYear - grewIn, count, Integer::sum));
        return new StemAges(
                counts,
                openUntil.isPresent() && !counts.isEmpty()
                        ? OptionalInt.of(seasonYear - openUntil.getAsInt())
                        : OptionalInt.empty());
    }

    public boolean known() {
        return !bySeason.isEmpty();
    }

    /**
     * The stems after an entry: counted anew, or less what was cut out. Other entries change
     * nothing.
     */
    Stems after(Entry entry, int season) {
        return switch (entry.kind()) {
            case COUNTED -> recounted(entry.stems(), season);
            case PRUNED -> without(entry.stems(), season);
            default -> this;
        };
    }
}

package org.oldwood.garden;

import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A plant's stems by the season in which each grew, so that ages follow from the day asked about: a shoot of season
 * 2026 is 0 in that season and 1 in season 2027. Never changed.
 *
 * @param bySeason the number of stems by the year of the season in which they grew
 * @param openUntil the year up to which older seasons were lumped together, if they were
 */
public record StemsBySeason(SortedMap<Integer, Integer> bySeason, OptionalInt openUntil) {
    static final StemsBySeason UNKNOWN = new StemsBySeason(new TreeMap<>(), OptionalInt.empty());

    /** The stems as counted in the season of that year. */
    static StemsBySeason counted(StemAges ages, int seasonYear) {
        SortedMap<Integer, Integer> by = new TreeMap<>();
        ages.counts().forEach((age, number) -> by.put(seasonYear - age, number));
        return new StemsBySeason(by, turned(ages.openFrom(), seasonYear));
    }

    /** An age as the season in which it grew, or the other way. */
    private static OptionalInt turned(OptionalInt ageOrSeason, int seasonYear) {
        return ageOrSeason.isPresent() ? OptionalInt.of(seasonYear - ageOrSeason.getAsInt()) : ageOrSeason;
    }

    /** A new count replaces the classes it names; the others stay as they were. */
    StemsBySeason recounted(StemAges ages, int seasonYear) {
        StemsBySeason fresh = counted(ages, seasonYear);
        SortedMap<Integer, Integer> by = new TreeMap<>(bySeason);
        by.keySet().removeIf(season -> season <= fresh.openUntil.orElse(Integer.MIN_VALUE));
        by.putAll(fresh.bySeason);
        return new StemsBySeason(by, known() && fresh.openUntil.isEmpty() ? openUntil : fresh.openUntil);
    }

    /**
     * What is left after stems were taken out. More than were known leaves none, never less than none. An age that was
     * lumped with older ones is taken from that class, from which the oldest go first.
     */
    StemsBySeason without(StemAges ages, int seasonYear) {
        SortedMap<Integer, Integer> by = new TreeMap<>(bySeason);
        ages.counts().forEach((age, number) -> {
            int grewIn = seasonYear - age;
            boolean lumped = openUntil.isPresent() && grewIn <= openUntil.getAsInt();
            boolean open = lumped || ages.openFrom().equals(OptionalInt.of(age));
            int upTo = lumped ? openUntil.getAsInt() : grewIn;
            int left = number;
            for (int season : open ? bySeason.headMap(upTo + 1).keySet() : bySeason.subMap(upTo, upTo + 1).keySet()) {
                int gone = Math.min(by.getOrDefault(season, 0), left);
                by.merge(season, -gone, Integer::sum);
                left -= gone;
            }
        });
        return new StemsBySeason(by, openUntil);
    }

    /** The stems by age in the season of that year. */
    public StemAges ages(int seasonYear) {
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        bySeason.forEach((season, number) -> counts.put(seasonYear - season, number));
        return new StemAges(counts, known() ? turned(openUntil, seasonYear) : OptionalInt.empty());
    }

    public boolean known() { return !bySeason.isEmpty(); }

    /** The stems after an entry: counted anew, or less what was cut out. Other entries change nothing. */
    public StemsBySeason after(Entry entry, int season) {
        return switch (entry.kind()) {
            case COUNTED -> recounted(entry.stems(), season);
            case PRUNED -> without(entry.stems(), season);
            default -> this;
        };
    }
}

package org.oldwood.garden;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A plant's stems by the season in which each grew, so that ages follow from the day asked about: a shoot of season
 * 2026 is 0 in that season and 1 in season 2027. Immutable.
 */
public final class StemsBySeason {
    static final StemsBySeason UNKNOWN = new StemsBySeason(new int[0], OptionalInt.empty());

    /**
     * In pairs, the oldest first: the season year in which stems grew, and their number. A table for each plant of a
     * large garden would take four times the memory.
     */
    private final int[] bySeason;

    /** The season year up to which older seasons were lumped together, if they were. */
    private final OptionalInt openUntil;

    private StemsBySeason(int[] bySeason, OptionalInt openUntil) {
        this.bySeason = bySeason;
        this.openUntil = openUntil;
    }

    /** The stems as counted in the season of that year. */
    static StemsBySeason counted(StemAges ages, int seasonYear) {
        int[] by = new int[2 * ages.counts().size()];
        int at = by.length;
        for (Map.Entry<Integer, Integer> each : ages.counts().entrySet()) {
            by[--at] = each.getValue();
            by[--at] = seasonYear - each.getKey();
        }
        OptionalInt open = ages.openFrom().isPresent()
                ? OptionalInt.of(seasonYear - ages.openFrom().getAsInt())
                : OptionalInt.empty();
        return new StemsBySeason(by, open);
    }

    /** A new count replaces the classes it names; the others stay as they were. */
    StemsBySeason recounted(StemAges ages, int seasonYear) {
        StemsBySeason fresh = counted(ages, seasonYear);
        return bySeason.length == 0
                ? fresh
                : new StemsBySeason(with(fresh), fresh.openUntil.isPresent() ? fresh.openUntil : openUntil);
    }

    /** These stems, and the fresh ones in the place of those of the same seasons. */
    private int[] with(StemsBySeason fresh) {
        int[] by = new int[bySeason.length + fresh.bySeason.length];
        int used = 0;
        int next = 0;
        for (int old = 0; old < bySeason.length; old += 2) {
            int season = bySeason[old];
            while (next < fresh.bySeason.length && fresh.bySeason[next] <= season) {
                by[used++] = fresh.bySeason[next++];
                by[used++] = fresh.bySeason[next++];
            }
            boolean replaced = used > 0 && by[used - 2] == season;
            if (!replaced && season > fresh.openUntil.orElse(Integer.MIN_VALUE)) {
                by[used++] = season;
                by[used++] = bySeason[old + 1];
            }
        }
        int left = fresh.bySeason.length - next;
        System.arraycopy(fresh.bySeason, next, by, used, left);
        return Arrays.copyOf(by, used + left);
    }

    /**
     * What is left after stems were taken out. More than were known leaves none, never less than none. An age that was
     * lumped with older ones is taken from that class.
     */
    StemsBySeason without(StemAges ages, int seasonYear) {
        int[] by = bySeason.clone();
        for (Map.Entry<Integer, Integer> taken : ages.counts().entrySet()) {
            int grewIn = seasonYear - taken.getKey();
            boolean open = ages.openFrom().isPresent() && ages.openFrom().getAsInt() == taken.getKey();
            boolean lumped = openUntil.isPresent() && grewIn <= openUntil.getAsInt();
            int upTo = lumped ? openUntil.getAsInt() : grewIn;
            takeOut(by, upTo, open || lumped, taken.getValue());
        }
        return new StemsBySeason(by, openUntil);
    }

    /** From an open class the oldest go first. */
    private static void takeOut(int[] by, int grewIn, boolean open, int number) {
        int left = number;
        for (int at = 0; at < by.length && by[at] <= grewIn; at += 2) {
            if (open || by[at] == grewIn) {
                int gone = Math.min(by[at + 1], left);
                by[at + 1] -= gone;
                left -= gone;
            }
        }
    }

    /** The stems by age in the season of that year. */
    public StemAges ages(int seasonYear) {
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        for (int at = 0; at < bySeason.length; at += 2) {
            counts.put(seasonYear - bySeason[at], bySeason[at + 1]);
        }
        return new StemAges(
                counts,
                openUntil.isPresent() && !counts.isEmpty()
                        ? OptionalInt.of(seasonYear - openUntil.getAsInt())
                        : OptionalInt.empty());
    }

    public boolean known() {
        return bySeason.length > 0;
    }

    /** The stems after an entry: counted anew, or less what was cut out. Other entries change nothing. */
    public StemsBySeason after(Entry entry, int season) {
        return switch (entry.kind()) {
            case COUNTED -> recounted(entry.stems(), season);
            case PRUNED -> without(entry.stems(), season);
            default -> this;
        };
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StemsBySeason stems
                && Arrays.equals(bySeason, stems.bySeason)
                && openUntil.equals(stems.openUntil);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(bySeason) + openUntil.hashCode();
    }

    /** Tells apart what is not the same; meant for programs. */
    @Override
    public String toString() {
        return Arrays.toString(bySeason) + " " + openUntil;
    }
}

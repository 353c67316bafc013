package org.oldwood.craft.pruning;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.SortedMap;

/**
 * How many stems of each age stand on a bush, or canes in a row. A stem's age is its completed growing seasons: a shoot
 * of last summer is 1 in the winter after. The oldest class may be open ("4 or more"). A class that was not counted is
 * unknown, which is not the same as none. Immutable.
 */
public final class Stems {
    /** No stems at all. */
    public static final Stems NONE = new Stems(new int[0], new boolean[0], false);

    /** The greatest age that has a class of its own. */
    public static final int OLDEST_CLASS = 60;

    private final int[] counts;
    private final boolean[] known;
    private final boolean open;

    private Stems(int[] counts, boolean[] known, boolean open) {
        this.counts = counts;
        this.known = known;
        this.open = open;
    }

    /** Every class counted, from age 1; nothing older. */
    public static Stems of(int... counts) {
        return counted(counts, false);
    }

    /** Every class counted, from age 1; the last stands for its age and all older. */
    public static Stems ofOpen(int... counts) {
        return counted(counts, true);
    }

    private static Stems counted(int[] counts, boolean open) {
        boolean[] known = new boolean[counts.length];
        Arrays.fill(known, true);
        for (int count : counts) {
            if (count < 0) { throw new IllegalArgumentException("a count of stems cannot be " + count); }
        }
        return new Stems(counts.clone(), known, open);
    }

    /**
     * Counts by age, from 1. Ages in between that are not named are unknown.
     *
     * @param open whether the oldest stands for its age and all older
     */
    public static Stems from(SortedMap<Integer, Integer> byAge, boolean open) {
        int oldest = byAge.isEmpty() ? 0 : byAge.lastKey();
        Stems stems = new Stems(new int[oldest], new boolean[oldest], open && oldest > 0);
        byAge.forEach(stems::put);
        return stems;
    }

    private void put(int age, int count) {
        if (count < 0) { throw new IllegalArgumentException("a count of stems cannot be " + count); }
        counts[age - 1] = count;
        known[age - 1] = true;
    }

    /** The oldest class; 0 where there are none. */
    public int oldest() { return counts.length; }

    /** True where the oldest class stands for its age and all older. */
    public boolean isOpen() { return open; }

    /** True where that age was counted; ages beyond the oldest class are none, and known. */
    public boolean knows(int age) {
        return age > counts.length || known[age - 1];
    }

    /** True where every class was counted. */
    public boolean isComplete() { return firstUnknown().isEmpty(); }

    /** The youngest class that was not counted. */
    public OptionalInt firstUnknown() {
        for (int age = 1; age <= counts.length; age++) {
            if (!known[age - 1]) { return OptionalInt.of(age); }
        }
        return OptionalInt.empty();
    }

    /** Stems of that class as far as counted; 0 where unknown. */
    public int at(int age) {
        return age >= 1 && age <= counts.length ? counts[age - 1] : 0;
    }

    /** Stems counted from {@code youngest} to {@code oldest}, both included. */
    public int between(int youngest, int oldest) {
        int sum = 0;
        for (int age = Math.max(1, youngest); age <= Math.min(oldest, counts.length); age++) {
            sum += counts[age - 1];
        }
        return sum;
    }

    /** Stems counted of that age or older. */
    public int from(int youngest) { return between(youngest, counts.length); }

    /** All stems counted. */
    public int total() { return from(1); }

    /** These without {@code number} of a class; the class must have as many. */
    public Stems without(int age, int number) {
        if (number < 0 || number > at(age)) {
            throw new IllegalArgumentException("cannot take " + number + " stems of age " + age + " from " + this);
        }
        if (number == 0) { return this; }
        Stems left = new Stems(counts.clone(), known, open);
        left.counts[age - 1] -= number;
        return left;
    }

    /**
     * One growing season on: every stem a year older, {@code newShoots} of age 1. Ages from {@code fold} up are
     * gathered in one open class.
     */
    public Stems aged(int newShoots, int fold) {
        int classes = Math.min(counts.length + 1, fold);
        int[] older = new int[classes];
        boolean[] olderKnown = new boolean[classes];
        Arrays.fill(olderKnown, true);
        older[0] = newShoots;
        for (int age = 1; age <= counts.length; age++) {
            int at = Math.min(age, classes - 1);
            older[at] += counts[age - 1];
            olderKnown[at] &= known[age - 1];
        }
        boolean folded = counts.length + 1 > classes || (open && counts.length + 1 == classes);
        return new Stems(older, olderKnown, folded);
    }

    /** These with every class counted: {@code young} of age 1 where unknown, none of the others. */
    Stems reckoned(int young) {
        if (isComplete()) { return this; }
        Stems all = new Stems(counts.clone(), known.clone(), open);
        Arrays.fill(all.known, true);
        all.counts[0] = known[0] ? counts[0] : young;
        return all;
    }

    /** How a class is written: {@code 3}, or {@code 4+} for the open one. */
    public String label(int age) {
        return open && age == counts.length ? age + "+" : Integer.toString(age);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stems stems && open == stems.open && Arrays.equals(counts, stems.counts)
                && Arrays.equals(known, stems.known);
    }

    @Override
    public int hashCode() { return 31 * Arrays.hashCode(counts) + Arrays.hashCode(known); }

    /** As on the command line: {@code 1=5,2=4,4+=3}; unknown classes are left out. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int age = 1; age <= counts.length; age++) {
            if (known[age - 1]) {
                text.append(text.isEmpty() ? "" : ",").append(label(age));
                text.append('=').append(counts[age - 1]);
            }
        }
        return text.toString();
    }
}

package org.oldwood.crop;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * How many stems of each age stand on a bush, or canes in a row. A stem's age is its completed growing seasons: a shoot
 * is 0 in its first summer and 1 in the winter after. The oldest class may be open ("4 or more"). A class that was not
 * counted is unknown, which is not the same as none. Immutable.
 */
public final class Stems {
    public static final Stems NONE = of();

    /** The greatest age that has a class of its own. */
    public static final int OLDEST_CLASS = 60;

    private static final String REMEDY = "; write for example 1=5,2=4,3=4,4+=3";

    /** In place of a number that was not counted, and of the age of an open class where there is none. */
    private static final int UNKNOWN = -1;

    /** By age, from 0. */
    private final int[] counts;
    private final int openFrom;

    private Stems(int[] counts, int openFrom) {
        this.counts = counts;
        this.openFrom = openFrom;
    }

    /** Every class counted, from age 1; nothing older. */
    public static Stems of(int... counts) {
        return counted(counts, UNKNOWN);
    }

    /** Every class counted, from age 1; the last stands for its age and all older. */
    public static Stems ofOpen(int... counts) {
        return counted(counts, counts.length);
    }

    private static Stems counted(int[] counts, int openFrom) {
        int[] byAge = new int[counts.length + 1];
        byAge[0] = UNKNOWN;
        for (int age = 1; age < byAge.length; age++) {
            byAge[age] = number(counts[age - 1]);
        }
        return new Stems(byAge, openFrom);
    }

    private static int number(int count) {
        if (count < 0) { throw new IllegalArgumentException("a count of stems cannot be " + count); }
        return count;
    }

    /**
     * Counts by age, from 0. Ages that are not named are unknown.
     *
     * @param openFrom the age of the class that stands for its age and all older, if there is one
     */
    public static Stems from(SortedMap<Integer, Integer> byAge, OptionalInt openFrom) {
        int[] counts = unknown(byAge.isEmpty() ? 0 : byAge.lastKey());
        byAge.forEach((age, count) -> counts[age] = number(count));
        return new Stems(counts, byAge.isEmpty() ? UNKNOWN : openFrom.orElse(UNKNOWN));
    }

    private static int[] unknown(int oldest) {
        int[] counts = new int[Math.max(0, oldest) + 1];
        Arrays.fill(counts, UNKNOWN);
        return counts;
    }

    /**
     * As people write them: {@code 1=5,2=4,3=4,4+=3}.
     *
     * @throws IllegalArgumentException with words for the person who wrote it
     */
    public static Stems parse(String line) {
        SortedMap<Integer, Integer> byAge = new TreeMap<>();
        int open = 0;
        for (String part : line.split(",", -1)) {
            int equals = part.trim().indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException(
                        "\"" + part.trim() + "\" is not an age, an equals sign and a number" + REMEDY);
            }
            String name = part.trim().substring(0, equals).trim();
            boolean lumped = name.endsWith("+");
            int count = whole(part.trim().substring(equals + 1).trim(), 0, 10_000, "the number of stems");
            int age = whole(lumped ? name.substring(0, name.length() - 1) : name, 1, OLDEST_CLASS, "an age of stems");
            if (byAge.put(age, count) != null) {
                throw new IllegalArgumentException("age " + name + " is given twice" + REMEDY);
            }
            open = lumped ? age : open;
        }
        if (open != 0 && open < byAge.lastKey()) {
            throw new IllegalArgumentException(
                    "only the oldest class may be open, but " + open + "+ stands beside age " + byAge.lastKey());
        }
        return from(byAge, open == 0 ? OptionalInt.empty() : OptionalInt.of(open));
    }

    private static int whole(String digits, int least, int most, String what) {
        try {
            int value = Integer.parseInt(digits);
            if (value >= least && value <= most) { return value; }
        } catch (NumberFormatException e) {
            // told below, together with numbers out of range
        }
        throw new IllegalArgumentException(
                what + " must be a whole number from " + least + " to " + most + " but is \"" + digits + "\"" + REMEDY);
    }

    /** The classes that were counted, by age. */
    public SortedMap<Integer, Integer> byAge() {
        SortedMap<Integer, Integer> byAge = new TreeMap<>();
        for (int age = 0; age < counts.length; age++) {
            if (counts[age] != UNKNOWN) { byAge.put(age, counts[age]); }
        }
        return byAge;
    }

    /** True where no class was counted. */
    public boolean isEmpty() {
        return IntStream.of(counts).allMatch(count -> count == UNKNOWN);
    }

    /** The oldest class; 0 where there are none. */
    public int oldest() { return counts.length - 1; }

    /** True where a class stands for its age and all older. */
    public boolean isOpen() { return openFrom != UNKNOWN; }

    /** The age of the class that stands for its age and all older. */
    public OptionalInt openFrom() {
        return isOpen() ? OptionalInt.of(openFrom) : OptionalInt.empty();
    }

    /** True where that age was counted; ages beyond the oldest class are none, and known. */
    public boolean knows(int age) {
        return age >= counts.length || counts[age] != UNKNOWN;
    }

    /** True where every class was counted. */
    public boolean isComplete() { return firstUnknown().isEmpty(); }

    /** The youngest class from age 1 that was not counted. */
    public OptionalInt firstUnknown() {
        return IntStream.range(1, counts.length).filter(age -> counts[age] == UNKNOWN).findFirst();
    }

    /** Stems of that class as far as counted; 0 where unknown. */
    public int at(int age) {
        return age >= 0 && age < counts.length ? Math.max(0, counts[age]) : 0;
    }

    /** Stems counted from {@code youngest} to {@code oldest}, both included. */
    public int between(int youngest, int oldest) {
        return IntStream.rangeClosed(youngest, Math.min(oldest, oldest())).map(this::at).sum();
    }

    /** Stems counted of that age or older. */
    public int from(int youngest) { return between(youngest, oldest()); }

    /** All stems counted. */
    public int total() { return from(0); }

    /** These without {@code number} of a class; the class must have as many. */
    public Stems without(int age, int number) {
        if (number < 0 || number > at(age)) {
            throw new IllegalArgumentException("cannot take " + number + " stems of age " + age + " from " + this);
        }
        if (number == 0) { return this; }
        Stems left = new Stems(counts.clone(), openFrom);
        left.counts[age] -= number;
        return left;
    }

    /**
     * What is left after stems were taken out. More than were known leaves none, never less than none. An age that was
     * lumped with older ones is taken from that class, from which the oldest go first.
     */
    public Stems less(Stems taken) {
        Stems left = new Stems(counts.clone(), openFrom);
        taken.byAge().forEach((age, number) -> {
            int from = isOpen() ? Math.min(age, openFrom) : age;
            int to = from < age || age == openFrom || age == taken.openFrom ? oldest() : age;
            int more = number;
            for (int each = to; each >= from; each--) {
                int gone = Math.min(left.at(each), more);
                more -= gone;
                if (gone > 0) { left.counts[each] -= gone; }
            }
        });
        return left;
    }

    /** A new count replaces the classes it names, an open one all that are as old or older; the others stay. */
    public Stems recounted(Stems fresh) {
        SortedMap<Integer, Integer> byAge = byAge();
        if (fresh.isOpen()) { byAge.tailMap(fresh.openFrom).clear(); }
        byAge.putAll(fresh.byAge());
        return from(byAge, fresh.isOpen() ? fresh.openFrom() : openFrom());
    }

    /** Some seasons on, or back where less than none: every stem so much older, and no newer shoots counted. */
    public Stems older(int seasons) {
        int[] older = unknown(oldest() + seasons);
        for (int age = Math.max(0, -seasons); age < counts.length; age++) {
            older[age + seasons] = counts[age];
        }
        return new Stems(older, isOpen() ? Math.max(UNKNOWN, openFrom + seasons) : UNKNOWN);
    }

    /** What there is to cut in winter: without this summer's shoots, to the oldest class that has any stem. */
    public Stems inWinter() {
        int oldest = Math.min(oldest(), OLDEST_CLASS);
        while (oldest > 1 && at(oldest) == 0) {
            oldest--;
        }
        SortedMap<Integer, Integer> byAge = byAge().subMap(1, oldest + 1);
        return from(byAge, openFrom == oldest ? openFrom() : OptionalInt.empty());
    }

    /**
     * One growing season on: every stem a year older, {@code newShoots} of age 1. Ages from {@code fold} up are
     * gathered in one open class.
     */
    public Stems aged(int newShoots, int fold) {
        int last = Math.min(counts.length, fold);
        int[] older = new int[last + 1];
        older[0] = UNKNOWN;
        older[1] = newShoots;
        for (int age = 1; age < counts.length; age++) {
            int at = Math.min(age + 1, last);
            boolean known = older[at] != UNKNOWN && counts[age] != UNKNOWN;
            older[at] = known ? older[at] + counts[age] : UNKNOWN;
        }
        return new Stems(older, isOpen() || counts.length > last ? last : UNKNOWN);
    }

    /** These with every class counted: {@code young} of age 1 where unknown, none of the others. */
    public Stems reckoned(int young) {
        if (isComplete()) { return this; }
        Stems all = new Stems(counts.clone(), openFrom);
        for (int age = 1; age < counts.length; age++) {
            all.counts[age] = knows(age) ? counts[age] : age == 1 ? young : 0;
        }
        return all;
    }

    /** How a class is written: {@code 3}, or {@code 4+} for the open one. */
    public String label(int age) {
        return age == openFrom ? age + "+" : Integer.toString(age);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stems stems && openFrom == stems.openFrom && Arrays.equals(counts, stems.counts);
    }

    @Override
    public int hashCode() { return 31 * Arrays.hashCode(counts) + openFrom; }

    /** As on the command line: {@code 1=5,2=4,4+=3}; unknown classes are left out. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        byAge().forEach(
                (age, count) -> text.append(text.isEmpty() ? "" : ",").append(label(age)).append('=').append(count));
        return text.toString();
    }
}

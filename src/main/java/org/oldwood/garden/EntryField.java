package org.oldwood.garden;

import java.util.List;
import java.util.Optional;

/**
 * One thing that a journal entry of some kind says.
 *
 * @param key its key in the file and, with {@code --} before it, on the command line
 * @param type what its value is
 * @param required whether the entry cannot do without it
 * @param least the least number allowed, included; meaningless for texts
 * @param most the greatest number allowed, included
 * @param words the words allowed, for {@link Holds#WORD}
 * @param help what it means, with the unit
 */
public record EntryField(
        String key, Holds type, boolean required, double least, double most, List<String> words, String help) {

    private static final List<String> UNITS = List.of("g", "kg", "l", "cm", "m", "m²", "°C");

    /** What a value is. The types that name something are checked against the garden. */
    public enum Holds {
        NEW_ID,
        NEW_IDS,
        PLANT,
        PLANTS,
        BED,
        LOT,
        CROP,
        STAGE,
        MATERIAL,
        STEMS,
        /** A number, or stems by age. */
        SOME_STEMS,
        NUMBER,
        COUNT,
        WORD,
        FLAG,
        TEXT,
        TASK,
        ENTRY
    }

    static EntryField says(String key, Holds type, String help) {
        return new EntryField(key, type, false, 0, 0, List.of(), help);
    }

    /** Which {@code done} entry it was booked with: where that one goes, it goes too. */
    static EntryField tick() {
        return says("tick", Holds.ENTRY, "the done entry that it was booked with");
    }

    /** Whether its figures are those of the plan, which nobody weighed or counted. */
    static EntryField planned() {
        return says("planned", Holds.FLAG, "true where booked as planned, not weighed or counted");
    }

    static EntryField word(String key, String help, String... words) {
        return new EntryField(key, Holds.WORD, false, 0, 0, List.of(words), help);
    }

    static EntryField number(String key, double least, double most, String help) {
        return new EntryField(key, Holds.NUMBER, false, least, most, List.of(), help);
    }

    static EntryField count(String key, int least, int most, String help) {
        return new EntryField(key, Holds.COUNT, false, least, most, List.of(), help);
    }

    /** A part of the stems counted: how many of them, or which by age. */
    static EntryField some(String key, String help) {
        return new EntryField(key, Holds.SOME_STEMS, false, 0, 500, List.of(), help);
    }

    /** The unit of a measure, which ends its help: {@code how much in all, g}. */
    public Optional<String> unit() {
        return Optional.of(help.substring(help.lastIndexOf(' ') + 1))
                .filter(word -> type == Holds.NUMBER && UNITS.contains(word));
    }

    /** Whether its value is the name of something that must be there already. */
    boolean namesSomething() {
        return type == Holds.PLANT || type == Holds.BED || type == Holds.LOT || type == Holds.CROP;
    }

    EntryField must() {
        return new EntryField(key, type, true, least, most, words, help);
    }
}

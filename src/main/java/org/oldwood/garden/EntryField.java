package org.oldwood.garden;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.store.Fields;

/**
 * One thing that a journal entry of some kind says.
 *
 * @param key its key in the file and, with {@code --} before it, on the command line
 * @param required whether the entry cannot do without it
 * @param least the least number allowed, included; meaningless for texts
 * @param most the greatest number allowed, included
 * @param words the words allowed, for {@link Holds#WORD}
 * @param of the field that it is a part of, and so no more than; empty for none
 * @param help what it means, with the unit
 */
public record EntryField(String key, Holds type, boolean required, double least, double most, List<String> words,
        String of, String whole, String help) {

    private static final List<String> UNITS = List.of("g", "kg", "l", "cm", "m", "m²", "°C");

    /** What a value is. The types that name something are checked against the garden. */
    public enum Holds {
        NEW_ID("ID"),
        NEW_IDS("ID,ID"),
        PLANT("ID"),
        PLANTS("ID,ID"),
        BED("ID"),
        LOT("ID"),
        CROP("ID"),
        STAGE("STAGE"),
        MATERIAL("ID"),
        STEMS("AGE=N,AGE=N"),
        /** A number, or stems by age. */
        SOME_STEMS("N|AGE=N,AGE=N"),
        NUMBER("N"),
        COUNT("N"),
        WORD("WORD"),
        FLAG("true|false"),
        TEXT("WORD"),
        TASK("ID"),
        ENTRY("ID");

        private final String typed;

        Holds(String typed) { this.typed = typed; }

        /** What is typed for it, in short. */
        public String typed() { return typed; }
    }

    static EntryField read(Fields field) {
        EntryField read = new EntryField(field.text("key"),
                Holds.valueOf(field.text("is").toUpperCase(Locale.ROOT).replace('-', '_')), field.flag("must", false),
                field.number("least", -1e9, 1e9, 0), field.number("most", -1e9, 1e9, 0), field.texts("words"),
                field.text("of", ""), field.text("whole", ""), field.text("help"));
        field.done();
        return read;
    }

    /** The unit of a measure, which ends its help: {@code how much in all, g}. */
    public Optional<String> unit() {
        return Optional.of(help.substring(help.lastIndexOf(' ') + 1))
                .filter(word -> type == Holds.NUMBER && UNITS.contains(word));
    }
}

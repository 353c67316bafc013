package org.oldwood.craft.cuttings;

import java.util.List;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/** A value with the sources that give it and how they were seen. */
record Sourced<T>(T value, List<String> sources, Seen seen, String note) {
    Sourced {
        sources = List.copyOf(sources);
    }

    /** Reads {@code source}, {@code seen} and {@code note} beside the value. */
    static <T> Sourced<T> read(Fields fields, T value) {
        return new Sourced<>(
                value, fields.texts("source"), Seen.parse(fields.oneOf("seen", Seen.keys())), fields.text("note", ""));
    }
}

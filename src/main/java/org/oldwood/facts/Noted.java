package org.oldwood.facts;

import java.util.Map;
import org.oldwood.garden.EntryKind;

/**
 * What a journal entry would say of a piece of work that was done as planned.
 *
 * @param says its values as one would type them, without the plant or bed: {@code material}, {@code grams}
 */
public record Noted(EntryKind kind, Map<String, String> says) {
    public Noted {
        says = Map.copyOf(says);
    }
}

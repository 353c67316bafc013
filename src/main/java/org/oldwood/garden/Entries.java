package org.oldwood.garden;

import java.util.List;
import java.util.Optional;

/** Looks things up in lists of entries, oldest first. */
public final class Entries {
    private Entries() {}

    /** The last entry of a kind. */
    public static Optional<Entry> last(List<Entry> entries, EntryKind kind) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).kind() == kind) {
                return Optional.of(entries.get(i));
            }
        }
        return Optional.empty();
    }

    /** All entries of a kind, oldest first. */
    public static List<Entry> all(List<Entry> entries, EntryKind kind) {
        return entries.stream().filter(entry -> entry.kind() == kind).toList();
    }
}

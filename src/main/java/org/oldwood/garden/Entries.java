package org.oldwood.garden;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Looks things up in lists of entries, oldest first. */
public final class Entries {
    private Entries() {}

    /** The ids of entries that count no more: taken back, or booked with one that was. */
    public static Set<String> withdrawn(List<Entry> journal) {
        Set<String> out = new HashSet<>();
        for (int i = journal.size() - 1; i >= 0; i--) {
            Entry entry = journal.get(i);
            // the latest first, so that taking back may itself be taken back
            if (entry.kind() == EntryKind.WITHDRAWN && !out.contains(entry.id())) { out.add(entry.needed("wrong")); }
        }
        for (Entry entry : journal) {
            if (entry.text("tick").filter(out::contains).isPresent()) { out.add(entry.id()); }
        }
        return out;
    }

    public static Optional<Entry> last(List<Entry> entries, EntryKind kind) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).kind() == kind) { return Optional.of(entries.get(i)); }
        }
        return Optional.empty();
    }

    /** All entries of a kind, oldest first. */
    public static List<Entry> all(List<Entry> entries, EntryKind kind) {
        List<Entry> all = List.of();
        for (Entry entry : entries) {
            if (entry.kind() == kind) {
                all = all.isEmpty() ? new ArrayList<>() : all;
                all.add(entry);
            }
        }
        return Collections.unmodifiableList(all);
    }

    /** The entries that stand before one of them; those of earlier days where it is not among them. */
    public static List<Entry> before(List<Entry> entries, Entry entry) {
        int at = entries.indexOf(entry);
        return at >= 0 ? List.copyOf(entries.subList(0, at))
                : entries.stream().filter(each -> each.date().isBefore(entry.date())).toList();
    }
}

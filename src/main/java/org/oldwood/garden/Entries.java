package org.oldwood.garden;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Looks things up in lists of entries, oldest first. */
public final class Entries {
    /** Ends the cause of a taking back that goes with the entry after it, and is taken back together with that. */
    public static final String WITH_NEXT = "the entry after it";

    private static final Pattern LATER_OF_MANY = Pattern.compile("(e-[0-9a-f]{12})-[0-9]+");

    private Entries() {}

    /** The id of the first of those that an entry was noted at once with; of one noted alone, or long ago, its own. */
    public static String act(String id) {
        return LATER_OF_MANY.matcher(id).replaceFirst("$1");
    }

    /** The id of one of several noted at once: the {@code number}th, from 1. */
    public static String inAct(String first, int number) {
        return number == 1 ? first : first + "-" + number;
    }

    /** The ids of entries that count no more: taken back, by the journal or now, or booked with one that was. */
    public static Set<String> withdrawn(List<Entry> journal, Set<String> now) {
        Set<String> out = new HashSet<>(now);
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

    /** By the id of a taking back that goes with another entry: that entry. Many may go with one. */
    public static Map<String, Entry> together(List<Entry> journal) {
        Map<String, Entry> out = new LinkedHashMap<>();
        for (int i = journal.size() - 2; i >= 0; i--) {
            Entry entry = journal.get(i);
            Entry next = journal.get(i + 1);
            if (entry.kind() == EntryKind.WITHDRAWN && entry.text("cause").orElse("").endsWith(WITH_NEXT)) {
                out.put(entry.id(), out.getOrDefault(next.id(), next));
            }
        }
        return out;
    }

    /** What an entry that sets another of its kind right was noted as at first; itself where it sets none right. */
    public static Entry first(Entry entry, List<Entry> journal) {
        Map<String, Entry> together = together(journal);
        Entry first = entry;
        String wrong = "";
        for (int i = journal.size() - 1; i >= 0; i--) {
            Entry each = journal.get(i);
            wrong = first.equals(together.get(each.id())) ? each.needed("wrong") : wrong;
            first = each.id().equals(wrong) && each.kind() == entry.kind() ? each : first;
        }
        return first;
    }

    public static Optional<Entry> last(List<Entry> entries, EntryKind kind) { return last(entries, kind, any -> true); }

    /** The last of a kind that is as wanted. */
    public static Optional<Entry> last(List<Entry> entries, EntryKind kind, Predicate<Entry> wanted) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry.kind() == kind && wanted.test(entry)) { return Optional.of(entry); }
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

package org.oldwood.garden;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.oldwood.crop.Crops;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/**
 * Checks that what an entry names is there: plants, beds, lots, crops and other entries.
 *
 * @param plants the plants known so far, as beds and lots a live view that grows while the journal is added up
 * @param since the day from which on each plant and lot was noted to be there, taken back since or not
 */
record References(Collection<String> plants, Collection<String> beds, Collection<String> lots, Crops crops,
        Problems problems, Map<String, LocalDate> since) {

    /** Each id once, and nothing taken back that is not there. */
    void check(List<Entry> journal) {
        Set<String> known = new HashSet<>();
        for (Entry entry : journal) {
            if (entry.kind() == EntryKind.PLANTED || entry.kind() == EntryKind.STRUCK) {
                since.putIfAbsent(entry.text("plant").or(() -> entry.text("lot")).orElse(""), entry.date());
            }
            if (!known.add(entry.id())) { problem(entry, "duplicate-id entry", entry.id()); }
            if (entry.kind() == EntryKind.WITHDRAWN && !known.contains(entry.needed("wrong"))) {
                problem(entry, "unknown-reference", entry.needed("wrong"),
                        Nearest.hint(entry.needed("wrong"), known.size() < 200 ? known : Set.of()));
            }
        }
    }

    boolean namesKnown(Entry entry) {
        boolean known = true;
        for (EntryField field : entry.kind().fields()) {
            switch (field.type()) {
                case PLANT, PLANTS -> known &= known(entry, field, "plant", plants, nearest(plants));
                case BED -> known &= known(entry, field, "bed", beds, nearest(beds));
                case LOT -> known &= known(entry, field, "lot", lots, nearest(lots));
                case CROP -> known &= known(entry, field, "crop", crops.ids(), crops::hint);
                default -> {
                    // names nothing that must be there already
                }
            }
        }
        return known;
    }

    private static UnaryOperator<String> nearest(Collection<String> among) {
        return name -> Nearest.hint(name, among.size() < 200 ? among : Set.of());
    }

    private boolean known(Entry entry, EntryField field, String what, Collection<String> among,
            UnaryOperator<String> hint) {
        boolean known = true;
        for (String name : entry.ids(field.key())) {
            if (!among.contains(name)) {
                known = false;
                problems.add("unknown-" + what, entry.placeOf(field.key()),
                        "names no %s that is known on %s: \"%s\"".formatted(what, entry.date(), name),
                        remedy(name, entry.date(), hint));
            }
        }
        return known;
    }

    private String remedy(String name, LocalDate day, UnaryOperator<String> hint) {
        LocalDate from = since.get(name);
        return from == null ? hint.apply(name)
                : from.isAfter(day) ? "It is there from %s on.".formatted(from)
                        : "That it came was taken back: take back what was noted of it first.";
    }

    void problem(Entry entry, String words, Object... said) { problems.tell(words, entry.place(), said); }
}

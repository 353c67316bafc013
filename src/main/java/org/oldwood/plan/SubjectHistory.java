package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.oldwood.facts.Subject;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.LeafFalls;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.store.Place;

/**
 * Subjects as they were before an entry. A bush whose old wood was cut this winter has none left to cut; only the bush
 * before the cut tells which task the cut was.
 */
final class SubjectHistory {
    private SubjectHistory() {}

    /** The subject as the record had it at the end of a day. */
    static Subject on(Subject subject, LocalDate day, LeafFalls falls) {
        Entry after = new Entry("", day.plusDays(1), EntryKind.VIGOUR, Map.of(), "", Place.of("plan"));
        return before(subject, after, falls);
    }

    static Subject before(Subject subject, Entry entry, LeafFalls falls) {
        return with(subject, all -> Entries.before(all, entry), falls);
    }

    /** Just after some work: of its last day nothing but the work itself. */
    static Subject after(Subject subject, List<Entry> work, LeafFalls falls) {
        LocalDate last = work.get(work.size() - 1).date();
        UnaryOperator<List<Entry>> until = all -> all.stream()
                .filter(entry -> entry.date().isBefore(last) || work.contains(entry)).toList();
        return with(subject, until, falls);
    }

    private static Subject with(Subject subject, UnaryOperator<List<Entry>> some, LeafFalls falls) {
        if (subject instanceof Subject.Lot lot) {
            LotState now = lot.state();
            LotState then = new LotState(now.id(), now.crop(), now.parent(), now.method(), now.struck(), now.struckOn(),
                    now.bed(), some.apply(now.entries()));
            return new Subject.Lot(then, lot.of(), lot.bed());
        }
        return made(subject, plant -> with(plant, some, falls), bed -> with(bed, some), some);
    }

    /**
     * A subject of other parts; the very same one where no part is another: what the crafts found of it serves again.
     *
     * @param entries what was noted of a stand, with what is added or without what is left out
     */
    static Subject made(Subject subject, UnaryOperator<PlantState> plants, UnaryOperator<BedState> beds,
            UnaryOperator<List<Entry>> entries) {
        if (subject instanceof Subject.OnePlant one) {
            PlantState plant = plants.apply(one.state());
            BedState bed = beds.apply(one.in());
            return isSame(plant, one.state()) && isSame(bed, one.in()) ? one
                    : new Subject.OnePlant(plant, one.of(), bed);
        }
        if (subject instanceof Subject.Stand stand) {
            List<Entry> noted = entries.apply(stand.entries());
            BedState bed = beds.apply(stand.in());
            if (noted.size() == stand.entries().size() && isSame(bed, stand.in())) { return stand; }
            return new Subject.Stand(bed, stand.of(), stand.form(), stand.beside(),
                    stand.plants().stream().map(plants).toList(), noted);
        }
        if (subject instanceof Subject.WholeBed whole) {
            BedState bed = beds.apply(whole.in());
            return isSame(bed, whole.in()) ? whole : new Subject.WholeBed(bed, whole.crop());
        }
        return subject;
    }

    private static PlantState with(PlantState plant, UnaryOperator<List<Entry>> some, LeafFalls falls) {
        List<Entry> entries = some.apply(plant.entries());
        return entries.size() == plant.entries().size() && plant.gone().isEmpty() ? plant : plant.with(entries, falls);
    }

    private static BedState with(BedState bed, UnaryOperator<List<Entry>> some) {
        List<Entry> entries = some.apply(bed.entries());
        return entries.size() == bed.entries().size() ? bed : new BedState(bed.bed(), bed.plants(), entries);
    }

    @SuppressWarnings("ReferenceEquality") // asks whether a part is the very one that it was
    private static boolean isSame(Object one, Object other) { return one == other; }
}

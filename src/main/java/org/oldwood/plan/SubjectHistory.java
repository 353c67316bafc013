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
        if (subject instanceof Subject.OnePlant one) {
            PlantState plant = one.state();
            return new Subject.OnePlant(plant.with(some.apply(plant.entries()), falls), one.of(), with(one.in(), some));
        }
        if (subject instanceof Subject.Stand stand) {
            List<PlantState> plants = stand.plants().stream()
                    .map(plant -> plant.with(some.apply(plant.entries()), falls)).toList();
            return new Subject.Stand(with(stand.in(), some), stand.of(), stand.form(), stand.beside(), plants,
                    some.apply(stand.entries()));
        }
        if (subject instanceof Subject.WholeBed bed) { return new Subject.WholeBed(with(bed.in(), some), bed.crop()); }
        if (subject instanceof Subject.Lot lot) {
            LotState now = lot.state();
            LotState then = new LotState(now.id(), now.crop(), now.parent(), now.method(), now.struck(), now.struckOn(),
                    now.bed(), some.apply(now.entries()));
            return new Subject.Lot(then, lot.of(), lot.bed());
        }
        return subject;
    }

    private static BedState with(BedState bed, UnaryOperator<List<Entry>> some) {
        return new BedState(bed.bed(), bed.plants(), some.apply(bed.entries()));
    }
}

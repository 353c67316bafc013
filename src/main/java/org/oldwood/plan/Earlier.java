package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
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
final class Earlier {
    private Earlier() {}

    /** The subject as the record had it at the end of a day. */
    static Subject on(Subject subject, LocalDate day, LeafFalls falls) {
        Entry after = new Entry("", day.plusDays(1), EntryKind.VIGOUR, Map.of(), "", Place.of("plan"));
        return before(subject, after, falls);
    }

    static Subject before(Subject subject, Entry entry, LeafFalls falls) {
        if (subject instanceof Subject.OnePlant one) {
            return new Subject.OnePlant(one.state().before(entry, falls), one.of(), before(one.in(), entry));
        }
        if (subject instanceof Subject.Stand stand) {
            List<PlantState> plants = stand.plants().stream()
                    .map(plant -> plant.before(entry, falls))
                    .toList();
            return new Subject.Stand(
                    before(stand.in(), entry),
                    stand.of(),
                    stand.form(),
                    stand.beside(),
                    plants,
                    Entries.before(stand.entries(), entry));
        }
        if (subject instanceof Subject.WholeBed bed) {
            return new Subject.WholeBed(before(bed.in(), entry), bed.crop());
        }
        if (subject instanceof Subject.Lot lot) {
            LotState now = lot.state();
            LotState then = new LotState(
                    now.id(),
                    now.crop(),
                    now.parent(),
                    now.method(),
                    now.struck(),
                    now.struckOn(),
                    now.bed(),
                    Entries.before(now.entries(), entry));
            return new Subject.Lot(then, lot.of(), lot.bed());
        }
        return subject;
    }

    private static BedState before(BedState bed, Entry entry) {
        return new BedState(bed.bed(), bed.plants(), Entries.before(bed.entries(), entry));
    }
}

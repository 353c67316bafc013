package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Subject;
import org.oldwood.garden.BedState;
import org.oldwood.garden.CountedStems;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.LeafFalls;
import org.oldwood.garden.PlantState;
import org.oldwood.store.Json;
import org.oldwood.store.Place;

/**
 * The garden as it will be if a plan's work is done: what its open tasks come to, added to the subjects of later ones.
 * So this winter's cut is out of next winter's count, and the first dressing is there for the second.
 */
final class Ahead {
    /** What a planned mulch brings and takes is reckoned by the feeding craft itself. */
    private static final Set<EntryKind> LASTING = EnumSet.of(EntryKind.PRUNED, EntryKind.FED, EntryKind.LIMED,
            EntryKind.ACIDIFIED);

    private static final Place PLACE = Place.of("plan");

    private static final Json PLANNED = new Json.Bool(PLACE.at("planned"), true);

    private final LeafFalls falls;
    private final Map<String, List<Entry>> ofPlants = new HashMap<>();
    private final Map<String, List<Entry>> ofBeds = new HashMap<>();

    /** The last subject as it will be, by how much will have been done: what a craft finds of it serves again. */
    private final Map<Integer, Subject> then = new HashMap<>();
    private List<Entry> lasts = List.of();
    private @Nullable Subject last;

    private Ahead(LeafFalls falls) { this.falls = falls; }

    /** Nothing is done but what was noted. */
    static Ahead nothing(LeafFalls falls) { return new Ahead(falls); }

    /** What the open tasks of a plan come to, each on its day. */
    static Ahead of(Plan plan, LeafFalls falls) {
        Ahead ahead = new Ahead(falls);
        plan.tasks().stream().filter(task -> task.state() == Task.State.OPEN).forEach(ahead::add);
        Comparator<Entry> byDate = Comparator.comparing(Entry::date);
        ahead.ofPlants.values().forEach(entries -> entries.sort(byDate));
        ahead.ofBeds.values().forEach(entries -> entries.sort(byDate));
        return ahead;
    }

    private void add(Task task) {
        int number = 0;
        for (Amount.Noted noted : Booking.of(task)) {
            if (LASTING.contains(noted.kind())) {
                number++;
                add(entry(task.id() + "/" + number, task.day(), noted));
            }
        }
    }

    private void add(Entry entry) {
        entry.text("plant").ifPresent(plant -> list(ofPlants, plant).add(entry));
        if (entry.text("plant").isEmpty()) { entry.text("bed").ifPresent(bed -> list(ofBeds, bed).add(entry)); }
    }

    private static List<Entry> list(Map<String, List<Entry>> all, String id) {
        return all.computeIfAbsent(id, any -> new ArrayList<>());
    }

    private static Entry entry(String id, LocalDate day, Amount.Noted noted) {
        Map<String, Json> values = new HashMap<>();
        noted.kind().fields().forEach(field -> Optional.ofNullable(noted.says().get(field.key()))
                .ifPresent(text -> values.put(field.key(), EntryText.value(field, text, PLACE))));
        values.put("planned", PLANNED);
        return new Entry(id, day, noted.kind(), Map.copyOf(values), "", PLACE);
    }

    /** Whether it holds anything of the subject, or of the bed that it stands in. */
    boolean touches(Subject subject) {
        return !of(subject).isEmpty();
    }

    /** What will be done to the subject, and to the bed that it stands in. */
    @SuppressWarnings("ReferenceEquality") // asked of one subject, then of the next
    private List<Entry> of(Subject subject) {
        if (subject != last) {
            then.clear();
            last = subject;
            lasts = new ArrayList<>();
            subject.bed().ifPresent(bed -> lasts.addAll(ofBeds.getOrDefault(bed.bed().id(), List.of())));
            if (!(subject instanceof Subject.WholeBed)) {
                subject.plants().forEach(plant -> lasts.addAll(ofPlants.getOrDefault(plant.plant().id(), List.of())));
            }
        }
        return lasts;
    }

    /** The subject with what will have been done before a day; the very same one where nothing will. */
    Subject on(Subject subject, LocalDate day) {
        List<Entry> more = before(of(subject), day);
        return more.isEmpty() ? subject
                : then.computeIfAbsent(more.size(), any -> SubjectHistory.made(subject, plant -> plant(plant, day),
                        bed -> bed(bed, day), noted -> joined(noted, more)));
    }

    private PlantState plant(PlantState plant, LocalDate day) {
        List<Entry> more = before(ofPlants, plant.plant().id(), day);
        if (more.isEmpty()) { return plant; }
        CountedStems stems = plant.stems();
        for (Entry entry : more) {
            stems = stems.after(entry, falls.seasonYear(plant.plant().crop(), entry.date()));
        }
        return new PlantState(plant.plant(), stems, joined(plant.entries(), more), plant.gone());
    }

    private BedState bed(BedState bed, LocalDate day) {
        List<Entry> more = before(ofBeds, bed.bed().id(), day);
        return more.isEmpty() ? bed : new BedState(bed.bed(), bed.plants(), joined(bed.entries(), more));
    }

    private static List<Entry> before(Map<String, List<Entry>> all, String id, LocalDate day) {
        return before(all.getOrDefault(id, List.of()), day);
    }

    private static List<Entry> before(List<Entry> all, LocalDate day) {
        return all.stream().filter(entry -> entry.date().isBefore(day)).toList();
    }

    private static List<Entry> joined(List<Entry> noted, List<Entry> more) {
        List<Entry> all = new ArrayList<>(noted);
        all.addAll(more);
        return all;
    }

    /** Whether another plan comes to the same. */
    boolean isSame(Ahead other) {
        return ofPlants.equals(other.ofPlants) && ofBeds.equals(other.ofBeds);
    }

    /** Whether another plan comes to the same for the subject until a day. */
    boolean isSame(Ahead other, Subject subject, LocalDate day) {
        return before(of(subject), day).equals(before(other.of(subject), day));
    }
}

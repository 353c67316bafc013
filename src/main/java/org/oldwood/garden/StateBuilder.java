package org.oldwood.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/**
 * Adds a journal up, entry by entry, in the order of dates; entries of one day in the order of the journal. Linear in
 * entries. An entry that names something unknown becomes a problem and is passed over.
 */
public final class StateBuilder {
    private final Garden garden;
    private final Crops crops;
    private final References references;
    private final Map<String, Open> plants = new LinkedHashMap<>();
    private final Map<String, List<Entry>> beds = new LinkedHashMap<>();
    private final Map<String, LotState> lots = new LinkedHashMap<>();
    public static final int PUT_OFF_DAYS = 14;

    private final Map<String, Entry> begun = new HashMap<>();
    private final Map<String, LocalDate> later = new HashMap<>();
    private final Set<String> never = new TreeSet<>();
    private final Map<String, List<Entry>> finished = new HashMap<>();
    private final List<Entry> counting = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();
    private final LeafFalls leafFalls;

    /** A plant while its history grows. */
    private static final class Open {
        final Plant plant;
        final List<Entry> entries = new ArrayList<>();
        CountedStems stems = CountedStems.UNKNOWN;
        Optional<Entry> gone = Optional.empty();

        Open(Plant plant) { this.plant = plant; }
    }

    public StateBuilder(Garden garden, Crops crops, Problems problems) {
        this.garden = garden;
        this.leafFalls = new LeafFalls(garden.hemisphere());
        this.crops = crops;
        this.references = new References(plants.keySet(), beds.keySet(), lots.keySet(), crops, problems,
                new HashMap<>());
        garden.beds().forEach(bed -> beds.put(bed.id(), new ArrayList<>()));
    }

    /** The entries that were not taken back, less those taken back now and what goes with them. */
    public static List<Entry> counting(List<Entry> journal, Set<String> now) {
        Set<String> withdrawn = Entries.withdrawn(journal, now);
        return journal.stream().filter(entry -> !withdrawn.contains(entry.id())).toList();
    }

    /** The garden on the day: all entries dated up to it, included, less those taken back. */
    public GardenState on(LocalDate day, List<Entry> journal) {
        references.check(journal);
        Set<String> withdrawn = Entries.withdrawn(journal, Set.of());
        List<Entry> ordered = new ArrayList<>(journal);
        ordered.removeIf(entry -> entry.date().isAfter(day) || entry.kind() == EntryKind.WITHDRAWN
                || withdrawn.contains(entry.id()));
        ordered.sort((a, b) -> a.date().compareTo(b.date()));
        ordered.forEach(this::add);
        askOfRows(journal);
        return finish(day);
    }

    /**
     * Rows may name a plant before it is planted, and after it is gone; but one that the journal never names is a slip.
     */
    private void askOfRows(List<Entry> journal) {
        List<Bed> declared = garden.beds().stream().filter(bed -> !bed.rows().isEmpty()).toList();
        if (declared.isEmpty()) { return; }
        Set<String> planted = new HashSet<>();
        for (Entry entry : journal) {
            entry.text("plant").ifPresent(planted::add);
            planted.addAll(entry.ids("plants"));
        }
        declared.forEach(bed -> bed.rows().stream().flatMap(List::stream).filter(id -> !planted.contains(id))
                .forEach(id -> questions.add("garden.json: the rows of %s name \"%s\", which nothing was noted of. %s"
                        .formatted(bed.id(), id, Nearest.hint(id, planted.size() < 200 ? planted : Set.of())))));
    }

    private void add(Entry entry) {
        if (!references.namesKnown(entry)) { return; }
        counting.add(entry);
        leafFalls.note(entry);
        switch (entry.kind()) {
            case PLANTED ->
                plant(entry, entry.needed("plant"), entry.needed("crop"), entry.needed("bed"), Optional.empty());
            case PLANTED_OUT -> plantOut(entry);
            case STRUCK -> strike(entry);
            case BEGUN -> begun.put(entry.needed("task"), entry);
            case LATER ->
                later.put(entry.needed("task"), entry.date().plusDays(entry.count("days").orElse(PUT_OFF_DAYS)));
            case NEVER -> never.add(entry.needed("kind"));
            case DONE, SKIPPED -> finished.computeIfAbsent(entry.needed("task"), task -> new ArrayList<>()).add(entry);
            default -> note(entry);
        }
    }

    /** What is known to be there, because the entry's names were checked. */
    private static <T> T known(Map<String, T> among, String id) {
        T found = among.get(id);
        if (found == null) { throw new IllegalStateException("an unchecked name: " + id); }
        return found;
    }

    private void plant(Entry entry, String id, String cropId, String bed, Optional<LotState> lot) {
        if (plants.containsKey(id)) {
            references.problem(entry, "duplicate-plant", id);
            return;
        }
        Crop crop = crops.get(cropId);
        String form = entry.text("form").or(() -> lot.flatMap(LotState::form)).orElse(crop.form());
        if (!isGrownAs(form, crop, entry)) { return; }
        Plant plant = new Plant(id, cropId, form, entry.text("cultivar").or(() -> lot.flatMap(this::parentsCultivar)),
                bed, entry.count("bushes").orElse(1), entry.number("lengthM"), entry.date(),
                entry.text("about").orElse("day"), lot.map(LotState::id));
        Open open = new Open(plant);
        open.entries.add(entry);
        plants.put(id, open);
    }

    private boolean isGrownAs(String form, Crop crop, Entry entry) {
        boolean known = crop.forms().contains(form);
        if (!known) { references.problem(entry, "unknown-form", crop.name(), form, crop.formHint(form)); }
        return known;
    }

    private Optional<String> parentsCultivar(LotState lot) {
        return lot.parent().flatMap(parent -> known(plants, parent).plant.cultivar());
    }

    private void plantOut(Entry entry) {
        LotState lot = known(lots, entry.needed("lot"));
        lot.entries().add(entry);
        entry.ids("plants").forEach(id -> plant(entry, id, lot.crop(), entry.needed("bed"), Optional.of(lot)));
    }

    private void strike(Entry entry) {
        String id = entry.needed("lot");
        if (lots.containsKey(id)) {
            references.problem(entry, "duplicate-lot", id);
            return;
        }
        Optional<String> parent = entry.text("parent");
        String crop = parent.map(plant -> known(plants, plant).plant.crop()).or(() -> entry.text("crop")).orElseThrow();
        Optional<String> form = entry.text("form");
        if (form.isEmpty() || isGrownAs(form.get(), crops.get(crop), entry)) {
            lots.put(id, new LotState(id, crop, parent, entry.needed("method"), entry.count("number").orElse(1),
                    entry.date(), entry.text("bed"), new ArrayList<>(List.of(entry))));
            parent.ifPresent(plant -> known(plants, plant).entries.add(entry));
        }
    }

    private void note(Entry entry) {
        Map<String, Json> values = entry.values();
        if ((entry.kind() == EntryKind.SEEN || entry.kind() == EntryKind.PICKED)
                && values.get("crop") instanceof Json.Text crop
                && plants.values().stream().noneMatch(open -> open.plant.crop().equals(crop.value()))) {
            questions.add(Questions.noneOf(crop.value(), entry));
        }
        if (values.get("lot") instanceof Json.Text lot) {
            LotState noted = known(lots, lot.value());
            questions.addAll(Questions.about(noted, entry));
            noted.entries().add(entry);
        }
        if (values.get("plant") instanceof Json.Text plant) {
            notePlant(known(plants, plant.value()), entry);
        } else if (values.get("bed") instanceof Json.Text bed) { known(beds, bed.value()).add(entry); }
    }

    private void notePlant(Open plant, Entry entry) {
        if (plant.gone.isPresent()) { questions.add(Questions.gone(plant.plant, plant.gone.get(), entry)); }
        plant.entries.add(entry);
        switch (entry.kind()) {
            case COUNTED, PRUNED -> {
                int season = leafFalls.seasonYear(plant.plant.crop(), entry.date());
                // where no stems are known yet, there is nothing that a count could contradict
                if (plant.stems.known()) {
                    questions.addAll(Questions.about(plant.plant.id(), plant.stems.in(season), entry));
                }
                plant.stems = plant.stems.after(entry, season);
            }
            case GRUBBED, LOST -> plant.gone = Optional.of(entry);
            default -> {
                // other notes change no count
            }
        }
    }

    private GardenState finish(LocalDate day) {
        Map<String, PlantState> byId = new LinkedHashMap<>();
        Map<String, List<PlantState>> inBed = new HashMap<>();
        for (Open open : plants.values()) {
            PlantState state = new PlantState(open.plant, open.stems, open.entries, open.gone);
            byId.put(open.plant.id(), state);
            if (open.gone.isEmpty()) { inBed.computeIfAbsent(open.plant.bed(), bed -> new ArrayList<>()).add(state); }
        }
        Map<String, BedState> bedStates = new LinkedHashMap<>();
        for (Bed bed : garden.beds()) {
            bedStates.put(bed.id(),
                    new BedState(bed, inBed.getOrDefault(bed.id(), List.of()), beds.getOrDefault(bed.id(), List.of())));
        }
        return new GardenState(garden, day, byId, bedStates, lots, counting, begun, finished, later, never, questions,
                leafFalls);
    }
}

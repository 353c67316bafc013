package org.oldwood.garden;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.season.Season;

/**
 * A garden on a day: the journal added up to that day, included. Always derived, never stored.
 *
 * @param date the day
 * @param plants by id, in the order of planting; those that are gone stay, marked so
 * @param beds by id, in the order of {@code garden.json}
 * @param lots by id, in the order of striking
 * @param entries all entries that count, oldest first
 * @param begun the latest begun entry of each task, by the task's id
 * @param finished the done and skipped entries of each task, oldest first, by the task's id
 * @param later until when a task was put off, by the task's id
 * @param never the kinds of work that were noted as never wanted
 * @param questions things noted that do not fit together; accepted all the same
 * @param leafFalls when leaves were seen to fall
 */
public record GardenState(Garden garden, LocalDate date, Map<String, PlantState> plants, Map<String, BedState> beds,
        Map<String, LotState> lots, List<Entry> entries, Map<String, Entry> begun, Map<String, List<Entry>> finished,
        Map<String, LocalDate> later, Set<String> never, List<String> questions, LeafFalls leafFalls) {

    /** What the grower wants of the program: what the garden declares, and what was noted since. */
    public Wishes wishes() {
        return garden.wishes().without(never);
    }

    /** The season that the day lies in. */
    public Season season() {
        return Season.containing(date, garden.hemisphere());
    }

    /** The plants that still stand. */
    public Collection<PlantState> standing() {
        return plants.values().stream().filter(plant -> plant.gone().isEmpty()).toList();
    }

    /** The plants that stand as one walks: bed by bed as the garden lists them, in a bed row by row. */
    public List<PlantState> walked() {
        return beds.values().stream().flatMap(bed -> bed.rows().stream()).flatMap(List::stream).toList();
    }

    public Optional<PlantState> plant(String id) { return Optional.ofNullable(plants.get(id)); }

    public Optional<BedState> bed(String id) { return Optional.ofNullable(beds.get(id)); }
}

package org.oldwood.garden;

import java.util.ArrayList;
import java.util.List;

/**
 * A bed on a day.
 *
 * @param plants the plants that stand in it, in the order of planting
 * @param entries all that was noted of the bed, oldest first; not what was noted of single plants
 */
public record BedState(Bed bed, List<PlantState> plants, List<Entry> entries) {

    /** Its plants row by row as one walks: as declared; those that have no place there follow in a row of their own. */
    public List<List<PlantState>> rows() {
        List<PlantState> left = new ArrayList<>(plants);
        List<List<PlantState>> rows = new ArrayList<>(bed.rows().stream()
                .map(declared -> declared.stream()
                        .flatMap(id -> plants.stream().filter(plant -> plant.plant().id().equals(id))).toList())
                .toList());
        rows.forEach(left::removeAll);
        rows.add(left);
        rows.removeIf(List::isEmpty);
        return rows;
    }
}

package org.oldwood.garden;

import java.util.List;
import java.util.Optional;

/**
 * A bed on a day.
 *
 * @param bed what it is
 * @param plants the plants that stand in it, in the order of planting
 * @param entries all that was noted of the bed, oldest first; not what was noted of single plants
 */
public record BedState(Bed bed, List<PlantState> plants, List<Entry> entries) {

    /** The last entry of a kind. */
    public Optional<Entry> last(EntryKind kind) {
        return Entries.last(entries, kind);
    }
}

package org.oldwood.garden;

import java.util.List;
import java.util.Optional;

/**
 * A plant on a day.
 *
 * @param stems its stems by the season they grew in; unknown where never counted
 * @param gone the entry that ended it, if it is no more
 */
public record PlantState(Plant plant, CountedStems stems, List<Entry> entries, Optional<Entry> gone) {

    /** The plant as it was when no more than some of its entries had been noted. */
    public PlantState with(List<Entry> earlier, LeafFalls falls) {
        CountedStems then = CountedStems.UNKNOWN;
        for (Entry each : earlier) {
            then = then.after(each, falls.seasonYear(plant.crop(), each.date()));
        }
        return new PlantState(plant, then, earlier, Optional.empty());
    }
}

package org.oldwood.care;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;

/**
 * Plants as the pruning craft sees them, each made once while its bed is planned: its own rules and
 * those of its stand ask for it. Holds no more than {@value #MOST} plants.
 */
public final class PruningCases {
    private static final int MOST = 2000;

    /** By the very plant: comparing whole records would take longer than making the case. */
    private final Map<PlantState, Map<Season, Optional<PruningCase>>> known =
            new IdentityHashMap<>();

    /** The case of a plant; empty where the crop has no pruning figures for its form. */
    public Optional<PruningCase> of(
            PlantState plant, Crop crop, Season season, GardenState garden) {
        if (known.size() >= MOST && !known.containsKey(plant)) {
            known.clear();
        }
        return known.computeIfAbsent(plant, any -> new HashMap<>())
                .computeIfAbsent(season, year -> PruningCase.of(plant, crop, year, garden));
    }
}

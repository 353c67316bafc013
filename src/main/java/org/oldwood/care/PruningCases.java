package org.oldwood.care;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.garden.ByPlant;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;

/**
 * Plants as the pruning craft sees them, each made once while its bed is planned: its own rules and
 * those of its stand ask for it.
 */
public final class PruningCases {
    private final ByPlant<Map<Season, Optional<PruningCase>>> known = new ByPlant<>();

    /** The case of a plant; empty where the crop has no pruning figures for its form. */
    public Optional<PruningCase> of(
            PlantState plant, Crop crop, Season season, GardenState garden) {
        return known.get(plant, any -> new HashMap<>())
                .computeIfAbsent(season, year -> PruningCase.of(plant, crop, year, garden));
    }
}

package org.oldwood.facts.pruning;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.garden.ByPlant;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/**
 * Plants as the pruning craft sees them, each made once while its bed is planned: its own rules and those of its stand
 * ask for it.
 */
public final class PruningCases {
    private final ByPlant<Map<Season, Optional<PruningCase>>> known = new ByPlant<>();
    private final Map<String, Optional<Pruning>> crops = new HashMap<>();

    private PruningCases() {}

    /** The case of a plant; empty where the crop has no pruning figures for its form. */
    public static Optional<PruningCase> of(PlantState plant, Crop crop, Season season, Situation.World world) {
        PruningCases cases = world.once(PruningCases.class, any -> new PruningCases());
        return cases.known.get(plant, any -> new HashMap<>(4)).computeIfAbsent(season,
                in -> cases.crops.computeIfAbsent(crop.id(), id -> Pruning.read(crop))
                        .flatMap(it -> PruningCase.of(plant, crop, it, in, world.state())));
    }
}

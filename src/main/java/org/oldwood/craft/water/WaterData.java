package org.oldwood.craft.water;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;

/** The documents that this craft works with; what it reads of a crop is read once. */
public record WaterData(Soils soils, Surfaces surfaces, WaterFigures figures, Crops crops,
        Map<String, Optional<CropWater>> waters) {

    /** Opens the documents. Problems go to theirs. */
    public static WaterData read(Crops crops, Documents documents) {
        return new WaterData(Soils.read(documents), Surfaces.read(documents), WaterFigures.read(documents), crops,
                new HashMap<>());
    }

    /** How a crop draws water; empty where nothing is known of it. */
    public Optional<CropWater> water(String crop) {
        return waters.computeIfAbsent(crop, id -> CropWater.of(crops.get(id), figures));
    }
}

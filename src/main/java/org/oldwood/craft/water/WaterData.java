package org.oldwood.craft.water;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;

/** The documents that this craft works with; what it reads of a crop is read once. */
public final class WaterData {
    private final Soils soils;
    private final Surfaces surfaces;
    private final WaterFigures figures;
    private final Crops crops;
    private final Map<String, Optional<CropWater>> waters = new HashMap<>();

    private WaterData(Soils soils, Surfaces surfaces, WaterFigures figures, Crops crops) {
        this.soils = soils;
        this.surfaces = surfaces;
        this.figures = figures;
        this.crops = crops;
    }

    /** Opens the documents. Problems go to theirs. */
    public static WaterData read(Crops crops, Documents documents) {
        return new WaterData(Soils.read(documents), Surfaces.read(documents), WaterFigures.read(documents), crops);
    }

    public Soils soils() { return soils; }

    public Surfaces surfaces() { return surfaces; }

    public WaterFigures figures() { return figures; }

    public Crop crop(String id) { return crops.get(id); }

    /** How a crop draws water; empty where nothing is known of it. */
    public Optional<CropWater> water(String crop) {
        Optional<CropWater> known = waters.get(crop);
        if (known == null) {
            known = CropWater.of(crops.get(crop), figures);
            waters.put(crop, known);
        }
        return known;
    }
}

package org.oldwood.water;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.oldwood.crop.Crops;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;

/**
 * What is known of a bed's ground and plants for its water, in one season.
 *
 * @param soil its texture; loam where none is recorded
 * @param water what the account needs
 * @param plantings what stands in it
 * @param groundM2 ground that the plants' roots hold and that is watered, at most the bed, m²
 * @param plants bushes, or metres of row where all are rows
 * @param each {@code bush} or {@code metre of row}
 * @param rootDepthM mean depth of the roots, m
 * @param remarks what was taken for granted, for people
 * @param sources source keys
 */
public record BedSoil(
        Soil soil,
        BedWater water,
        List<BedDemand.Planting> plantings,
        double groundM2,
        double plants,
        String each,
        double rootDepthM,
        List<String> remarks,
        List<String> sources) {

    public BedSoil {
        plantings = List.copyOf(plantings);
        remarks = List.copyOf(remarks);
        sources = List.copyOf(sources);
    }

    private static final String TEXTURE_NOT_KNOWN = "loam";

    /** The documents that a bed's ground is read with. */
    public record Data(Soils soils, Surfaces surfaces, WaterFigures figures, Crops crops) {}

    /** The bed in a season; it must have at least one plant. */
    public static BedSoil of(BedState state, Season season, Data data) {
        Bed bed = state.bed();
        List<String> remarks = new ArrayList<>();
        Soil soil = soil(bed, data.soils, remarks);
        List<BedDemand.Planting> plantings = new ArrayList<>();
        double depth = 0;
        double weights = 0;
        double ground = 0;
        double bushes = 0;
        double metres = 0;
        Set<String> sources = new LinkedHashSet<>(soil.sources());
        double first = data.figures.figure("firstRootDepth").is();
        for (PlantState plant : state.plants()) {
            CropWater water =
                    CropWater.of(data.crops.get(plant.plant().crop()), data.figures).orElse(null);
            if (water == null) {
                continue;
            }
            double area = ground(plant, data.figures);
            depth += area * water.rootDepthM(plant.plant().seasonsOld(season), first);
            weights += area;
            ground += area;
            bushes += plant.plant().bushes();
            metres += plant.plant().lengthM().orElse(0);
            sources.addAll(water.rootDepth().sources());
            sources.addAll(water.group().sources());
            plantings.add(
                    new BedDemand.Planting(
                            data.crops.get(plant.plant().crop()),
                            water,
                            area,
                            season.year() - plant.plant().seasonsOld(season) + 1));
        }
        double roots = rootDepth(bed, weights == 0 ? first : depth / weights, remarks);
        double total = soil.totalAvailableMm(roots, Math.min(0.9, bed.stonesPercent() / 100));
        double fraction =
                plantings.isEmpty() ? 0.5 : plantings.get(0).water().group().depletion().is();
        BedWater water =
                new BedWater(
                        total,
                        fraction,
                        bed.areaM2(),
                        roof(bed, data.surfaces, remarks),
                        Math.min(BedWater.MOST_COMPETING, bed.competing()));
        boolean rows = metres > 0 && metres >= bushes;
        return new BedSoil(
                soil,
                water,
                plantings,
                Math.min(bed.areaM2(), ground),
                Math.max(1e-6, rows ? metres : bushes),
                rows ? "metre of row" : "bush",
                roots,
                remarks,
                List.copyOf(sources));
    }

    private static double ground(PlantState plant, WaterFigures figures) {
        OptionalDouble length = plant.plant().lengthM();
        double radius = figures.figure("rootRadius").is();
        return length.isPresent()
                ? length.getAsDouble() * figures.figure("rowWidth").is()
                : plant.plant().bushes() * Math.PI * radius * radius;
    }

    private static Soil soil(Bed bed, Soils soils, List<String> remarks) {
        Soil loam = soils.find(TEXTURE_NOT_KNOWN).orElseThrow();
        if (bed.texture().isEmpty()) {
            remarks.add(
                    "the texture of the soil is not recorded, so loam is taken: add \"texture\" to"
                            + " the bed in garden.json");
            return loam;
        }
        Soil found = soils.find(bed.texture().get()).orElse(loam);
        if (!found.id().equals(bed.texture().get())) {
            remarks.add(
                    "no water figures are known for texture \""
                            + bed.texture().get()
                            + "\", so loam is taken; known are "
                            + String.join(", ", soils.ids()));
        }
        return found;
    }

    private static double rootDepth(Bed bed, double depthM, List<String> remarks) {
        if (bed.rootableDepthCm().isEmpty()
                || bed.rootableDepthCm().getAsDouble() / 100 >= depthM) {
            return depthM;
        }
        remarks.add("the roots can go no deeper than the bed's rootable depth");
        return bed.rootableDepthCm().getAsDouble() / 100;
    }

    private static RoofWater roof(Bed bed, Surfaces surfaces, List<String> remarks) {
        if (bed.roof().isEmpty()) {
            return RoofWater.NONE;
        }
        Bed.Roof roof = bed.roof().get();
        Surfaces.Surface surface = surfaces.find(roof.surface()).orElse(null);
        if (surface == null) {
            remarks.add(
                    "no run-off is known for a roof of \""
                            + roof.surface()
                            + "\", so it is left out; known are "
                            + String.join(", ", surfaces.ids()));
            return RoofWater.NONE;
        }
        return surfaces.roof(surface, roof.areaM2());
    }
}

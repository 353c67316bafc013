package org.oldwood.facts.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.craft.water.BedDemand;
import org.oldwood.craft.water.BedWater;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.Soil;
import org.oldwood.craft.water.WaterData;
import org.oldwood.craft.water.WaterFigures;
import org.oldwood.garden.BedState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/**
 * What is known of a bed's ground and plants for its water, in one season.
 *
 * @param water what the account needs
 * @param plantings what stands in it, plants of one crop and age together
 * @param groundM2 ground that the plants' roots hold and that is watered, at most the bed, m²
 * @param plants bushes, or metres of row where all are rows, or where there are both that ground
 * @param each what these are: {@code bush}, {@code metre of row}, {@code m² of rooted ground}
 * @param rootDepthM mean depth of the roots, m
 * @param remarks what was taken for granted, for people
 */
public record BedSoil(Soil soil, BedWater water, List<BedDemand.Planting> plantings, double groundM2, double plants,
        String each, double rootDepthM, List<String> remarks, List<String> sources) {

    /** The bed in a season; empty where no plant stands in it whose needs are known. */
    public static Optional<BedSoil> of(BedState state, Season season, WaterData data) {
        Standing standing = new Standing(season, data);
        state.plants().forEach(standing::add);
        return standing.plantings.isEmpty() ? Optional.empty()
                : Optional.of(standing.in(BedGround.of(state.bed(), data)));
    }

    /** Ground that a plant's roots hold, m². */
    public static double groundM2(PlantState plant, WaterFigures figures) {
        double radius = figures.figure("rootRadius").is();
        return plant.plant().lengthM().isPresent()
                ? plant.plant().lengthM().getAsDouble() * figures.figure("rowWidth").is()
                : plant.plant().bushes() * Math.PI * radius * radius;
    }

    /** A bed's plants added up. */
    private static final class Standing {
        private final Season season;
        private final WaterData data;
        private final double first;
        private final Map<String, BedDemand.Planting> plantings = new LinkedHashMap<>();
        private final Set<String> sources = new LinkedHashSet<>();
        private double ground;
        private double depth;
        private double metres;
        private int bushes;
        private int rows;
        private int plants;

        Standing(Season season, WaterData data) {
            this.season = season;
            this.data = data;
            this.first = data.figures().figure("firstRootDepth").is();
        }

        void add(PlantState plant) {
            CropWater water = data.water(plant.plant().crop()).orElse(null);
            if (water == null) { return; }
            double area = groundM2(plant, data.figures());
            int age = plant.plant().seasonsOld(season);
            ground += area;
            depth += area * water.rootDepthM(age, first);
            rows += plant.plant().lengthM().isPresent() ? 1 : 0;
            metres += plant.plant().lengthM().orElse(0);
            bushes += plant.plant().bushes();
            sources.addAll(water.rootDepth().sources());
            sources.addAll(water.group().sources());
            plants++;
            String crop = plant.plant().crop();
            plantings.merge(crop + " " + age,
                    new BedDemand.Planting(data.crops().get(crop), water, area, season.year() - age + 1),
                    BedDemand.Planting::with);
        }

        BedSoil in(BedGround bed) {
            double wanted = depth / ground;
            double rootDepthM = bed.rootDepthM(wanted);
            List<String> remarks = new ArrayList<>(bed.remarks());
            if (rootDepthM < wanted) { remarks.add("the roots can go no deeper than the bed's rootable depth"); }
            Set<String> keys = new LinkedHashSet<>(bed.soil().sources());
            keys.addAll(sources);
            List<BedDemand.Planting> all = List.copyOf(plantings.values());
            double fraction = all.get(0).water().group().depletion().is();
            double held = Math.min(bed.bed().areaM2(), ground);
            boolean allRows = rows == plants;
            boolean both = rows > 0 && !allRows;
            return new BedSoil(bed.soil(), bed.water(rootDepthM, fraction), all, held,
                    both ? held : allRows ? metres : bushes,
                    both ? "m² of rooted ground" : allRows ? "metre of row" : "bush", rootDepthM, List.copyOf(remarks),
                    List.copyOf(keys));
        }
    }
}

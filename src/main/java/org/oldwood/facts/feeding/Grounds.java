package org.oldwood.facts.feeding;

import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;

/**
 * How much of a bed belongs to some of its plants: the bed's area, shared by the room that each plant is given in print
 * (distance in the row times distance between rows; for a row its length times the distance between rows).
 */
final class Grounds {
    private Grounds() {}

    public static NeedCase.Ground of(BedState bed, List<PlantState> plants, Crops crops) {
        double all = room(bed.plants(), crops);
        double share = all > 0 ? room(plants, crops) / all : 1;
        int bushes = plants.stream().map(PlantState::plant).filter(plant -> plant.lengthM().isEmpty())
                .mapToInt(Plant::bushes).sum();
        double rowM = plants.stream().mapToDouble(each -> each.plant().lengthM().orElse(0)).reduce(0, Double::sum);
        return new NeedCase.Ground(bed.bed().areaM2() * share, bushes, rowM);
    }

    /** The ground of one plant, m²; of one that is gone, the room that it is given in print. */
    public static double ofOne(BedState bed, PlantState plant, Crops crops) {
        return plant.gone().isEmpty() ? of(bed, List.of(plant), crops).areaM2()
                : Math.min(bed.bed().areaM2(), room(plant.plant(), crops));
    }

    private static double room(List<PlantState> plants, Crops crops) {
        return plants.stream().mapToDouble(state -> room(state.plant(), crops)).sum();
    }

    private static double room(Plant plant, Crops crops) {
        Crop crop = crops.get(plant.crop());
        Optional<Crop.Spacing> spacing = crop.spacing(plant.form());
        return plant.lengthM().isPresent()
                ? plant.lengthM().getAsDouble() * spacing.map(each -> each.betweenRows().is()).orElse(1.0)
                : plant.bushes() * spacing.map(Crop.Spacing::areaM2).orElse(1.0);
    }
}

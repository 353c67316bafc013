package org.oldwood.facts.water;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.craft.water.BedWater;
import org.oldwood.craft.water.RoofWater;
import org.oldwood.craft.water.Soil;
import org.oldwood.craft.water.Soils;
import org.oldwood.craft.water.Surfaces;
import org.oldwood.craft.water.WaterData;
import org.oldwood.garden.Bed;

/**
 * What is known of a bed's ground, whatever stands in it.
 *
 * @param soil its texture; the one that {@code soils.json} names where none is recorded
 * @param roof the roof that sheds onto it
 * @param remarks what was taken for granted, for people
 */
public record BedGround(Bed bed, Soil soil, RoofWater roof, List<String> remarks) {

    /** A bed's ground. */
    public static BedGround of(Bed bed, WaterData data) {
        List<String> remarks = new ArrayList<>();
        Soil soil = soil(bed, data.soils(), remarks);
        return new BedGround(bed, soil, roof(bed, data.surfaces(), remarks), List.copyOf(remarks));
    }

    /** How deep roots go here, m: as deep as they would, or to the bottom of the ground or tub. */
    public double rootDepthM(double wantedM) {
        double bottomM = Math.min(bed.rootableDepthCm().orElse(Double.POSITIVE_INFINITY) / 100,
                bed.tubLitres().orElse(Double.POSITIVE_INFINITY) / 1000 / bed.areaM2());
        return Math.min(wantedM, bottomM);
    }

    /**
     * What an account needs.
     *
     * @param rootDepthM depth of the roots, m
     * @param fraction depletion fraction at a demand of 5 mm a day
     */
    public BedWater water(double rootDepthM, double fraction) {
        return new BedWater(soil.totalAvailableMm(rootDepthM, bed.stonesPercent() / 100), fraction, bed.areaM2(), roof,
                bed.competing(), bed.sheltered() ? 0 : 1);
    }

    private static Soil soil(Bed bed, Soils soils, List<String> remarks) {
        Soil otherwise = soils.notKnown(bed.tubLitres().isPresent());
        if (bed.texture().isEmpty()) {
            remarks.add(
                    "the texture of the %s is not recorded, so %s is taken: add \"texture\" to the bed in garden.json"
                            .formatted(bed.tubLitres().isPresent() ? "mix" : "soil", otherwise.name()));
            return otherwise;
        }
        Soil found = soils.find(bed.texture().get()).orElse(otherwise);
        if (!found.id().equals(bed.texture().get())) {
            remarks.add("no water figures are known for texture \"%s\", so %s is taken; known are %s"
                    .formatted(bed.texture().get(), otherwise.name(), String.join(", ", soils.ids())));
        }
        return found;
    }

    private static RoofWater roof(Bed bed, Surfaces surfaces, List<String> remarks) {
        if (bed.roof().isEmpty()) { return RoofWater.NONE; }
        Bed.Roof roof = bed.roof().get();
        Surfaces.Surface surface = surfaces.find(roof.surface()).orElse(null);
        if (surface == null) {
            remarks.add("no run-off is known for a roof of \"%s\", so it is left out; known are %s"
                    .formatted(roof.surface(), String.join(", ", surfaces.ids())));
            return RoofWater.NONE;
        }
        return surfaces.roof(surface, roof.areaM2());
    }
}

package org.oldwood.craft.cuttings.survival;

import org.oldwood.craft.cuttings.PlantYield;

/**
 * A crop that is not known for sure: so many plants, each with the same uncertain yield (a garden's soil and hand are
 * shared by all its bushes).
 */
public record Kilograms(Spread plants, PlantYield perPlant) {
    private static final int HALVINGS = 40;

    /** The expected crop at the default yield, kg. */
    public double mean() {
        return plants.mean() * perPlant.kg().is();
    }

    /** The chance that {@code plants} plants bear {@code kg} or more. */
    public static double chance(int plants, PlantYield perPlant, double kg) {
        if (kg <= 0) { return 1; }
        return plants == 0 ? 0 : 1 - perPlant.chanceBelow(kg / plants);
    }

    /** The chance of {@code kg} or more. */
    double atLeast(double kg) {
        return Math.min(1, plants.mean(number -> chance(number, perPlant, kg)));
    }

    /** The crop, kg, that is not exceeded with a chance of {@code share}. */
    public double quantile(double share) {
        if (plants.chance(0) >= share) { return 0; }
        double low = 0;
        double high = plants.most() * perPlant.kg().high();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (1 - atLeast(middle) >= share) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}

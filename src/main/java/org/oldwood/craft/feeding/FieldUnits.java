package org.oldwood.craft.feeding;

/**
 * Rates in print turned into g/m² and grams. The factors follow from the definitions of the pound (0.45359237 kg), the
 * foot (0.3048 m) and the acre (43560 square feet).
 */
public final class FieldUnits {
    public static final double GRAMS_PER_POUND = 453.59237;
    public static final double METRES_PER_FOOT = 0.3048;
    public static final double M2_PER_SQUARE_FOOT = METRES_PER_FOOT * METRES_PER_FOOT;
    public static final double M2_PER_ACRE = 43560 * M2_PER_SQUARE_FOOT;

    private FieldUnits() {}

    public static double gPerM2FromLbPerAcre(double lbPerAcre) { return lbPerAcre * GRAMS_PER_POUND / M2_PER_ACRE; }
}

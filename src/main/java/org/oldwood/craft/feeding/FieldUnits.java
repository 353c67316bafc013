package org.oldwood.craft.feeding;

/**
 * Rates in print turned into g/m² and grams. The factors follow from the definitions of the pound (0.45359237 kg), the
 * foot (0.3048 m) and the acre (43560 square feet).
 */
public final class FieldUnits {
    public static final double GRAMS_PER_POUND = 453.59237;
    public static final double GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16;
    public static final double METRES_PER_FOOT = 0.3048;
    public static final double M2_PER_SQUARE_FOOT = METRES_PER_FOOT * METRES_PER_FOOT;
    public static final double M2_PER_SQUARE_YARD = 9 * M2_PER_SQUARE_FOOT;
    public static final double M2_PER_ACRE = 43560 * M2_PER_SQUARE_FOOT;
    public static final double M3_PER_CUBIC_YARD = 27 * M2_PER_SQUARE_FOOT * METRES_PER_FOOT;

    private static final double M2_PER_HECTARE = 10_000;
    private static final double GRAMS_PER_KG = 1000;
    private static final double GRAMS_PER_TONNE = 1_000_000;

    private FieldUnits() {}

    public static double gPerM2FromKgPerHectare(double kgPerHectare) {
        return kgPerHectare * GRAMS_PER_KG / M2_PER_HECTARE;
    }

    public static double gPerM2FromTonnesPerHectare(double tonnesPerHectare) {
        return tonnesPerHectare * GRAMS_PER_TONNE / M2_PER_HECTARE;
    }

    public static double tonnesPerHectareFromGPerM2(double gPerM2) {
        return gPerM2 * M2_PER_HECTARE / GRAMS_PER_TONNE;
    }

    public static double gPerM2FromLbPerAcre(double lbPerAcre) {
        return lbPerAcre * GRAMS_PER_POUND / M2_PER_ACRE;
    }

    public static double gPerM2FromLbPer1000SqFt(double lb) {
        return lb * GRAMS_PER_POUND / (1000 * M2_PER_SQUARE_FOOT);
    }

    public static double gPerM2FromLbPer100SqFt(double lb) {
        return lb * GRAMS_PER_POUND / (100 * M2_PER_SQUARE_FOOT);
    }

    public static double gPerM2FromOzPerSqYd(double ounces) {
        return ounces * GRAMS_PER_OUNCE / M2_PER_SQUARE_YARD;
    }
}

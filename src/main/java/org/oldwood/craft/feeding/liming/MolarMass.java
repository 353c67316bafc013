package org.oldwood.craft.feeding.liming;

/**
 * Masses of the compounds on labels and in tables, g/mol, from the standard atomic weights (IUPAC 2021, abridged).
 * Physical constants; the conversions that follow from them are checked against printed ones in
 * {@code reference/conversions.csv}.
 */
public final class MolarMass {
    private static final double H = 1.008;
    private static final double C = 12.011;
    private static final double O = 15.999;
    private static final double MG = 24.305;
    private static final double CA = 40.078;

    public static final double CACO3 = CA + C + 3 * O;
    public static final double MGCO3 = MG + C + 3 * O;
    public static final double CAO = CA + O;
    public static final double CA_OH_2 = CA + 2 * (O + H);

    /** CaMg(CO3)2, pure dolomite: one mole neutralises as two of calcium carbonate. */
    public static final double DOLOMITE = CACO3 + MGCO3;

    private MolarMass() {}

    /** Grams of MgO that hold {@code mg} grams of magnesium. */
    public static double mgoFromMg(double mg) {
        return mg * (MG + O) / MG;
    }
}

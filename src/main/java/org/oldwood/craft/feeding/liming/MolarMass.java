package org.oldwood.craft.feeding.liming;

/**
 * Masses of the compounds on labels and in tables, g/mol, from the standard atomic weights (IUPAC 2021, abridged).
 * Physical constants; the conversions that follow from them are checked against printed ones in
 * {@code reference/conversions.csv}.
 */
public final class MolarMass {
    private static final double H = 1.008;
    private static final double C = 12.011;
    private static final double N = 14.007;
    private static final double O = 15.999;
    private static final double MG = 24.305;
    private static final double P = 30.974;
    private static final double S = 32.06;
    private static final double K = 39.098;
    private static final double CA = 40.078;

    public static final double CACO3 = CA + C + 3 * O;
    public static final double MGCO3 = MG + C + 3 * O;
    public static final double CAO = CA + O;
    public static final double CA_OH_2 = CA + 2 * (O + H);

    /** CaMg(CO3)2, pure dolomite: one mole neutralises as two of calcium carbonate. */
    public static final double DOLOMITE = CACO3 + MGCO3;

    private static final double AMMONIUM_SULPHATE = 2 * (N + 4 * H) + S + 4 * O;

    private MolarMass() {}

    /** Grams of P2O5 that hold {@code p} grams of phosphorus. */
    public static double p2o5FromP(double p) {
        return p * (2 * P + 5 * O) / (2 * P);
    }

    /** Grams of phosphorus in {@code p2o5} grams of P2O5. */
    public static double pFromP2o5(double p2o5) {
        return p2o5 * (2 * P) / (2 * P + 5 * O);
    }

    /** Grams of K2O that hold {@code k} grams of potassium. */
    public static double k2oFromK(double k) {
        return k * (2 * K + O) / (2 * K);
    }

    /** Grams of potassium in {@code k2o} grams of K2O. */
    public static double kFromK2o(double k2o) {
        return k2o * (2 * K) / (2 * K + O);
    }

    /** Grams of MgO that hold {@code mg} grams of magnesium. */
    public static double mgoFromMg(double mg) {
        return mg * (MG + O) / MG;
    }

    /** Grams of magnesium in {@code mgo} grams of MgO. */
    public static double mgFromMgo(double mgo) {
        return mgo * MG / (MG + O);
    }

    /** Grams of SO3 that hold {@code s} grams of sulphur. */
    public static double so3FromS(double s) {
        return s * (S + 3 * O) / S;
    }

    /** Grams of nitrogen in {@code grams} of pure ammonium sulphate, (NH4)2SO4. */
    public static double nInAmmoniumSulphate(double grams) {
        return grams * 2 * N / AMMONIUM_SULPHATE;
    }

    /** Grams of pure calcium carbonate whose acid-neutralising power equals one gram of sulphur's acid. */
    public static double caco3ForSulphur(double s) {
        return s * CACO3 / S;
    }
}

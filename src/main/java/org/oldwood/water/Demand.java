package org.oldwood.water;

/**
 * What a bed draws, as a coefficient on the reference evapotranspiration, from how much of it the
 * plants cover, how much sun it gets and what lies on the soil.
 *
 * <p>The full crop's coefficient is FAO-56's. Between it and bare soil we weigh by cover, in the
 * manner of FAO-56 equation 98; what evaporates from the soil is the difference between the single
 * and the basal coefficient (tables 12 and 17) where plants cover it and the whole bare-soil
 * coefficient where they do not. Mulch and shade factors are shares from 0 to 1; the weighing is
 * ours and no published run checks it.
 *
 * @param cover share of the bed that the plants cover, 0 to 1
 * @param mulchFactor share of the soil's evaporation that goes on under the mulch; 1 without one
 * @param shadeFactor share of the demand that the bed's light leaves; 1 in full sun
 */
public record Demand(double cover, double mulchFactor, double shadeFactor) {
    public Demand {
        if (!(within(cover) && within(mulchFactor) && within(shadeFactor))) {
            throw new IllegalArgumentException(
                    "cover, mulch and shade factors must be from 0 to 1 but are "
                            + cover
                            + ", "
                            + mulchFactor
                            + ", "
                            + shadeFactor);
        }
    }

    /**
     * The bed's coefficient.
     *
     * @param single the full crop's single coefficient that day
     * @param basal its basal coefficient that day, transpiration alone
     * @param bareSoil the coefficient of bare soil
     */
    public double coefficient(double single, double basal, double bareSoil) {
        double planted = Math.min(basal, single);
        double transpired = cover * planted;
        double evaporated = cover * (single - planted) + (1 - cover) * bareSoil;
        return shadeFactor * (transpired + mulchFactor * evaporated);
    }

    private static boolean within(double share) {
        return share >= 0 && share <= 1;
    }
}

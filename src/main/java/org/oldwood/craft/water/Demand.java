package org.oldwood.craft.water;

/**
 * What a bed draws, as a coefficient on the reference evapotranspiration, from how much of it the plants cover and what
 * lies on the soil.
 *
 * <p>The full crop's coefficient is FAO-56's. Between it and bare soil we weigh by cover, in the manner of FAO-56
 * equation 98; what evaporates from the soil is the difference between the single and the basal coefficient (tables 12
 * and 17) where plants cover it and the whole bare-soil coefficient where they do not. The weighing is ours and no
 * published run checks it.
 */
public final class Demand {
    private Demand() {}

    /**
     * The bed's coefficient in full sun.
     *
     * @param cover share of the bed that the plants cover, 0 to 1
     * @param mulchFactor share of the soil's evaporation that goes on under the mulch, 0 to 1
     * @param single the full crop's single coefficient that day
     * @param basal its basal coefficient that day, transpiration alone
     * @param bareSoil the coefficient of bare soil
     */
    public static double coefficient(double cover, double mulchFactor, double single, double basal, double bareSoil) {
        double transpired = Math.min(basal, single);
        double evaporated = cover * (single - transpired) + (1 - cover) * bareSoil;
        return cover * transpired + mulchFactor * evaporated;
    }

    /**
     * Share of the demand that a bed's light leaves.
     *
     * @param shade share of the day's sun that the bed misses, 0 to 1
     * @param cut share of the demand that goes with all of the sun
     */
    public static double shadeFactor(double shade, double cut) {
        return 1 - cut * shade;
    }
}

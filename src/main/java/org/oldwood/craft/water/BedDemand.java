package org.oldwood.craft.water;

import java.util.List;
import org.oldwood.crop.Crop;

/**
 * A bed's coefficient on the reference evapotranspiration, day by day, from how much of it the plants cover and what
 * lies on the soil.
 *
 * <p>The full crop's coefficient is FAO-56's. Between it and bare soil we weigh by cover, in the manner of its equation
 * 98; what evaporates from the soil is the difference between the single and the basal coefficient (tables 12 and 17)
 * where plants cover it and the whole bare-soil coefficient where they do not. The weighing is ours and no published
 * run checks it.
 */
public final class BedDemand {
    private BedDemand() {}

    /**
     * Plants of a kind and age in the bed.
     *
     * @param weight its part of the bed; only the ratio to the others counts; more than 0
     * @param firstSeason the year that names its first season in the bed
     */
    public record Planting(Crop crop, CropWater water, double weight, int firstSeason) {
        /** Together with more plants of the same kind and age. */
        public Planting with(Planting more) {
            return new Planting(crop, water, weight + more.weight, firstSeason);
        }
    }

    /**
     * Mulch that was laid.
     *
     * @param day days after the first day of the weather; may lie before it
     */
    public record Laid(int day, double depthCm) {}

    /**
     * The coefficient on each day. A bed without plants is bare soil of the group of the crops.
     *
     * @param curves the crops' coefficients
     * @param plantings what stands in the bed, at least one
     * @param laid when it was laid, oldest first
     * @param shadeFactor share of the demand that the bed's light leaves
     */
    public static double[] series(CropCurves curves, List<Planting> plantings, MulchCover mulch, List<Laid> laid,
            double shadeFactor) {
        double[] sum = new double[curves.weather().days()];
        double[] open = open(sum.length, mulch, laid);
        double weights = plantings.stream().mapToDouble(Planting::weight).sum();
        plantings.forEach(one -> add(sum, curves, one, open, shadeFactor * one.weight() / weights));
        return sum;
    }

    private static void add(double[] sum, CropCurves curves, Planting one, double[] open, double share) {
        CropCurves.Curve curve = curves.of(one.crop(), one.water());
        int season = Integer.MIN_VALUE;
        double cover = 1;
        for (int day = 0; day < sum.length; day++) {
            if (curves.seasonYear(day) != season) {
                season = curves.seasonYear(day);
                cover = season < one.firstSeason() ? 0 : one.water().cover(season - one.firstSeason() + 1);
            }
            sum[day] += share * coefficient(cover, open[day], curve.single[day], curve.basal[day], curve.bare);
        }
    }

    private static double[] open(int days, MulchCover mulch, List<Laid> laid) {
        double[] open = new double[days];
        int next = 0;
        for (int day = 0; day < days; day++) {
            while (next < laid.size() && laid.get(next).day() <= day) {
                next++;
            }
            Laid last = next == 0 ? null : laid.get(next - 1);
            open[day] = last == null ? 1 : mulch.factor(last.depthCm(), day - last.day());
        }
        return open;
    }

    /**
     * The bed's coefficient in full sun.
     *
     * @param cover share of the bed that the plants cover, 0 to 1
     * @param mulchFactor share of the soil's evaporation that goes on under the mulch, 0 to 1
     * @param single the full crop's single coefficient that day
     * @param basal its basal coefficient that day, transpiration alone
     * @param bareSoil the coefficient of bare soil
     */
    static double coefficient(double cover, double mulchFactor, double single, double basal, double bareSoil) {
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
    public static double shadeFactor(double shade, double cut) { return 1 - cut * shade; }
}

package org.oldwood.craft.water;

/**
 * What a mulch leaves of the soil's evaporation.
 *
 * @param cut share of the evaporation that full cover stops, 0 to 1
 * @param fullDepthCm depth from which it covers fully, cm
 * @param lastsDays days after which it counts for nothing; until then it wanes evenly
 */
public record MulchCover(double cut, double fullDepthCm, double lastsDays) {
    /** The mulch by the figures of {@code water.json}. */
    public static MulchCover of(WaterFigures figures) {
        return new MulchCover(figures.figure("mulchCut").is(), figures.figure("mulchDepth").is(),
                figures.figure("mulchLasts").is());
    }

    /**
     * Share of the evaporation that goes on.
     *
     * @param depthCm depth when it was laid, cm
     * @param daysSince days since then; below 0 before it was laid
     */
    public double factor(double depthCm, long daysSince) {
        if (daysSince < 0 || daysSince >= lastsDays) { return 1; }
        double cover = Math.min(1, depthCm / fullDepthCm) * (1 - daysSince / lastsDays);
        return 1 - cut * cover;
    }
}

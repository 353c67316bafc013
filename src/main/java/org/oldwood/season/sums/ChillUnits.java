package org.oldwood.season.sums;

/**
 * Weighs each hour by a table of steps, as the Utah model and its relatives do. A step reaches from above the end of
 * the one before to its own end, which is included; the last has no end.
 */
public final class ChillUnits implements HourlySum {
    private final double[] upToC;
    private final double[] weights;

    /**
     * @param upToC the ends of all steps but the last, °C, rising
     * @param weights one for each step, one more than ends
     */
    public ChillUnits(double[] upToC, double[] weights) {
        if (weights.length != upToC.length + 1) {
            throw new IllegalArgumentException(
                    weights.length + " weights for " + upToC.length + " ends; must be one more");
        }
        this.upToC = upToC.clone();
        this.weights = weights.clone();
    }

    @Override
    public double hour(double celsius) {
        int step = 0;
        while (step < upToC.length && celsius > upToC[step]) {
            step++;
        }
        return weights[step];
    }
}

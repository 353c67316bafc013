package org.oldwood.craft.water;

/**
 * How much to water: what refills the root zone and never more than it takes.
 *
 * @param mm depth of water
 * @param litres the same on the ground watered
 * @param litresEach per bush, or per metre of row
 */
public record Dose(double mm, double litres, double litresEach) {
    /**
     * Refills to field capacity.
     *
     * @param depletionMm what is missing, 0 or more
     * @param areaM2 ground watered, m²
     * @param plants bushes, or metres of row; more than 0
     */
    public static Dose toRefill(double depletionMm, double areaM2, double plants) {
        double litres = RootZone.litres(Math.max(0, depletionMm), areaM2);
        return new Dose(Math.max(0, depletionMm), litres, litres / plants);
    }

    /** Minutes that a tap needs. */
    public double minutes(double litresPerMinute) { return litres / litresPerMinute; }

    /** Hours over which to spread it so that the soil takes it in, at its intake in mm an hour. */
    public double hours(double intakeMmPerHour) {
        return mm / intakeMmPerHour;
    }
}

package org.oldwood.season.sums;

/**
 * Counts hours between two temperatures.
 *
 * @param fromC hours at this temperature count, °C; minus infinity for no lower end
 * @param toC the upper end, °C
 * @param toCounts whether an hour at exactly {@code toC} counts
 */
public record ChillHours(double fromC, double toC, boolean toCounts) implements HourlySum {
    @Override
    public double hour(double celsius) {
        boolean below = toCounts ? celsius <= toC : celsius < toC;
        return below && celsius >= fromC ? 1 : 0;
    }
}

package org.oldwood.season.sums;

/**
 * Chill portions by the Dynamic model: an intermediate is made and unmade with warmth, and once it reaches 1 a share of
 * it is fixed for good (Fishman, Erez and Couvillon 1987; Erez and others 1990). Constants as printed by Fishman and as
 * coded in the R package chillR; kelvins are °C + 273.
 *
 * <p>Two forms are in use. {@link #sameHour()} takes each hour's own temperature and is ours by default.
 * {@link #hourBefore()} reaches hour h with the temperature of hour h - 1; a much used function has it, and its totals
 * differ in the fourth decimal.
 *
 * <p>The first hour sets the clock and gains nothing. An accumulator must run on from the record's beginning: one
 * started afresh at the window loses up to about one portion.
 */
public final class DynamicModel implements HourlySum {
    private static final double E0 = 4153.5;
    private static final double E1 = 12888.8;
    private static final double A0 = 139500;
    private static final double A1 = 2.567e18;
    private static final double SLOPE = 1.6;
    private static final double TF = 277;
    private static final double KELVIN = 273;

    private final boolean hourBefore;
    private boolean started;
    private double made;
    private double kelvinBefore;
    private double before;

    private DynamicModel(boolean hourBefore) { this.hourBefore = hourBefore; }

    /** Each hour by its own temperature. */
    public static DynamicModel sameHour() { return new DynamicModel(false); }

    public static DynamicModel hourBefore() { return new DynamicModel(true); }

    /** The portion fixed in this hour, 0 or more. */
    @Override
    public boolean remembers() { return true; }

    @Override
    public double hour(double celsius) {
        double used = hourBefore ? before : celsius;
        before = celsius;
        if (!started) {
            started = true;
            kelvinBefore = celsius + KELVIN;
            return 0;
        }
        double kelvin = used + KELVIN;
        double left = made < 1 ? made : made * (1 - share(kelvinBefore));
        double most = A0 / A1 * Math.exp((E1 - E0) / kelvin);
        double rate = A1 * Math.exp(-E1 / kelvin);
        made = most - (most - left) * Math.exp(-rate);
        kelvinBefore = kelvin;
        return made < 1 ? 0 : made * share(kelvin);
    }

    private static double share(double kelvin) {
        double grown = Math.exp(SLOPE * TF * (kelvin - TF) / kelvin);
        return grown / (1 + grown);
    }
}

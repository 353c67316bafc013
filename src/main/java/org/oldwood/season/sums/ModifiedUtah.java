package org.oldwood.season.sums;

/**
 * The modified Utah model: a sine instead of steps (Linvill 1990, as coded in the R package dormancyR): sin(2 pi T/28)
 * above 0 °C to 21 °C, -1 above, 0 at and below 0 °C.
 */
public final class ModifiedUtah implements HourlySum {
    private static final double PERIOD_C = 28;
    private static final double WARM_C = 21;

    @Override
    public double hour(double celsius) {
        if (celsius <= 0) { return 0; }
        return celsius > WARM_C ? -1 : Math.sin(2 * Math.PI * celsius / PERIOD_C);
    }
}

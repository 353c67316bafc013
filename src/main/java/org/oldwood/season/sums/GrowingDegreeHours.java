package org.oldwood.season.sums;

/**
 * Growing degree hours: two cosines rising from a base to an optimum and falling to a critical temperature (Anderson,
 * Richardson and Kesner 1986, with base 4, optimum 25, critical 36 °C and stress 1, as coded in the R package chillR).
 * Degree-hours, °C·h.
 */
public final class GrowingDegreeHours implements HourlySum {
    private static final double BASE_C = 4;
    private static final double BEST_C = 25;
    private static final double CRITICAL_C = 36;

    /** What an hour at this temperature gives, 0 to 21. */
    @Override
    public double hour(double celsius) {
        double span = BEST_C - BASE_C;
        if (celsius < BASE_C || celsius > CRITICAL_C) { return 0; }
        if (celsius <= BEST_C) { return span / 2 * (1 + Math.cos(Math.PI + Math.PI * (celsius - BASE_C) / span)); }
        double above = (celsius - BEST_C) / (CRITICAL_C - BEST_C);
        return span * (1 + Math.cos(Math.PI / 2 + Math.PI / 2 * above));
    }
}

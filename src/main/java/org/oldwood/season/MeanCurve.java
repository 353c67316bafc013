package org.oldwood.season;

import java.util.stream.IntStream;

/**
 * A value for every day of a year from twelve monthly means: straight lines between the middles of the months, their
 * knots moved until each month's days average to the month's mean again. Plain interpolation would round off the summer
 * and the winter. Method: our own.
 */
public final class MeanCurve {
    private static final int PASSES = 60;
    private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final double[] days;

    private MeanCurve(double[] days) { this.days = days; }

    static MeanCurve through(Months months) {
        double[] monthly = months.toArray();
        double[] knots = months.toArray();
        double[] days = new double[365];
        lines(knots, days);
        for (int pass = 0; pass < PASSES; pass++) {
            int first = 0;
            for (int month = 0; month < 12; month++) {
                knots[month] += monthly[month] - mean(days, first, LENGTHS[month]);
                first += LENGTHS[month];
            }
            lines(knots, days);
        }
        return new MeanCurve(days);
    }

    /** The value of a day of a year of 365, 0 for 1 January. */
    public double on(int day) { return days[day]; }

    private static double mean(double[] days, int first, int length) {
        return IntStream.range(first, first + length).mapToDouble(day -> days[day]).reduce(0, Double::sum) / length;
    }

    private static void lines(double[] knots, double[] days) {
        double middle = LENGTHS[0] / 2.0;
        for (int month = 0; month < 12; month++) {
            int next = (month + 1) % 12;
            double gap = (LENGTHS[month] + LENGTHS[next]) / 2.0;
            double slope = (knots[next] - knots[month]) / gap;
            double knot = knots[month];
            int from = (int) Math.ceil(middle - 0.5);
            for (int day = from; day + 0.5 < middle + gap; day++) {
                days[day < 365 ? day : day - 365] = knot + slope * (day + 0.5 - middle);
            }
            middle += gap;
        }
    }
}

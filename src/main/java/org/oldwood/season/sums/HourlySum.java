package org.oldwood.season.sums;

import org.oldwood.season.Bell;

/**
 * Adds something up hour by hour: chill or heat. It may remember the hours before, so it is fed every hour from the
 * beginning of the record, and a window is summed from what {@link #hour} gives inside it. Never restart it at a
 * window's first day.
 */
@FunctionalInterface
public interface HourlySum {
    /** What this hour adds; may be negative in some models. */
    double hour(double celsius);

    /** Whether an hour's share hangs on the hours before. */
    default boolean remembers() { return false; }

    /**
     * What the hours of one day add. One that was not measured counts as the mean of such days, whose temperatures lie
     * about the normal one's; a sum that remembers takes the normal day.
     *
     * @param spreadC standard deviation about the normal day, °C; 0 for a measured day
     */
    default double day(double[] hours, double spreadC) {
        return Bell.mean(remembers() ? 0 : spreadC, warmer -> {
            double day = 0;
            for (double hour : hours) {
                day += hour(hour + warmer);
            }
            return day;
        });
    }
}

package org.oldwood.season.sums;

/**
 * Adds something up hour by hour: chill or heat. It may remember the hours before, so it is fed every hour from the
 * beginning of the record, and a window is summed from what {@link #hour} gives inside it. Never restart it at a
 * window's first day.
 */
@FunctionalInterface
public interface HourlySum {
    /** What this hour adds; may be negative in some models. */
    double hour(double celsius);
}

package org.oldwood.season;

import org.jspecify.annotations.Nullable;

/**
 * The length of each day of a year of 365 at one latitude, worked out once for all seasons and crops of a garden. Days
 * count from 0 for 1 January.
 */
final class SunYear {
    private static final int DAYS = 365;

    private final double latitude;
    private double @Nullable [] halfDays;
    private double @Nullable [] lengths;

    /** @param latitude degrees, south negative */
    SunYear(double latitude) { this.latitude = latitude; }

    /** Half the time from sunrise to sunset as seen, h, as {@link SunTimes} has it. */
    double halfDay(int day) {
        double[] known = halfDays;
        if (known == null) {
            known = SunTimes.halfDays(latitude);
            halfDays = known;
        }
        return known[day];
    }

    /** The day's length, h, as {@link DayLength} has it. */
    double lengthH(int day) {
        double[] known = lengths;
        if (known == null) {
            known = new double[DAYS];
            for (int i = 0; i < DAYS; i++) {
                known[i] = DayLength.hours(latitude, i + 1);
            }
            lengths = known;
        }
        return known[day];
    }
}

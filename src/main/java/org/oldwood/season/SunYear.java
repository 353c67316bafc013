package org.oldwood.season;

import java.util.stream.IntStream;

/**
 * The length of each day of a leap year at one latitude, worked out once for all seasons and crops of a garden. Days
 * count from 0 for 1 January.
 */
final class SunYear {
    private final double[] halfDays;
    private final double[] lengths;

    /** @param latitude degrees, south negative */
    SunYear(double latitude) {
        halfDays = SunTimes.halfDays(latitude);
        lengths = IntStream.rangeClosed(1, 366).mapToDouble(day -> DayLength.hours(latitude, day)).toArray();
    }

    /** Half the time from sunrise to sunset as seen, h, as {@link SunTimes} has it. */
    double halfDay(int day) {
        return halfDays[day];
    }

    /** The day's length, h, as {@link DayLength} has it. */
    double lengthH(int day) { return lengths[day]; }
}

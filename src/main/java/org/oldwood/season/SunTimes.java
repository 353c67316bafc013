package org.oldwood.season;

import java.util.stream.IntStream;

/**
 * Sunrise and sunset in solar time, with refraction and the disc's radius: Spencer 1971 for the declination, the sun's
 * upper edge 0.8333 degrees below the horizon (Almorox, Hontoria and Benito 2005). Used for the hourly temperature
 * curve, which was published with it.
 *
 * <p>One printed program has sin G where Spencer's series has sin 2G in the term 0.000907; the series is used here.
 * Latitude in degrees, south negative.
 */
public final class SunTimes {
    private static final double HORIZON_DEGREES = -0.8333;
    private static final double HOURS_PER_RADIAN = 12 / Math.PI;

    private SunTimes() {}

    /** The sun's declination, rad. */
    public static double declinationRad(int dayOfYear) {
        double g = 2 * Math.PI / 365 * (dayOfYear - 1);
        return 0.006918 - 0.399912 * Math.cos(g) + 0.070257 * Math.sin(g) - 0.006758 * Math.cos(2 * g)
                + 0.000907 * Math.sin(2 * g) - 0.002697 * Math.cos(3 * g) + 0.00148 * Math.sin(3 * g);
    }

    /**
     * Half the day's length, h, from 0 (polar night) to 12 (polar day). The sun rises that long before noon and sets
     * that long after it.
     */
    public static double halfDay(double latitude, int dayOfYear) {
        double lat = Math.toRadians(latitude);
        double declination = declinationRad(dayOfYear);
        double above = Math.sin(Math.toRadians(HORIZON_DEGREES)) - Math.sin(lat) * Math.sin(declination);
        double cosine = above / (Math.cos(lat) * Math.cos(declination));
        return Math.acos(Math.max(-1, Math.min(1, cosine))) * HOURS_PER_RADIAN;
    }

    /** The same for all 366 days of a leap year; the first of January is the first. */
    public static double[] halfDays(double latitude) {
        return IntStream.rangeClosed(1, 366).mapToDouble(day -> halfDay(latitude, day)).toArray();
    }
}

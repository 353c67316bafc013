package org.oldwood.water;

/**
 * What the sun sends to the top of the air on a day of the year, MJ/m² a day, and the hours of
 * daylight. Latitude in degrees, south negative; day of the year from 1 to 366.
 *
 * <p>Source: FAO-56, equations 21 to 25 and 34. Checked against {@code
 * reference/sky-radiation.csv}. The sun's centre and a flat horizon are meant: no refraction, no
 * hills. Polar night gives 0 hours, polar day 24.
 */
public final class SkyRadiation {
    /** Solar constant of equation 21, MJ/m² a minute. */
    private static final double SOLAR_CONSTANT = 0.0820;

    private SkyRadiation() {}

    /** Inverse relative distance between earth and sun (equation 23). */
    public static double inverseDistance(int dayOfYear) {
        return 1 + 0.033 * Math.cos(yearAngle(dayOfYear));
    }

    /** Declination of the sun, radians (equation 24). */
    public static double declination(int dayOfYear) {
        return 0.409 * Math.sin(yearAngle(dayOfYear) - 1.39);
    }

    /** Hour angle of sunset, radians from 0 to pi (equation 25). */
    public static double sunsetAngle(double latitude, int dayOfYear) {
        double cosine = -Math.tan(Math.toRadians(latitude)) * Math.tan(declination(dayOfYear));
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Hours of daylight (equation 34). */
    public static double daylightHours(double latitude, int dayOfYear) {
        return 24 / Math.PI * sunsetAngle(latitude, dayOfYear);
    }

    /** Radiation at the top of the air, MJ/m² a day (equation 21). */
    public static double extraterrestrial(double latitude, int dayOfYear) {
        double phi = Math.toRadians(latitude);
        double delta = declination(dayOfYear);
        double sunset = sunsetAngle(latitude, dayOfYear);
        double path =
                sunset * Math.sin(phi) * Math.sin(delta)
                        + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset);
        double daily = 24 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance(dayOfYear) * path;
        return Math.max(0, daily);
    }

    private static double yearAngle(int dayOfYear) {
        return 2 * Math.PI * dayOfYear / 365;
    }
}

package org.oldwood.season;

/**
 * Day length by FAO Irrigation and Drainage Paper 56, equations 24, 25 and 34: the sun's centre on a flat horizon,
 * without refraction; 0.2 to 0.3 h shorter than from sunrise to sunset as seen.
 *
 * <p>Latitude is in degrees, south negative; the day of the year counts from 1. Beyond the polar circles the answer is
 * 0 h or 24 h while the sun does not rise or set. Checked against {@code reference/day-length.csv}.
 */
public final class DayLength {
    private DayLength() {}

    /** The sun's declination, rad (equation 24). */
    public static double declinationRad(int dayOfYear) {
        return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
    }

    /** The hour angle of sunset, rad, 0 to pi (equation 25). */
    public static double sunsetAngleRad(double latitude, int dayOfYear) {
        double cosine = -Math.tan(Math.toRadians(latitude)) * Math.tan(declinationRad(dayOfYear));
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Hours from sunrise to sunset, 0 to 24 (equation 34). */
    public static double hours(double latitude, int dayOfYear) {
        return 24 / Math.PI * sunsetAngleRad(latitude, dayOfYear);
    }

    /** The earth's nearness to the sun, inverse relative distance (equation 23). */
    public static double nearness(int dayOfYear) {
        return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
    }

    /** Radiation above the air, MJ/m² a day (equation 21, solar constant 0.0820 MJ/m² a minute). */
    public static double radiationMj(double latitude, int dayOfYear) {
        double latitudeRad = Math.toRadians(latitude);
        double declination = declinationRad(dayOfYear);
        double sunset = sunsetAngleRad(latitude, dayOfYear);
        double shape = sunset * Math.sin(latitudeRad) * Math.sin(declination)
                + Math.cos(latitudeRad) * Math.cos(declination) * Math.sin(sunset);
        return 24 * 60 / Math.PI * 0.0820 * nearness(dayOfYear) * shape;
    }
}

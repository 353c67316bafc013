package org.oldwood.season;

/** The half of the earth a garden lies in. The equator counts as north. */
public enum Hemisphere {
    NORTH,
    SOUTH;

    /** By signed latitude in degrees, south negative. */
    public static Hemisphere of(double latitude) {
        return latitude < 0 ? SOUTH : NORTH;
    }
}

package org.oldwood.season.place;

/**
 * A place on earth.
 *
 * @param latitude degrees, south negative
 * @param longitude degrees, west negative
 * @param heightM above the sea, m
 */
public record Spot(double latitude, double longitude, double heightM) {
    String degrees() { return "%s,%s".formatted(latitude, longitude); }
}

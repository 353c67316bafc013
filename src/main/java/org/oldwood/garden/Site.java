package org.oldwood.garden;

import org.oldwood.season.Hemisphere;

/**
 * Where a garden lies.
 *
 * @param latitude degrees, south negative, -90 to 90
 * @param longitude degrees, west negative, -180 to 180
 * @param heightM height above the sea, m
 */
public record Site(double latitude, double longitude, double heightM, String zoneName) {
    public Hemisphere hemisphere() { return Hemisphere.of(latitude); }
}

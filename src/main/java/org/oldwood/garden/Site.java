package org.oldwood.garden;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.place.Spot;

/**
 * Where a garden lies.
 *
 * @param latitude degrees, south negative, -90 to 90
 * @param longitude degrees, west negative, -180 to 180
 * @param heightM height above the sea, m
 */
public record Site(double latitude, double longitude, double heightM, String zoneName) {
    public Hemisphere hemisphere() { return Hemisphere.of(latitude); }

    public Spot spot() { return new Spot(latitude, longitude, heightM); }

    /** The time zone of that name, {@code Europe/London} for example; empty where there is none. */
    public static Optional<ZoneId> zone(String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}

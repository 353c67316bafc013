package org.oldwood.garden;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/** The time zone in which a garden's days are counted. */
public record Zone(ZoneId id) {
    /**
     * The zone of that name, {@code Europe/London} for example.
     *
     * @throws DateTimeException where there is none
     */
    public static Zone of(String name) { return new Zone(ZoneId.of(name)); }

    public static Optional<Zone> find(String name) {
        try {
            return Optional.of(of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    public Instant noonOf(LocalDate day) { return day.atTime(12, 0).atZone(id).toInstant(); }
}

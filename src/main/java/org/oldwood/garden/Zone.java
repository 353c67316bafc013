package org.oldwood.garden;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.TimeZone;

/**
 * The time zone in which a garden's days are counted. An export asks only when it is noon there, and for most days the
 * JDK's older {@link TimeZone} knows; the registry behind {@link ZoneId} looks into every library of the program for
 * more zones, which takes a short run 10 ms.
 */
public final class Zone {
    /** The older registry has no rules beyond 2037. */
    private static final int FIRST_YEAR = 1970;

    private static final int LAST_YEAR = 2036;
    private static final long HALF_DAY = 12 * 60 * 60 * 1000L;
    private static final long DAY = 2 * HALF_DAY;

    private final String name;
    private final Optional<TimeZone> older;

    private Zone(String name, Optional<TimeZone> older) {
        this.name = name;
        this.older = older;
    }

    /**
     * The zone of that name, {@code Europe/London} for example.
     *
     * @throws java.time.DateTimeException where there is none
     */
    public static Zone of(String name) {
        Optional<TimeZone> older = older(name);
        return new Zone(older.isPresent() ? name : ZoneId.of(name).getId(), older);
    }

    /** Whether there is a zone of that name. */
    static boolean isKnown(String name) {
        return older(name).isPresent() || ZoneId.getAvailableZoneIds().contains(name);
    }

    /** Names without a stroke are not the same in both: the older ones know {@code PST}. */
    private static Optional<TimeZone> older(String name) {
        if (name.indexOf('/') < 0) {
            return Optional.empty();
        }
        TimeZone older = TimeZone.getTimeZone(name);
        return older.getID().equals(name) ? Optional.of(older) : Optional.empty();
    }

    /** The zone, for whom it must tell more than noon. */
    public ZoneId id() {
        return ZoneId.of(name);
    }

    /** Noon of a day there. */
    public Instant noonOf(LocalDate day) {
        if (older.isPresent() && day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
            long noon = day.toEpochDay() * DAY + HALF_DAY;
            int offset = older.get().getOffset(noon - older.get().getRawOffset());
            if (older.get().getOffset(noon - offset) == offset) {
                return Instant.ofEpochMilli(noon - offset);
            }
        }
        return day.atTime(12, 0).atZone(id()).toInstant();
    }
}

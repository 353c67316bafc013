package org.oldwood.calendar;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/**
 * Which revision of an item this is.
 *
 * @param sequence SEQUENCE (RFC 5545, 3.8.7.4): 0 at first, one more when dates or status change
 * @param changed when its content last changed; DTSTAMP and LAST-MODIFIED (3.8.7.2, 3.8.7.3)
 */
public record Stamp(int sequence, Instant changed) {
    /** A date with UTC time, {@code 20270101T060000Z}. */
    static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    public Stamp {
        if (sequence < 0) { throw new IllegalArgumentException("SEQUENCE is never below 0 but is " + sequence); }
    }
}

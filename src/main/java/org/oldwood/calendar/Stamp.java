package org.oldwood.calendar;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * Which revision of an item this is.
 *
 * @param sequence SEQUENCE (RFC 5545, 3.8.7.4): 0 at first, one more when dates or status change
 * @param changed when its content last changed; DTSTAMP and LAST-MODIFIED (3.8.7.2, 3.8.7.3)
 */
public record Stamp(int sequence, Instant changed) {
    public Stamp {
        if (sequence < 0) { throw new IllegalArgumentException("SEQUENCE is never below 0 but is " + sequence); }
    }

    /** A date with UTC time, {@code 20270101T060000Z}. */
    static String utc(Instant instant) {
        LocalDateTime time = LocalDateTime.ofEpochSecond(instant.getEpochSecond(), 0, ZoneOffset.UTC);
        long date = time.getYear() * 10000L + time.getMonthValue() * 100L + time.getDayOfMonth();
        long clock = 1_000_000L + time.getHour() * 10000L + time.getMinute() * 100L + time.getSecond();
        return date + "T" + Long.toString(clock).substring(1) + "Z";
    }
}

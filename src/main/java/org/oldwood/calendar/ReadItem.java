package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a calendar says of one item.
 *
 * @param status NEEDS-ACTION, IN-PROCESS, COMPLETED, CANCELLED, CONFIRMED; empty if not said
 * @param completed the local day of COMPLETED
 * @param isCompletedGiven whether there is a COMPLETED at all, be it readable or not
 * @param percent PERCENT-COMPLETE, 0 if not said
 * @param modified the local day of LAST-MODIFIED
 * @param start DTSTART as it stands; may be empty
 * @param end DTEND or DUE as it stands; may be empty
 */
public record ReadItem(String status, Optional<LocalDate> completed, boolean isCompletedGiven, int percent,
        Optional<LocalDate> modified, String title, String start, String end) {

    /** Any one of the three ways of saying it is enough (RFC 5545, 3.8.1.11, 3.8.2.1, 3.8.1.8). */
    public boolean isDone() {
        boolean isCancelled = status.equals("CANCELLED");
        return status.equals("COMPLETED") || (!isCancelled && (isCompletedGiven || percent == 100));
    }

    public boolean isUnderWay() { return !isDone() && (status.equals("IN-PROCESS") || percent > 0); }
}

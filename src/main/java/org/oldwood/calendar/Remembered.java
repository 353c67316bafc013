package org.oldwood.calendar;

import java.time.LocalDate;

/**
 * What was last written for one item.
 *
 * @param item as it was written; its text is not kept
 * @param stamp the revision written
 * @param shown the dates as they stood in event and to-do; when they change, SEQUENCE does
 * @param hash of all content but the stamp; empty where that is not known
 * @param planned the day that the plan would have had
 * @param event whether it had an event
 * @param rings whether the event had an alarm
 */
record Remembered(Item item, Stamp stamp, String shown, String hash, LocalDate planned, Outgoing.Event event,
        boolean rings) {}

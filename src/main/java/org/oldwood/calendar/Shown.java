package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import org.oldwood.calendar.format.DayOctets;

/** The dates as they stand in event and to-do; when they change, SEQUENCE does. */
final class Shown {
    /** More octets than they ever take. */
    static final int MOST = 4 * DayOctets.MOST + 3;

    private Shown() {}

    static String of(Item.Days days, Layout layout) {
        byte[] octets = new byte[MOST];
        return new String(octets, 0, put(octets, 0, days, layout), US_ASCII);
    }

    /** Returns where the next octet goes. */
    static int put(byte[] to, int at, Item.Days days, Layout layout) {
        int next = DayOctets.iso(to, at, layout.eventStart(days));
        to[next] = '/';
        next = DayOctets.iso(to, next + 1, layout.eventEnd(days));
        to[next] = ' ';
        next = DayOctets.iso(to, next + 1, days.first());
        to[next] = '/';
        return DayOctets.iso(to, next + 1, layout.due(days));
    }
}

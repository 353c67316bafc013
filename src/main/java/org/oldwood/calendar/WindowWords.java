package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import org.oldwood.calendar.format.DayOctets;

/** The window in words, before an item's text: some clients drop the end, all show the text. As octets, escaped. */
final class WindowWords {
    /** More than any window takes. */
    static final int MOST = 256;

    private static final byte[] ON = octets("On ");
    private static final byte[] FROM = octets("From ");
    private static final byte[] TO = octets(" to ");
    private static final byte[] BEST = octets("\\, both days included. Best day: ");
    private static final byte[] END = octets(".");
    private static final byte[] DUE = octets(" A to-do's due date is the day after the last good day.");

    private WindowWords() {}

    /** Returns where the next octet goes. */
    static int put(byte[] to, int at, Item.Days days, Layout layout) {
        int next;
        if (days.count() == 1) {
            next = DayOctets.words(to, DayOctets.put(to, at, ON), days.first());
        } else {
            next = DayOctets.words(to, DayOctets.put(to, at, FROM), days.first());
            next = DayOctets.words(to, DayOctets.put(to, next, TO), days.last());
            next = DayOctets.words(to, DayOctets.put(to, next, BEST), days.best());
        }
        next = DayOctets.put(to, next, END);
        return layout.due() == Layout.Due.DAY_AFTER ? DayOctets.put(to, next, DUE) : next;
    }

    private static byte[] octets(String words) {
        return words.getBytes(US_ASCII);
    }
}

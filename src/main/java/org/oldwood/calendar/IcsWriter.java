package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.LocalDate;
import org.oldwood.calendar.format.Colours;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.DayOctets;
import org.oldwood.calendar.format.Hygiene;
import org.oldwood.calendar.format.UuidV5;
import org.oldwood.garden.Zone;

/**
 * Writes one iCalendar object, item by item, with its properties in a fixed order, so that the same plan is the same
 * bytes. Days are DATE values: a garden's day is the same day wherever the reader is. No METHOD: the file is no message
 * (RFC 5546), and servers must not store one (RFC 4791, 4.1).
 */
public final class IcsWriter {
    public static final String PRODUCT = "-//Oldwood//Oldwood 1//EN";

    private static final byte[] BEGIN_CALENDAR =
            lines("BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:" + PRODUCT, "CALSCALE:GREGORIAN");
    private static final byte[] END_CALENDAR = lines("END:VCALENDAR");
    private static final byte[] BEGIN_EVENT = lines("BEGIN:VEVENT");
    private static final byte[] UID = "UID:".getBytes(US_ASCII);
    private static final byte[] START = "DTSTART;VALUE=DATE:".getBytes(US_ASCII);
    private static final byte[] END = "DTEND;VALUE=DATE:".getBytes(US_ASCII);
    private static final byte[] DUE = "DUE;VALUE=DATE:".getBytes(US_ASCII);
    private static final byte[] CONFIRMED = lines("STATUS:CONFIRMED", "TRANSP:TRANSPARENT");
    private static final byte[] CANCELLED_EVENT = lines("STATUS:CANCELLED", "TRANSP:TRANSPARENT");
    private static final byte[] END_EVENT = lines("END:VEVENT");
    private static final byte[] BEGIN_TODO = lines("BEGIN:VTODO");
    private static final byte[] NEEDS_ACTION = lines("STATUS:NEEDS-ACTION");
    private static final byte[] IN_PROCESS = lines("STATUS:IN-PROCESS");
    private static final byte[] CANCELLED = lines("STATUS:CANCELLED");
    private static final byte[] COMPLETED = lines("STATUS:COMPLETED");
    private static final byte[] END_TODO = lines("END:VTODO");
    private static final byte[] BEGIN_ALARM = lines("BEGIN:VALARM", "ACTION:DISPLAY");

    /** Eight in the morning: counted from midnight in the reader's own zone (RFC 5545, 3.8.6.3). */
    private static final byte[] FROM_START = lines("TRIGGER;RELATED=START:PT8H", "END:VALARM");

    private static final byte[] FROM_END = lines("TRIGGER;RELATED=END:PT8H", "END:VALARM");

    private final ContentLines lines;
    private final ItemLines shared;
    private final Layout layout;
    private final Uids uids;
    private final Zone zone;
    private final byte[] uid = new byte[UID.length + UuidV5.LENGTH + 2];

    /** What is said once, at the head of a file. */
    public record Head(String uid, String name, boolean isFeed) {}

    /** The zone is the garden's: COMPLETED is UTC, and must fall on the gardener's day. */
    public IcsWriter(OutputStream out, Layout layout, Uids uids, Zone zone) {
        this(out, new ItemLines(layout), uids, zone);
    }

    /** For one of several files with the same items. */
    public IcsWriter(OutputStream out, ItemLines shared, Uids uids, Zone zone) {
        this.lines = new ContentLines(out);
        this.shared = shared;
        this.layout = shared.layout();
        this.uids = uids;
        this.zone = zone;
        System.arraycopy(UID, 0, uid, 0, UID.length);
    }

    private static byte[] lines(String... lines) {
        return (String.join("\r\n", lines) + "\r\n").getBytes(US_ASCII);
    }

    /** The head alone, for an object of one item on a server. */
    public void begin() throws IOException {
        lines.add(BEGIN_CALENDAR);
    }

    /** The head of a file, with a calendar's name and colour (RFC 7986, 5). */
    public void begin(Head head) throws IOException {
        begin();
        String name = Hygiene.line(head.name);
        lines.text("UID", head.uid);
        lines.text("NAME", name);
        lines.text("X-WR-CALNAME", name);
        lines.line("COLOR", Colours.CALENDAR);
        if (head.isFeed) {
            lines.line("REFRESH-INTERVAL;VALUE=DURATION", "P1D");
            lines.line("X-PUBLISHED-TTL", "P1D");
        }
    }

    public void event(Item item, Stamp stamp) throws IOException {
        shared.make(Content.of(item), stamp);
        event();
    }

    /** The event of the item whose lines were made last. */
    public void event() throws IOException {
        Item item = shared.item();
        lines.add(BEGIN_EVENT);
        uid(item.identity(), Uids.EVENT);
        shared.stampTo(lines);
        lines.day(START, layout.eventStart(item.days()));
        lines.day(END, layout.eventEnd(item.days()));
        shared.eventWordsTo(lines);
        lines.add(item.progress().state().isCancelled() ? CANCELLED_EVENT : CONFIRMED);
        alarm(item, FROM_START);
        lines.add(END_EVENT);
    }

    public void todo(Item item, Stamp stamp) throws IOException {
        shared.make(Content.of(item), stamp);
        todo();
    }

    /** The to-do of the item whose lines were made last. */
    public void todo() throws IOException {
        Item item = shared.item();
        Item.Days days = item.days();
        boolean hasStart = layout.todoHasStart(days);
        lines.add(BEGIN_TODO);
        uid(item.identity(), Uids.TODO);
        shared.stampTo(lines);
        if (hasStart) {
            lines.day(START, days.first());
        }
        lines.day(DUE, layout.due(days));
        shared.todoWordsTo(lines);
        status(item.progress());
        alarm(item, hasStart ? FROM_START : FROM_END);
        lines.add(END_TODO);
    }

    public void end() throws IOException {
        lines.add(END_CALENDAR);
        lines.flush();
    }

    private void uid(String identity, String kind) throws IOException {
        String adopted = uids.adopted(identity, kind);
        if (adopted != null) {
            lines.text("UID", adopted);
            return;
        }
        int end = uids.put(uid, UID.length, identity, kind);
        uid[end] = '\r';
        uid[end + 1] = '\n';
        lines.add(uid, 0, end + 2);
    }

    private void status(Item.Progress progress) throws IOException {
        switch (progress.state()) {
            case OPEN -> lines.add(NEEDS_ACTION);
            case BEGUN -> {
                lines.add(IN_PROCESS);
                if (progress.percent() > 0) {
                    percent(progress.percent());
                }
            }
            case SKIPPED, WITHDRAWN -> lines.add(CANCELLED);
            case DONE -> {
                lines.add(COMPLETED);
                lines.line("COMPLETED", Stamp.utc(completed(progress.day().orElseThrow())));
                percent(100);
            }
        }
    }

    private void percent(int percent) throws IOException {
        lines.line("PERCENT-COMPLETE", Integer.toString(percent));
    }

    /** Noon in the garden: the same day there, whatever UTC says. */
    private Instant completed(LocalDate day) {
        return zone.noonOf(day);
    }

    private void alarm(Item item, byte[] when) throws IOException {
        if (layout.alarms() != Layout.Alarms.NONE && item.progress().state().isDue()) {
            lines.add(BEGIN_ALARM);
            shared.alarmTo(lines);
            lines.add(when);
        }
    }

    /** A DATE value (RFC 5545, 3.3.4). */
    public static String digits(LocalDate day) {
        byte[] digits = new byte[DayOctets.MOST];
        return new String(digits, 0, DayOctets.digits(digits, 0, day), US_ASCII);
    }
}

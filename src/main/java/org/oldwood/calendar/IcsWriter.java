package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Writes one iCalendar object, item by item, with its properties in a fixed order, so that the same
 * plan is the same bytes. Days are DATE values: a garden's day is the same day wherever the reader
 * is. No METHOD: the file is no message (RFC 5546), and servers must not store one (RFC 4791, 4.1).
 */
final class IcsWriter {
    static final String PRODUCT = "-//Oldwood//Oldwood 1//EN";

    private static final byte[] BEGIN_CALENDAR =
            lines("BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:" + PRODUCT, "CALSCALE:GREGORIAN");
    private static final byte[] END_CALENDAR = lines("END:VCALENDAR");
    private static final byte[] BEGIN_EVENT = lines("BEGIN:VEVENT");
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
    private final SharedLines shared;
    private final Layout layout;
    private final Uids uids;
    private final ZoneId zone;

    /** What is said once, at the head of a file. */
    record Head(String uid, String name, boolean isFeed) {}

    /** The zone is the garden's: COMPLETED is UTC, and must fall on the gardener's day. */
    IcsWriter(OutputStream out, Layout layout, Uids uids, ZoneId zone) {
        this(out, new SharedLines(layout), uids, zone);
    }

    /** For one of several files with the same items. */
    IcsWriter(OutputStream out, SharedLines shared, Uids uids, ZoneId zone) {
        this.lines = new ContentLines(out);
        this.shared = shared;
        this.layout = shared.layout();
        this.uids = uids;
        this.zone = zone;
    }

    private static byte[] lines(String... lines) {
        return (String.join("\r\n", lines) + "\r\n").getBytes(US_ASCII);
    }

    /** The head alone, for an object of one item on a server. */
    void begin() throws IOException {
        lines.add(BEGIN_CALENDAR);
    }

    /** The head of a file, with a calendar's name and colour (RFC 7986, 5). */
    void begin(Head head) throws IOException {
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

    void event(Item item, Stamp stamp) throws IOException {
        Item.Days days = item.days();
        lines.add(BEGIN_EVENT);
        lines.text("UID", uids.event(item.identity()));
        lines.add(shared.stamp(stamp));
        day("DTSTART;VALUE=DATE", layout.eventStart(days));
        day("DTEND;VALUE=DATE", layout.eventEnd(days));
        words(item, Title.ofEvent(item));
        lines.add(item.progress().state().isCancelled() ? CANCELLED_EVENT : CONFIRMED);
        alarm(item, FROM_START);
        lines.add(END_EVENT);
    }

    void todo(Item item, Stamp stamp) throws IOException {
        Item.Days days = item.days();
        boolean hasStart = layout.todoHasStart(days);
        lines.add(BEGIN_TODO);
        lines.text("UID", uids.todo(item.identity()));
        lines.add(shared.stamp(stamp));
        if (hasStart) {
            day("DTSTART;VALUE=DATE", days.first());
        }
        day("DUE;VALUE=DATE", layout.due(days));
        words(item, Title.ofTodo(item));
        status(item.progress());
        alarm(item, hasStart ? FROM_START : FROM_END);
        lines.add(END_TODO);
    }

    void end() throws IOException {
        lines.add(END_CALENDAR);
        lines.flush();
    }

    private void day(String name, LocalDate day) throws IOException {
        lines.line(name, digits(day));
    }

    private void words(Item item, String title) throws IOException {
        Item.Words words = item.words();
        lines.add(shared.text("SUMMARY", title));
        lines.add(shared.description(words.text(), item.days()));
        lines.add(shared.where(words.category(), words.place()));
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
        return day.atTime(12, 0).atZone(zone).toInstant();
    }

    private void alarm(Item item, byte[] when) throws IOException {
        if (layout.alarms() != Layout.Alarms.NONE && item.progress().state().isDue()) {
            lines.add(BEGIN_ALARM);
            lines.add(shared.text("DESCRIPTION", item.words().title()));
            lines.add(when);
        }
    }

    /** A DATE value (RFC 5545, 3.3.4). */
    static String digits(LocalDate day) {
        return Long.toString(
                day.getYear() * 10000L + day.getMonthValue() * 100L + day.getDayOfMonth());
    }
}

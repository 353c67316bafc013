package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;

/**
 * Writes one iCalendar object, item by item, with its properties in a fixed order, so that the same
 * plan is the same bytes. Days are DATE values: a garden's day is the same day wherever the reader
 * is. No METHOD: the file is no message (RFC 5546), and servers must not store one (RFC 4791, 4.1).
 */
final class IcsWriter {
    static final String PRODUCT = "-//Oldwood//Oldwood 1//EN";
    private static final String ALARM_AT_EIGHT = "PT8H";

    private final ContentLines lines;
    private final Layout layout;
    private final Uids uids;
    private final ZoneId zone;

    /** What is said once, at the head of a file. */
    record Head(String uid, String name, boolean isFeed) {}

    /** The zone is the garden's: COMPLETED is UTC, and must fall on the gardener's day. */
    IcsWriter(OutputStream out, Layout layout, Uids uids, ZoneId zone) {
        this.lines = new ContentLines(out);
        this.layout = layout;
        this.uids = uids;
        this.zone = zone;
    }

    /** The head alone, for an object of one item on a server. */
    void begin() throws IOException {
        lines.line("BEGIN", "VCALENDAR");
        lines.line("VERSION", "2.0");
        lines.line("PRODID", PRODUCT);
        lines.line("CALSCALE", "GREGORIAN");
    }

    /** The head of a file, with a calendar's name and colour (RFC 7986, 5). */
    void begin(Head head) throws IOException {
        begin();
        lines.line("UID", head.uid);
        String name = Hygiene.line(head.name);
        lines.text("NAME", name);
        lines.text("X-WR-CALNAME", name);
        lines.line("COLOR", Colours.CALENDAR);
        if (head.isFeed) {
            lines.line("REFRESH-INTERVAL;VALUE=DURATION", "P1D");
            lines.line("X-PUBLISHED-TTL", "P1D");
        }
    }

    void event(Item item, Stamp stamp) throws IOException {
        lines.line("BEGIN", "VEVENT");
        identity(uids.event(item.identity()), stamp);
        Item.Days days = item.days();
        date("DTSTART", layout.eventStart(days));
        date("DTEND", layout.eventEnd(days));
        words(item, Title::ofEvent);
        lines.line("STATUS", item.progress().state().isCancelled() ? "CANCELLED" : "CONFIRMED");
        lines.line("TRANSP", "TRANSPARENT");
        alarm(item, "START");
        lines.line("END", "VEVENT");
    }

    void todo(Item item, Stamp stamp) throws IOException {
        lines.line("BEGIN", "VTODO");
        identity(uids.todo(item.identity()), stamp);
        Item.Days days = item.days();
        boolean hasStart = layout.todoHasStart(days);
        if (hasStart) {
            date("DTSTART", days.first());
        }
        date("DUE", layout.due(days));
        words(item, Title::ofTodo);
        status(item.progress());
        alarm(item, hasStart ? "START" : "END");
        lines.line("END", "VTODO");
    }

    void end() throws IOException {
        lines.line("END", "VCALENDAR");
        lines.flush();
    }

    private void identity(String uid, Stamp stamp) throws IOException {
        String changed = Stamp.utc(stamp.changed());
        lines.line("UID", uid);
        lines.line("DTSTAMP", changed);
        lines.line("LAST-MODIFIED", changed);
        lines.line("SEQUENCE", Integer.toString(stamp.sequence()));
    }

    private void words(Item item, Function<Item, String> title) throws IOException {
        Item.Words words = item.words();
        lines.text("SUMMARY", title.apply(item));
        lines.text("DESCRIPTION", WindowWords.before(words.text(), item.days(), layout));
        lines.text("CATEGORIES", words.category());
        lines.text("LOCATION", words.place());
        lines.line("COLOR", Colours.of(words.category()));
    }

    private void status(Item.Progress progress) throws IOException {
        switch (progress.state()) {
            case OPEN -> lines.line("STATUS", "NEEDS-ACTION");
            case SKIPPED, WITHDRAWN -> lines.line("STATUS", "CANCELLED");
            case DONE -> {
                lines.line("STATUS", "COMPLETED");
                lines.line("COMPLETED", completed(progress.day().orElseThrow()));
                lines.line("PERCENT-COMPLETE", "100");
            }
        }
    }

    /** Noon in the garden: the same day there, whatever UTC says. */
    private String completed(LocalDate day) {
        return Stamp.utc(day.atTime(12, 0).atZone(zone).toInstant());
    }

    /** RFC 5545, 3.8.6.3: counted from midnight in the reader's own zone. */
    private void alarm(Item item, String related) throws IOException {
        if (layout.alarms() == Layout.Alarms.NONE || item.progress().state() != Item.State.OPEN) {
            return;
        }
        lines.line("BEGIN", "VALARM");
        lines.line("ACTION", "DISPLAY");
        lines.text("DESCRIPTION", item.words().title());
        lines.line("TRIGGER;RELATED=" + related, ALARM_AT_EIGHT);
        lines.line("END", "VALARM");
    }

    private void date(String name, LocalDate day) throws IOException {
        lines.line(name + ";VALUE=DATE", digits(day));
    }

    /** A DATE value (RFC 5545, 3.3.4). */
    static String digits(LocalDate day) {
        return Long.toString(
                day.getYear() * 10000L + day.getMonthValue() * 100L + day.getDayOfMonth());
    }
}

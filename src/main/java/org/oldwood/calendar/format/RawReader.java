package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/**
 * Takes an iCalendar file from anywhere apart into components and lines, within bounds of size, depth and number,
 * whatever the file is. Tolerant as RFC 5545, 3.1 asks of readers and practice needs: bare line feeds, a byte order
 * mark, folds inside a character, names in any case. A component that is not closed is kept, with a problem.
 */
public final class RawReader {
    /** A year of 2,400 tasks is about 2.5 MB. */
    private static final int MOST_BYTES = 32 << 20;

    private static final int MOST_LINE_BYTES = 1 << 20;
    private static final int MOST_LINES = 1_000_000;

    /** VCALENDAR, VEVENT, VALARM, and a little more for what others put in. */
    private static final int DEEPEST = 8;

    private final String name;
    private final Problems problems;
    private final RawComponent root = RawComponent.named("");
    private final Deque<RawComponent> open = new ArrayDeque<>();
    private int lines;
    private int tooDeep;

    private RawReader(String name, Problems problems) {
        this.name = name;
        this.problems = problems;
        open.push(root);
    }

    /**
     * Reads a whole file.
     *
     * @param name the file or address, for messages
     * @return a component without name that holds all calendars of the file
     * @throws RecordException where it is no iCalendar file or goes beyond the bounds
     */
    public static RawComponent read(InputStream in, String name, Problems problems) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        RawReader reader = new RawReader(name, problems);
        if (bytes.length > MOST_BYTES) { throw reader.refused("calendar-too-large", 0, "has more than 32 MB"); }
        reader.all(bytes);
        return reader.root;
    }

    private void all(byte[] bytes) {
        int at = startOfText(bytes);
        int number = 0;
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        while (at < bytes.length) {
            int end = endOfLine(bytes, at);
            boolean isContinued = number > 0 && (bytes[at] == ' ' || bytes[at] == '\t');
            if (!isContinued) {
                take(line, number);
                line.reset();
            }
            int from = isContinued ? at + 1 : at;
            line.write(bytes, from, withoutReturn(bytes, from, end) - from);
            number++;
            if (line.size() > MOST_LINE_BYTES) {
                throw refused("calendar-line-too-long", number, "is part of a line of over 1 MB");
            }
            at = end + 1;
        }
        take(line, number);
        finish(number);
    }

    private static int startOfText(byte[] bytes) {
        boolean hasMark = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB
                && bytes[2] == (byte) 0xBF;
        return hasMark ? 3 : 0;
    }

    private static int endOfLine(byte[] bytes, int from) {
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            at++;
        }
        return at;
    }

    private static int withoutReturn(byte[] bytes, int from, int end) {
        return end > from && bytes[end - 1] == '\r' ? end - 1 : end;
    }

    private void take(ByteArrayOutputStream bytes, int number) {
        if (bytes.size() == 0) { return; }
        if (++lines > MOST_LINES) {
            throw refused("calendar-too-large", number, "is past the 1,000,000 lines that are read");
        }
        RawProperty property = RawProperty.of(bytes.toString(UTF_8));
        String value = property.value().strip().toUpperCase(Locale.ROOT);
        if (lines == 1 && !(property.name().equals("BEGIN") && value.equals("VCALENDAR"))) {
            throw refused("not-a-calendar", number, "is not the first line of an iCalendar file");
        }
        switch (property.name()) {
            case "BEGIN" -> begin(value, number);
            case "END" -> end(value, number);
            default -> {
                if (tooDeep == 0) { open.element().properties().add(property); }
            }
        }
    }

    private void begin(String component, int number) {
        if (open.size() > DEEPEST || tooDeep > 0) {
            if (tooDeep++ == 0) { problem("calendar-too-deep", number, DEEPEST); }
            return;
        }
        RawComponent child = RawComponent.named(component);
        open.element().parts().add(child);
        open.push(child);
    }

    private void end(String component, int number) {
        if (tooDeep > 0) {
            tooDeep--;
        } else if (open.size() > 1 && open.element().name().equals(component)) {
            open.pop();
        } else {
            problem("calendar-end-without-begin", number);
        }
    }

    private void finish(int number) {
        if (lines == 0) { throw refused("not-a-calendar", 0, "is empty, so it is no iCalendar file"); }
        if (open.size() > 1) { problem("calendar-cut-short", number, open.element().name()); }
    }

    private void problem(String words, int line, Object... said) { problems.tell(words, Place.of(name, line), said); }

    private RecordException refused(String kind, int line, String message) {
        return new RecordException(new Problem(kind, Place.of(name, line), message,
                "Give the .ics file that Oldwood wrote, or one that your calendar exported."));
    }
}

package org.oldwood.calendar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.oldwood.store.Problems;

/** Reads the memory of a garden's calendars through a small buffer, whatever its length. */
final class StateReader {
    private final InputStream in;
    private final Problems problems;
    private final CalendarState.Sink sink;
    private final Map<String, String> adopted;
    private final StateLine plain = new StateLine();
    private byte[] buffer = new byte[1 << 16];
    private int from;
    private int to;
    private boolean isAtEnd;

    /** Whether a carriage return stands in the line. */
    private boolean hasReturn;

    private int number;

    StateReader(InputStream in, Problems problems, CalendarState.Sink sink, Map<String, String> adopted) {
        this.in = in;
        this.problems = problems;
        this.sink = sink;
        this.adopted = adopted;
    }

    void read() throws IOException {
        fill();
        while (from < to) {
            int end = lineEnd();
            if (end == to && !isAtEnd) {
                fill();
                continue;
            }
            if (number > 0 && !hasReturn && plain.read(buffer, from, end)) {
                number++;
                if (!sink.takes(plain)) {
                    line(text(end));
                }
            } else {
                odd(text(end));
            }
            from = Math.min(end + 1, to);
        }
    }

    private int lineEnd() {
        int end = from;
        hasReturn = false;
        while (end < to && buffer[end] != '\n') {
            hasReturn |= buffer[end] == '\r';
            end++;
        }
        return end;
    }

    /** The head, or a line that we would not have written. */
    private void odd(String text) throws IOException {
        if (text.isEmpty()) {
            number++;
            line(text);
        }
        // a carriage return alone ends a line too
        BufferedReader lines = new BufferedReader(new StringReader(text));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            line(line);
        }
    }

    /** Octets that are no UTF-8 spoil their line, not the file. */
    private String text(int end) {
        return new String(buffer, from, end - from, StandardCharsets.UTF_8);
    }

    private void line(String text) {
        CalendarState.line(text, number, problems, sink, adopted);
    }

    private void fill() throws IOException {
        if (from == 0 && to == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        System.arraycopy(buffer, from, buffer, 0, to - from);
        to -= from;
        from = 0;
        int more = in.readNBytes(buffer, to, buffer.length - to);
        to += more;
        isAtEnd = to < buffer.length;
    }
}

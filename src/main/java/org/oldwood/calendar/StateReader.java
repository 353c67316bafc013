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
    private int number;

    StateReader(
            InputStream in,
            Problems problems,
            CalendarState.Sink sink,
            Map<String, String> adopted) {
        this.in = in;
        this.problems = problems;
        this.sink = sink;
        this.adopted = adopted;
    }

    void read() throws IOException {
        fill();
        while (from < to) {
            int next = number == 0 ? -1 : plain.read(buffer, from, to);
            if (next < 0) {
                odd();
            } else {
                number++;
                if (!sink.takes(plain)) {
                    line(text(next - 1));
                }
                from = next;
            }
        }
    }

    /** The head, a line that we would not have written, or one of which only a part is here. */
    private void odd() throws IOException {
        int end = from;
        while (end < to && buffer[end] != '\n') {
            end++;
        }
        if (end == to && !isAtEnd) {
            fill();
            return;
        }
        String text = text(end);
        from = Math.min(end + 1, to);
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

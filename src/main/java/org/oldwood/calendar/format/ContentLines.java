package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes content lines as RFC 5545, 3.1 has them: UTF-8, CRLF, folded so that no physical line has more than 75 octets
 * and no fold falls inside a character or an escape. (The library folds by characters.)
 */
public final class ContentLines {
    public static final int MOST_OCTETS = 75;
    private static final byte[] END = {'\r', '\n'};
    private static final byte[] FOLD = {'\r', '\n', ' '};

    private final OutputStream out;

    public ContentLines(OutputStream out) { this.out = out; }

    /** A line with a value of type TEXT, escaped by 3.3.11. Nothing is written for empty text. */
    public void text(String name, String value) throws IOException {
        if (value.isEmpty()) { return; }
        whole("%s:%s".formatted(name,
                value.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")));
    }

    /** A whole line, unfolded and escaped, folded here. */
    public void whole(String line) throws IOException {
        byte[] octets = line.getBytes(UTF_8);
        int from = 0;
        int room = MOST_OCTETS;
        while (octets.length - from > room) {
            int end = outside(octets, from, from + room);
            out.write(octets, from, end - from);
            out.write(FOLD);
            from = end;
            room = MOST_OCTETS - 1;
        }
        out.write(octets, from, octets.length - from);
        out.write(END);
    }

    /** The last place up to {@code end} that is inside no character and no escape. */
    private static int outside(byte[] line, int from, int end) {
        int place = end;
        while ((line[place] & 0xC0) == 0x80) {
            place--;
        }
        int backslashes = 0;
        while (place - 1 - backslashes > from && line[place - 1 - backslashes] == '\\') {
            backslashes++;
        }
        return place - backslashes % 2;
    }

    /** Hands everything on. */
    public void flush() throws IOException { out.flush(); }
}

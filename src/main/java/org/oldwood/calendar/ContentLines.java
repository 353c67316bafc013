package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/**
 * Writes content lines as RFC 5545, 3.1 has them: UTF-8, CRLF, folded so that no physical line has
 * more than 75 octets and no fold falls inside a character or an escape. One pass, no copies: a
 * file of any length streams through a small buffer.
 */
final class ContentLines {
    private static final int MOST_OCTETS = 75;
    private static final int FLUSH_AT = 1 << 16;
    private static final int LONGEST_CHARACTER = 4;

    private final OutputStream out;
    private byte[] buffer = new byte[FLUSH_AT + 1024];
    private int size;
    private int octets;

    ContentLines(OutputStream out) {
        this.out = out;
    }

    /** A line whose value needs no escaping: a date, a number, a word of the standard. */
    void line(String name, String value) throws IOException {
        begin(name);
        raw(value);
        end();
    }

    /** A line with a value of type TEXT, escaped by 3.3.11. Nothing is written for empty text. */
    void text(String name, String value) throws IOException {
        if (value.isEmpty()) {
            return;
        }
        begin(name);
        makeRoom(value);
        int i = plainRun(value, 0);
        while (i < value.length()) {
            char c = value.charAt(i);
            switch (c) {
                case '\\', ';', ',' -> i += escaped(c);
                case '\n' -> i += escaped('n');
                default -> i += character(value, i);
            }
            i = plainRun(value, i);
        }
        end();
    }

    /** A whole line, unfolded and escaped, folded here; a fold never parts an escape. */
    void whole(String line) throws IOException {
        makeRoom(line);
        for (int i = plainRun(line, 0); i < line.length(); i = plainRun(line, i)) {
            boolean escape =
                    line.charAt(i) == '\\' && i + 1 < line.length() && line.charAt(i + 1) < 0x80;
            i += escape ? escapedPair(line.charAt(i + 1)) : character(line, i);
        }
        end();
    }

    private int escapedPair(char second) {
        escaped(second);
        return 2;
    }

    /** Hands everything on. */
    void flush() throws IOException {
        out.write(buffer, 0, size);
        size = 0;
        out.flush();
    }

    private void begin(String name) {
        raw(name);
        fit(1);
        put(':');
    }

    private void raw(String value) {
        makeRoom(value);
        for (int i = 0; i < value.length(); ) {
            i += character(value, i);
        }
    }

    /** Every character can take four octets, and every escape or fold a few more. */
    private void makeRoom(String value) {
        int most = size + 5 * value.length() + 1024;
        if (most > buffer.length) {
            buffer = Arrays.copyOf(buffer, Math.max(most, 2 * buffer.length));
        }
    }

    /**
     * Writes characters of one octet that need no escape, from {@code start}; returns where the run
     * ends. Nearly all text goes this way.
     */
    private int plainRun(String value, int start) {
        byte[] to = buffer;
        int at = size;
        int column = octets;
        int i = start;
        for (; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c >= 0x80 || c == '\\' || c == ';' || c == ',' || c == '\n') {
                break;
            }
            if (column == MOST_OCTETS) {
                to[at++] = '\r';
                to[at++] = '\n';
                to[at++] = ' ';
                column = 1;
            }
            to[at++] = (byte) c;
            column++;
        }
        size = at;
        octets = column;
        return i;
    }

    private void end() throws IOException {
        newLine();
        octets = 0;
        if (size >= FLUSH_AT) {
            out.write(buffer, 0, size);
            size = 0;
        }
    }

    private int escaped(char c) {
        fit(2);
        put('\\');
        put(c);
        return 1;
    }

    /** Writes the character that begins at {@code i}; returns how many chars it took. */
    private int character(String value, int i) {
        char c = value.charAt(i);
        if (c < 0x80) {
            fit(1);
            put(c);
            return 1;
        }
        if (c < 0x800) {
            fit(2);
            put(0xC0 | c >> 6);
            continuation(c, 0);
            return 1;
        }
        if (Character.isSurrogate(c)) {
            return supplementary(value.codePointAt(i));
        }
        three(c);
        return 1;
    }

    private int supplementary(int c) {
        if (!Character.isSupplementaryCodePoint(c)) {
            three(0xFFFD);
            return 1;
        }
        fit(LONGEST_CHARACTER);
        put(0xF0 | c >> 18);
        continuation(c, 12);
        continuation(c, 6);
        continuation(c, 0);
        return 2;
    }

    private void three(int c) {
        fit(3);
        put(0xE0 | c >> 12);
        continuation(c, 6);
        continuation(c, 0);
    }

    /** Six bits of a character, as UTF-8 has them after the first octet. */
    private void continuation(int c, int shift) {
        put(0x80 | ((c >> shift) & 0x3F));
    }

    private void fit(int more) {
        if (octets + more > MOST_OCTETS) {
            newLine();
            put(' ');
            octets = 1;
        }
        octets += more;
    }

    private void newLine() {
        put('\r');
        put('\n');
    }

    private void put(int octet) {
        buffer[size++] = (byte) octet;
    }
}

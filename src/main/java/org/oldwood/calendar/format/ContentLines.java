package org.oldwood.calendar.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * Writes content lines as RFC 5545, 3.1 has them: UTF-8, CRLF, folded so that no physical line has more than 75 octets
 * and no fold falls inside a character or an escape. One pass, no copies: a file of any length streams through a small
 * buffer.
 */
public final class ContentLines {
    public static final int MOST_OCTETS = 75;
    private static final int FLUSH_AT = 1 << 16;
    private static final int LONGEST_CHARACTER = 4;

    /** Characters of one octet that need no escape; nearly all text is made of them. */
    private static final boolean[] PLAIN = new boolean[0x80];

    static {
        Arrays.fill(PLAIN, true);
        for (char c : new char[] {'\\', ';', ',', '\n'}) {
            PLAIN[c] = false;
        }
    }

    private final OutputStream out;
    private byte[] buffer = new byte[1024];
    private int size;
    private int octets;

    public ContentLines(OutputStream out) {
        this.out = out;
    }

    /** A line that needs neither escape nor fold: a date, a number, a word of the standard, in ASCII. */
    public void line(String name, String value) throws IOException {
        if (name.length() + 1 + value.length() > MOST_OCTETS) {
            throw new IllegalArgumentException("a line to be folded: " + name + ":" + value);
        }
        makeRoom(MOST_OCTETS + 2);
        begin(name);
        ascii(value);
        end();
    }

    /** A line with a value of type TEXT, escaped by 3.3.11. Nothing is written for empty text. */
    public void text(String name, String value) throws IOException {
        if (value.isEmpty()) {
            return;
        }
        makeRoom(value);
        begin(name);
        char[] chars = value.toCharArray();
        int i = plainRun(chars, 0);
        while (i < chars.length) {
            char c = chars[i];
            switch (c) {
                case '\\', ';', ',' -> i += escaped(c);
                case '\n' -> i += escaped('n');
                default -> i += character(chars, i);
            }
            i = plainRun(chars, i);
        }
        end();
    }

    /** A whole line, unfolded and escaped, folded here; a fold never parts an escape. */
    public void whole(String line) throws IOException {
        makeRoom(line);
        char[] chars = line.toCharArray();
        for (int i = plainRun(chars, 0); i < chars.length; i = plainRun(chars, i)) {
            boolean escape = chars[i] == '\\' && i + 1 < chars.length && chars[i + 1] < 0x80;
            i += escape ? escapedPair(chars[i + 1]) : character(chars, i);
        }
        end();
    }

    /** Lines that were made before, with their ends, or a part of a line. */
    public void add(byte[] lines) throws IOException {
        add(lines, 0, lines.length);
    }

    /** Some of the octets, from {@code from} to before {@code to}. */
    public void add(byte[] lines, int from, int to) throws IOException {
        makeRoom(to - from);
        System.arraycopy(lines, from, buffer, size, to - from);
        size += to - from;
        passOn();
    }

    /** A line whose value is a DATE (RFC 5545, 3.3.4). */
    public void day(byte[] nameAndColon, LocalDate day) throws IOException {
        makeRoom(nameAndColon.length + DayOctets.MOST + 2);
        System.arraycopy(nameAndColon, 0, buffer, size, nameAndColon.length);
        size = DayOctets.digits(buffer, size + nameAndColon.length, day);
        end();
    }

    private int escapedPair(char second) {
        escaped(second);
        return 2;
    }

    /** Hands everything on. */
    public void flush() throws IOException {
        out.write(buffer, 0, size);
        size = 0;
        out.flush();
    }

    private void begin(String name) {
        ascii(name);
        put(':');
        octets = name.length() + 1;
    }

    /** Copied as a whole: no loop over characters. */
    private void ascii(String value) {
        byte[] all = value.getBytes(StandardCharsets.ISO_8859_1);
        System.arraycopy(all, 0, buffer, size, all.length);
        size += all.length;
    }

    /** Every character can take four octets, and every escape or fold a few more. */
    private void makeRoom(String value) {
        makeRoom(5 * value.length() + 1024);
    }

    private void makeRoom(int more) {
        if (size + more > buffer.length) {
            buffer = Arrays.copyOf(buffer, Math.max(size + more, 2 * buffer.length));
        }
    }

    /**
     * Writes characters of one octet that need no escape, from {@code start}; returns where the run ends. Nearly all
     * text goes this way.
     */
    private int plainRun(char[] chars, int start) {
        byte[] to = buffer;
        int at = size;
        int column = octets;
        int i = start;
        for (; i < chars.length; i++) {
            char c = chars[i];
            if (c >= 0x80 || !PLAIN[c]) {
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
        passOn();
    }

    private void passOn() throws IOException {
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
    private int character(char[] chars, int i) {
        char c = chars[i];
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
            return supplementary(Character.codePointAt(chars, i));
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

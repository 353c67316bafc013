package org.oldwood.calendar.format;

/**
 * Folds a content line (RFC 5545, 3.1): no physical line has more than 75 octets, and no fold falls inside a character
 * or an escape. Whole stretches are copied, not octet by octet.
 */
public final class Folding {
    private static final int MOST_OCTETS = ContentLines.MOST_OCTETS;

    /** A physical line loses at most three octets to a character that no longer fits. */
    private static final int LEAST_OCTETS = MOST_OCTETS - 1 - 3;

    private Folding() {}

    /** As many octets as a line of {@code length} may take, with its end. */
    public static int most(int length) {
        return length + 3 * (length / LEAST_OCTETS + 1) + 2;
    }

    /**
     * Writes a line and its end.
     *
     * @param line UTF-8, escaped
     * @return where the next octet goes
     */
    public static int fold(byte[] line, int length, byte[] to, int at) {
        int from = 0;
        int next = at;
        int room = MOST_OCTETS;
        while (length - from > room) {
            int end = whole(line, from + room);
            System.arraycopy(line, from, to, next, end - from);
            next += end - from;
            to[next] = '\r';
            to[next + 1] = '\n';
            to[next + 2] = ' ';
            next += 3;
            from = end;
            room = MOST_OCTETS - 1;
        }
        System.arraycopy(line, from, to, next, length - from);
        next += length - from;
        to[next] = '\r';
        to[next + 1] = '\n';
        return next + 2;
    }

    /** The last place up to {@code end} that is inside nothing. */
    private static int whole(byte[] line, int end) {
        int place = end;
        while ((line[place] & 0xC0) == 0x80) {
            place--;
        }
        int backslashes = 0;
        while (line[place - 1 - backslashes] == '\\') {
            backslashes++;
        }
        return place - backslashes % 2;
    }
}

package org.oldwood.store;

import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;
import org.jspecify.annotations.Nullable;

/** The lines of a file as places in its bytes; a line's text is made when it is asked for. */
public final class JournalLines extends AbstractList<Journal.Line> implements RandomAccess {
    public static final JournalLines NONE = new JournalLines(new byte[0]);

    /** Number, start and end of each line. */
    private static final int EACH = 3;

    private final byte[] bytes;
    private int[] places = new int[64 * EACH];
    private int size;

    JournalLines(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Adds the line from {@code start} to before {@code end}, unless it is blank. */
    void add(int number, int start, int end) {
        if (isBlank(start, end)) {
            return;
        }
        if ((size + 1) * EACH > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        places[size * EACH] = number;
        places[size * EACH + 1] = start;
        places[size * EACH + 2] = end;
        size++;
    }

    private boolean isBlank(int start, int end) {
        for (int i = start; i < end; i++) {
            if (bytes[i] < 0) {
                return line(0, start, end).text().isBlank();
            }
            if (!Character.isWhitespace(bytes[i])) {
                return false;
            }
        }
        return true;
    }

    /** The line from {@code start} to before {@code end}, without a carriage return at its end. */
    Journal.Line line(int number, int start, int end) {
        int last = last(start, end);
        return new Journal.Line(number, new String(bytes, start, last - start, StandardCharsets.UTF_8));
    }

    private int last(int start, int end) {
        return end > start && bytes[end - 1] == '\r' ? end - 1 : end;
    }

    /** What reads the plain ones of these lines. */
    PlainLines plain(String file) {
        return new PlainLines(bytes, file);
    }

    /** The value of a line, if it is a plain one. */
    @Nullable
    Json read(int position, PlainLines plain) {
        int place = position * EACH;
        int start = places[place + 1];
        return plain.read(places[place], start, last(start, places[place + 2]));
    }

    @Override
    public Journal.Line get(int at) {
        if (at < 0 || at >= size) {
            throw new IndexOutOfBoundsException(at);
        }
        return line(places[at * EACH], places[at * EACH + 1], places[at * EACH + 2]);
    }

    @Override
    public int size() {
        return size;
    }
}

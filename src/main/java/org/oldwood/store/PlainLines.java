package org.oldwood.store;

import org.jspecify.annotations.Nullable;

/**
 * Reads lines that are written plainly, as we write them, in one pass over their bytes: an object
 * of texts without escapes, of numbers without sign or exponent, and of objects of the same. Of
 * anything else it makes nothing, and {@link JsonReader} looks and words what is wrong.
 */
final class PlainLines {
    /** An entry holds stems by age, and these hold numbers. */
    private static final int LEVELS = 2;

    /** So many digits are exact in a double, and so are the powers of ten that they are over. */
    private static final int MOST_DIGITS = 15;

    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14
    };

    /** Far from any limit on the length of a text or a key. */
    private static final int LONGEST = 10_000;

    private final byte[] bytes;
    private final String file;
    private final Words words;
    private final Words keys;
    private final Members.Gathering[] gatherings = new Members.Gathering[LEVELS];
    private int line;
    private int start;
    private int end;
    private int at;

    /** By how many the bytes before the next one are more than the characters that they spell. */
    private int surplus;

    PlainLines(byte[] bytes, String file) {
        this.bytes = bytes;
        this.file = file;
        this.words = new Words(bytes, false);
        this.keys = new Words(bytes, true);
        for (int i = 0; i < LEVELS; i++) {
            gatherings[i] = new Members.Gathering();
        }
    }

    /** The line from {@code start} to before {@code end}; nothing where it is not plain. */
    @Nullable Json read(int line, int start, int end) {
        if (end - start > LONGEST) {
            return null;
        }
        this.line = line;
        this.start = start;
        this.end = end;
        at = start;
        surplus = 0;
        if (next() != '{') {
            return null;
        }
        Json value = object(Place.of(file, line, column(), ""), 0);
        return next() < 0 && at == end ? value : null;
    }

    private int column() {
        return at - start + 1 - surplus;
    }

    /** The next byte that is no space, which stays the next; -1 where there is none. */
    private int next() {
        while (at < end) {
            byte here = bytes[at];
            if (here != ' ' && here != '\t') {
                return here;
            }
            at++;
        }
        return -1;
    }

    private @Nullable Json object(Place place, int level) {
        if (level == LEVELS) {
            return null;
        }
        Members.Gathering members = gatherings[level];
        members.clear();
        at++;
        if (next() == '}') {
            at++;
            return new Json.Obj(place, members.take());
        }
        while (member(place, level, members)) {
            int after = next();
            at++;
            if (after == '}') {
                return new Json.Obj(place, members.take());
            }
            if (after != ',') {
                return null;
            }
        }
        return null;
    }

    /** Reads a key and its value; false where they are not plain or the key is there already. */
    private boolean member(Place place, int level, Members.Gathering members) {
        if (next() != '"') {
            return false;
        }
        int keyStart = at + 1;
        int keyLength = text();
        if (keyLength < 0 || next() != ':') {
            return false;
        }
        at++;
        int first = next();
        String key = keys.of(keyStart, keyLength);
        Json value = value(first, place.of(key, line, column()), key, level);
        return value != null && members.putNew(key, value);
    }

    private @Nullable Json value(int first, Place place, String key, int level) {
        if (first == '"') {
            int from = at + 1;
            int length = text();
            if (length < 0) {
                return null;
            }
            return new Json.Text(
                    place, key.equals("id") ? words.fresh(from, length) : words.of(from, length));
        }
        return first == '{' ? object(place, level + 1) : number(place);
    }

    /** Goes past a text, and returns its length in bytes; -1 where it is not plain. */
    private int text() {
        int from = at + 1;
        int i = from;
        while (i < end) {
            byte here = bytes[i];
            if (here == '"') {
                at = i + 1;
                return i - from;
            }
            int length = here >= 0 ? 1 : characterLength(i);
            if (length == 0 || (here >= 0 && here < ' ') || here == '\\') {
                return -1;
            }
            surplus += length - 1;
            i += length;
        }
        return -1;
    }

    /**
     * How many bytes spell the character there, which takes two or three and is one {@code char}; 0
     * for any other, rare or wrong.
     */
    private int characterLength(int from) {
        int first = bytes[from] & 0xFF;
        if (first >= 0xC2 && first <= 0xDF) {
            return goesOn(from + 1) ? 2 : 0;
        }
        boolean three = first > 0xE0 && first <= 0xEF && first != 0xED;
        return three && goesOn(from + 1) && goesOn(from + 2) ? 3 : 0;
    }

    private boolean goesOn(int at) {
        return at < end && (bytes[at] & 0xC0) == 0x80;
    }

    private @Nullable Json number(Place place) {
        int from = at;
        long digits = digits(0);
        int whole = at - from;
        int decimals = 0;
        if (at < end && bytes[at] == '.') {
            at++;
            int point = at;
            digits = digits(digits);
            decimals = at - point;
            if (decimals == 0) {
                return null;
            }
        }
        if (whole == 0 || (whole > 1 && bytes[from] == '0') || whole + decimals > MOST_DIGITS) {
            return null;
        }
        return new Json.Num(place, digits / POWERS[decimals], words.of(from, at - from));
    }

    /** Goes past digits, which stand behind those {@code before}. */
    private long digits(long before) {
        long number = before;
        while (at < end && bytes[at] >= '0' && bytes[at] <= '9') {
            number = 10 * number + bytes[at] - '0';
            at++;
        }
        return number;
    }
}

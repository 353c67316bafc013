package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * A line of the memory just as {@link StateWriter} writes one, read in one pass over its octets and
 * without what a task that is still planned does not need. Of anything odd it makes nothing: the
 * reader that knows every form then looks, and words what is wrong.
 */
final class StateLine {
    private static final byte[] TASK = octets("{\"task\":\"");
    private static final byte[] SEQUENCE = octets("\",\"sequence\":");
    private static final byte[] CHANGED = octets(",\"changed\":\"");
    private static final byte[] HASH = octets("\",\"hash\":\"");
    private static final byte[] SHOWN = octets("\",\"shown\":\"");
    private static final byte[] TITLE = octets("\",\"title\":\"");
    private static final byte[] CATEGORY = octets("\",\"category\":\"");
    private static final byte[] PLACE = octets("\",\"place\":\"");
    private static final byte[] BED = octets("\",\"bed\":\"");
    private static final byte[] FIRST = octets("\",\"first\":\"");
    private static final byte[] LAST = octets("\",\"last\":\"");
    private static final byte[] BEST = octets("\",\"best\":\"");
    private static final byte[] STATE = octets("\",\"state\":\"");
    private static final byte[] DAY = octets("\",\"day\":\"");
    private static final byte[] PERCENT = octets("\",\"percent\":");
    private static final byte[] END = octets("\"}\n");
    private static final byte[] END_OF_NUMBER = octets("}\n");

    /** As {@link Item.State} has them. */
    private static final Item.State[] STATES = Item.State.values();

    private static final byte[][] STATE_NAMES = new byte[STATES.length][];

    static {
        for (int i = 0; i < STATES.length; i++) {
            STATE_NAMES[i] = octets(STATES[i].name());
        }
    }

    private static final int DAY_LENGTH = 10;

    private byte[] line = {};
    private int at;
    private int limit;
    private boolean isGood;

    private String identity = "";
    private Stamp stamp = new Stamp(0, Instant.EPOCH);
    private String changed = "";
    private long hash;
    private int shownFrom;
    private int shownTo;
    private Item.Days days = new Item.Days(LocalDate.EPOCH, LocalDate.EPOCH, LocalDate.EPOCH);
    private Item.State state = Item.State.OPEN;

    private static byte[] octets(String text) {
        return text.getBytes(US_ASCII);
    }

    /**
     * Reads the line that begins at {@code from}; returns where the next one begins, or -1 where it
     * is odd or does not end before {@code to}.
     */
    int read(byte[] octets, int from, int to) {
        line = octets;
        at = from;
        limit = to;
        isGood = true;
        expect(TASK);
        int start = at;
        boolean isPlain = text() && start < at;
        identity = isGood ? new String(line, start, at - start, US_ASCII) : "";
        expect(SEQUENCE);
        int sequence = number(9);
        expect(CHANGED);
        start = at;
        text();
        stamp(sequence, start);
        expect(HASH);
        readHash();
        expect(SHOWN);
        shownFrom = at;
        text();
        shownTo = at;
        words();
        readDays();
        readState();
        return isGood && isPlain ? at : -1;
    }

    private void expect(byte[] literal) {
        isGood = isGood && isNext(literal);
        at += literal.length;
    }

    private boolean skip(byte[] literal) {
        if (!isGood || !isNext(literal)) {
            return false;
        }
        at += literal.length;
        return true;
    }

    private boolean isNext(byte[] literal) {
        int end = at + literal.length;
        return end <= limit && Arrays.equals(line, at, end, literal, 0, literal.length);
    }

    /** Passes over a text without escapes, up to its closing mark; tells whether it is ASCII. */
    private boolean text() {
        boolean isPlain = true;
        for (; isGood && at < limit && line[at] != '"'; at++) {
            byte octet = line[at];
            isPlain &= octet >= 0;
            isGood = octet != '\\' && (octet < 0 || octet >= ' ');
        }
        isGood &= at < limit;
        return isPlain;
    }

    /** A whole number of at most so many digits, as JSON has it. */
    private int number(int digits) {
        int number = 0;
        int start = at;
        for (; isGood && at < limit && line[at] >= '0' && line[at] <= '9'; at++) {
            isGood = at - start < digits && (at == start || line[start] != '0');
            number = 10 * number + line[at] - '0';
        }
        isGood &= at > start;
        return number;
    }

    private void stamp(int sequence, int start) {
        if (!isGood) {
            return;
        }
        // nearly all lines have the stamp of the one before
        String time = new String(line, start, at - start, US_ASCII);
        boolean isSameTime = time.equals(changed);
        if (isSameTime && stamp.sequence() == sequence) {
            return;
        }
        try {
            stamp = new Stamp(sequence, isSameTime ? stamp.changed() : Stamp.parse(time));
            changed = time;
        } catch (DateTimeException e) {
            isGood = false;
        }
    }

    private void readHash() {
        int start = at;
        long number = 0;
        for (; isGood && at < limit && line[at] != '"'; at++) {
            int digit = Character.digit(line[at], 16);
            isGood = digit >= 0 && at - start < 16;
            number = number << 4 | digit;
        }
        isGood &= at > start;
        hash = number;
    }

    /** Title, craft, place and bed: those of the plan count. */
    private void words() {
        expect(TITLE);
        int start = at;
        text();
        isGood &= at > start;
        for (byte[] key : new byte[][] {CATEGORY, PLACE, BED}) {
            if (skip(key)) {
                text();
            }
        }
    }

    private void readDays() {
        expect(FIRST);
        LocalDate first = day();
        expect(LAST);
        LocalDate last = day();
        expect(BEST);
        LocalDate best = day();
        isGood = isGood && !best.isBefore(first) && !best.isAfter(last);
        if (isGood) {
            days = new Item.Days(first, last, best);
        }
    }

    private LocalDate day() {
        int start = at;
        int year = number(4);
        dash();
        int month = twoDigits();
        dash();
        int date = twoDigits();
        isGood = isGood && at - start == DAY_LENGTH;
        if (isGood) {
            try {
                return LocalDate.of(year, month, date);
            } catch (DateTimeException e) {
                isGood = false;
            }
        }
        return LocalDate.EPOCH;
    }

    private void dash() {
        isGood = isGood && at < limit && line[at] == '-';
        at++;
    }

    private int twoDigits() {
        isGood = isGood && at + 1 < limit;
        int number = 0;
        for (int i = 0; isGood && i < 2; i++) {
            int digit = line[at++] - '0';
            isGood = digit >= 0 && digit <= 9;
            number = 10 * number + digit;
        }
        return number;
    }

    private void readState() {
        expect(STATE);
        boolean isKnown = false;
        for (int i = 0; i < STATES.length && !isKnown; i++) {
            isKnown = skip(STATE_NAMES[i]);
            state = STATES[i];
        }
        isGood = isGood && isKnown;
        boolean hasDay = skip(DAY);
        if (hasDay) {
            day();
        }
        isGood = isGood && (hasDay || state != Item.State.DONE);
        if (skip(PERCENT)) {
            number(2);
            expect(END_OF_NUMBER);
        } else {
            expect(END);
        }
    }

    String identity() {
        return identity;
    }

    Stamp stamp() {
        return stamp;
    }

    long hash() {
        return hash;
    }

    Item.Days days() {
        return days;
    }

    Item.State state() {
        return state;
    }

    /** Whether these are the dates that were shown. */
    boolean isShown(byte[] octets, int length) {
        return Arrays.equals(line, shownFrom, shownTo, octets, 0, length);
    }
}

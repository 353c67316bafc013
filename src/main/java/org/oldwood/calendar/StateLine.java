package org.oldwood.calendar;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.oldwood.store.IsoDate;

/**
 * A line of the memory as {@link StateWriter} writes one, read without what a task that is still planned does not need.
 * Of anything odd it makes nothing: the reader that knows every form then looks, and words what is wrong.
 */
final class StateLine {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** In the order of the bits of what was seen; those after {@code state} may be absent. */
    private static final List<String> KEYS = List.of(
            "task",
            "sequence",
            "changed",
            "hash",
            "shown",
            "title",
            "first",
            "last",
            "best",
            "state",
            "category",
            "place",
            "bed",
            "day",
            "percent");

    private static final int NEEDED = (1 << (KEYS.indexOf("state") + 1)) - 1;
    private static final int DAY = 1 << KEYS.indexOf("day");

    /** Has a fault that the thorough reader will find. */
    private static final class Odd extends IOException {
        private static final long serialVersionUID = 1;

        Odd() {
            super("odd");
        }

        @Override
        public synchronized Throwable fillInStackTrace() {
            return this;
        }
    }

    private int seen;
    private String identity = "";
    private int sequence;
    private String changed = "";
    private Stamp stamp = new Stamp(0, Instant.EPOCH);
    private long hash;
    private String shown = "";
    private LocalDate first = LocalDate.EPOCH;
    private LocalDate last = LocalDate.EPOCH;
    private LocalDate best = LocalDate.EPOCH;
    private Item.State state = Item.State.OPEN;

    /** Reads the line from {@code from} to before {@code to}; false where it is odd. */
    boolean read(byte[] octets, int from, int to) {
        seen = 0;
        String before = changed;
        try (JsonParser parser = FACTORY.createParser(octets, from, to - from)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return false;
            }
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                parser.nextToken();
                take(key, parser);
            }
            if (parser.nextToken() != null || !isWhole()) {
                return false;
            }
            // nearly all lines have the stamp of the one before
            if (stamp.sequence() != sequence || !changed.equals(before)) {
                stamp = new Stamp(sequence, Stamp.parse(changed));
            }
            return true;
        } catch (IOException | DateTimeException | NumberFormatException e) {
            changed = "";
            return false;
        }
    }

    private boolean isWhole() {
        return (seen & NEEDED) == NEEDED
                && !best.isBefore(first)
                && !best.isAfter(last)
                && (state != Item.State.DONE || (seen & DAY) != 0);
    }

    private void take(String key, JsonParser value) throws IOException {
        int bit = 1 << KEYS.indexOf(key);
        // an unknown key has no bit, and one that is there twice has it already
        if (!KEYS.contains(key) || (seen & bit) != 0) {
            throw new Odd();
        }
        seen |= bit;
        switch (key) {
            case "task" -> identity = text(value);
            case "sequence" -> sequence = number(value, Integer.MAX_VALUE - 1);
            case "changed" -> changed = text(value);
            case "hash" -> hash = Long.parseUnsignedLong(text(value), 16);
            case "shown" -> shown = text(value);
            case "first" -> first = IsoDate.parse(text(value));
            case "last" -> last = IsoDate.parse(text(value));
            case "best" -> best = IsoDate.parse(text(value));
            case "state" -> state = state(text(value));
            case "day" -> IsoDate.parse(text(value));
            case "percent" -> number(value, 99);
            default -> text(value);
        }
    }

    private static String text(JsonParser value) throws IOException {
        String text = value.hasToken(JsonToken.VALUE_STRING) ? value.getText() : "";
        if (text.isBlank()) {
            throw new Odd();
        }
        return text;
    }

    private static int number(JsonParser value, int most) throws IOException {
        int number = value.hasToken(JsonToken.VALUE_NUMBER_INT) ? value.getIntValue() : -1;
        if (number < 0 || number > most) {
            throw new Odd();
        }
        return number;
    }

    private static Item.State state(String name) throws IOException {
        for (Item.State one : Item.State.values()) {
            if (one.name().equals(name)) {
                return one;
            }
        }
        throw new Odd();
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

    /** The dates that were shown. */
    String shown() {
        return shown;
    }

    Item.Days days() {
        return new Item.Days(first, last, best);
    }

    Item.State state() {
        return state;
    }
}

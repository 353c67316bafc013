package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes the memory of a garden's calendars line by line, as {@link CalendarState} reads it. Texts
 * that need no escape are copied; Jackson escapes the others.
 */
final class StateWriter {
    static final byte[] HEAD = octets("{\"calendarState\":1}");

    private static final int FLUSH_AT = 1 << 16;
    private static final byte[] TASK = octets("\n{\"task\":\"");
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
    private static final byte[] EVENT_UID = octets(",\"eventUid\":\"");
    private static final byte[] TODO_UID = octets(",\"todoUid\":\"");

    private final OutputStream out;
    private final Map<String, String> adopted;
    private byte[] buffer = new byte[FLUSH_AT + 4096];
    private int size;
    private @Nullable Stamp stamp;
    private byte[] changed = {};

    /**
     * @param adopted UIDs taken over from an older file, by {@link Uids#name}
     */
    StateWriter(OutputStream out, Map<String, String> adopted) {
        this.out = out;
        this.adopted = adopted;
        put(HEAD);
    }

    private static byte[] octets(String text) {
        return text.getBytes(US_ASCII);
    }

    /** What is known of a task already. */
    void line(Remembered task) throws IOException {
        begin(task.item(), task.stamp(), task.hash());
        text(task.shown());
        rest(task.item());
    }

    /** A task as it was written. */
    void line(Item item, Stamp itsStamp, long hash, Layout layout) throws IOException {
        begin(item, itsStamp, hash);
        room(Shown.MOST);
        size = Shown.put(buffer, size, item.days(), layout);
        rest(item);
    }

    void end() throws IOException {
        put('\n');
        out.write(buffer, 0, size);
        size = 0;
    }

    private void begin(Item item, Stamp itsStamp, long hash) throws IOException {
        put(TASK);
        text(item.identity());
        put(SEQUENCE);
        put(octets(Integer.toString(itsStamp.sequence())));
        put(CHANGED);
        put(changed(itsStamp));
        put(HASH);
        put(octets(Long.toHexString(hash)));
        put(SHOWN);
    }

    private byte[] changed(Stamp itsStamp) {
        if (!itsStamp.equals(stamp)) {
            stamp = itsStamp;
            changed = octets(Stamp.text(itsStamp.changed()));
        }
        return changed;
    }

    private void rest(Item item) throws IOException {
        put(TITLE);
        text(item.words().title());
        optional(CATEGORY, item.words().category());
        optional(PLACE, item.words().place());
        optional(BED, item.bed());
        day(FIRST, item.days().first());
        day(LAST, item.days().last());
        day(BEST, item.days().best());
        put(STATE);
        text(item.progress().state().name());
        if (item.progress().day().isPresent()) {
            day(DAY, item.progress().day().get());
        }
        if (item.progress().percent() > 0) {
            put(PERCENT);
            put(octets(Integer.toString(item.progress().percent())));
        } else {
            put('"');
        }
        adopted(EVENT_UID, item.identity(), Uids.EVENT);
        adopted(TODO_UID, item.identity(), Uids.TODO);
        put('}');
        if (size >= FLUSH_AT) {
            out.write(buffer, 0, size);
            size = 0;
        }
    }

    private void adopted(byte[] key, String identity, String kind) throws IOException {
        String uid = adopted.isEmpty() ? null : adopted.get(Uids.name(identity, kind));
        if (uid != null && !uid.isEmpty()) {
            put(key);
            text(uid);
            put('"');
        }
    }

    private void optional(byte[] key, String value) throws IOException {
        if (!value.isEmpty()) {
            put(key);
            text(value);
        }
    }

    private void day(byte[] key, LocalDate day) {
        put(key);
        room(DayOctets.MOST);
        size = DayOctets.iso(buffer, size, day);
    }

    private void text(String text) throws IOException {
        byte[] octets = text.getBytes(UTF_8);
        put(isPlain(octets) ? octets : quoted(text));
    }

    private static boolean isPlain(byte[] octets) {
        for (byte octet : octets) {
            // controls, and the first octets of characters of four
            if (octet == '"' || octet == '\\' || (octet < ' ' && octet >= (byte) 0xF0)) {
                return false;
            }
        }
        return true;
    }

    private static byte[] quoted(String text) throws IOException {
        ByteArrayOutputStream octets = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(octets)) {
            json.writeString(text);
        }
        return Arrays.copyOfRange(octets.toByteArray(), 1, octets.size() - 1);
    }

    private void put(byte[] octets) {
        room(octets.length);
        System.arraycopy(octets, 0, buffer, size, octets.length);
        size += octets.length;
    }

    private void put(char c) {
        room(1);
        buffer[size++] = (byte) c;
    }

    private void room(int more) {
        if (size + more > buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * (size + more));
        }
    }
}

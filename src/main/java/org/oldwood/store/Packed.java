package org.oldwood.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All bundled documents in one piece, read ahead when the program was built, so that a short run takes out only the
 * values that it asks for. {@link Packing} writes it and says how it is laid out. Whoever reads documents gets the same
 * values, at the same places, as from their JSON.
 */
final class Packed {
    static final int MARK = 0x4F4C4431;
    static final int TEXT = 0;
    static final int LATIN_TEXT = 1;
    static final int NUMBER = 2;
    static final int TRUE = 3;
    static final int FALSE = 4;
    static final int NOTHING = 5;
    static final int OBJECT = 6;
    static final int ARRAY = 7;

    /** The mark, where the keys begin, where the documents begin, and how long it all is. */
    static final int HEAD = 16;

    /** What kind of value, its line and its column; the value follows. */
    static final int BEFORE_VALUE = 5;

    /** A key and where its value is. */
    static final int MEMBER = 6;

    private final byte[] bytes;
    private final int keysAt;
    private final @Nullable String[] keys;
    private final Map<String, Integer> documents = new HashMap<>(512);

    private Packed(byte[] bytes) {
        this.bytes = bytes;
        keysAt = number(4) + 2;
        keys = new String[small(keysAt - 2)];
        int at = number(8);
        int count = small(at);
        at += 2;
        for (int i = 0; i < count; i++) {
            int length = small(at);
            documents.put(new String(bytes, at + 2, length, StandardCharsets.ISO_8859_1), number(at + 2 + length));
            at += 6 + length;
        }
    }

    /** What was packed; null where that is not what these are, or not all of it. */
    static @Nullable Packed of(byte[] bytes) {
        ByteBuffer head = ByteBuffer.wrap(bytes);
        boolean isWhole = bytes.length >= HEAD && head.getInt(0) == MARK && head.getInt(12) == bytes.length;
        return isWhole ? new Packed(bytes) : null;
    }

    /** The document of that name; null where there is none. */
    @Nullable
    Json read(String name) {
        Integer at = documents.get(name);
        return at == null ? null : value(at, Place.of(name, line(at), column(at), ""));
    }

    /** The value under a key, of an object at {@code place}. */
    Json member(int at, Place place, String key) {
        return value(at, place.of(key, line(at), column(at)));
    }

    /** The value of that number in a list at {@code place}. */
    Json item(int at, Place place, int index) {
        return value(at, place.of(index, line(at), column(at)));
    }

    private Json value(int at, Place place) {
        int value = at + BEFORE_VALUE;
        return switch (bytes[at]) {
            case TEXT -> new Json.Text(place, text(value));
            case LATIN_TEXT -> new Json.Text(place, latin(value));
            case NUMBER -> new Json.Num(place, Double.longBitsToDouble(bits(value)), latin(value + 8));
            case TRUE -> new Json.Bool(place, true);
            case FALSE -> new Json.Bool(place, false);
            case NOTHING -> new Json.Nothing(place);
            case OBJECT -> new Json.Obj(place, new PackedMembers(this, value, place));
            case ARRAY -> new Json.Arr(place, new PackedItems(this, value, place));
            default -> throw new IllegalStateException("no kind of value: " + bytes[at]);
        };
    }

    private int line(int at) {
        return small(at + 1);
    }

    private int column(int at) {
        return small(at + 3);
    }

    /** A key by its number; the same object as the text in a program, so that it is soon found. */
    String key(int number) {
        String known = keys[number];
        if (known == null) {
            known = text(number(keysAt + 4 * number)).intern();
            keys[number] = known;
        }
        return known;
    }

    private String text(int at) {
        return new String(bytes, at + 2, small(at), StandardCharsets.UTF_8);
    }

    private String latin(int at) {
        return new String(bytes, at + 2, small(at), StandardCharsets.ISO_8859_1);
    }

    /** A number of two octets, 0 to 65,535. */
    int small(int at) {
        return (bytes[at] & 0xFF) << 8 | (bytes[at + 1] & 0xFF);
    }

    /** A number of four octets. */
    int number(int at) {
        return bytes[at] << 24 | (bytes[at + 1] & 0xFF) << 16 | (bytes[at + 2] & 0xFF) << 8 | (bytes[at + 3] & 0xFF);
    }

    private long bits(int at) {
        return (long) number(at) << 32 | (number(at + 4) & 0xFFFF_FFFFL);
    }
}

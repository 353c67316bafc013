package org.oldwood.store;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Texts that come again and again in the bytes of a file, each made once. A text that came before
 * is found by its octets, so nothing is made only to be thrown away.
 */
final class Words {
    /** Longer ones hardly come again. */
    private static final int LONGEST = 64;

    /** Hash, start and length of the text in each slot. */
    private static final int EACH = 3;

    private final byte[] bytes;
    private final boolean interned;
    private @Nullable String[] texts = new String[256];
    private int[] places = new int[EACH * texts.length];
    private int used;

    /**
     * No texts yet.
     *
     * @param interned whether the texts are to be the same objects as those written in code
     */
    Words(byte[] bytes, boolean interned) {
        this.bytes = bytes;
        this.interned = interned;
    }

    /** A text that is to be made anew. */
    String fresh(int start, int length) {
        return new String(bytes, start, length, StandardCharsets.UTF_8);
    }

    /** The text of so many bytes from {@code start} on. */
    String of(int start, int length) {
        if (length > LONGEST) {
            return fresh(start, length);
        }
        int hash = length;
        for (int i = start; i < start + length; i++) {
            hash = 31 * hash + bytes[i];
        }
        int slot = slot(hash, start, length);
        String known = texts[slot];
        return known == null ? add(slot, hash, start, length) : known;
    }

    /** Where the text stands, or the free slot where it belongs. */
    private int slot(int hash, int start, int length) {
        int slot = (hash ^ hash >>> 15) & texts.length - 1;
        while (texts[slot] != null && !isAt(slot, hash, start, length)) {
            slot = slot + 1 & texts.length - 1;
        }
        return slot;
    }

    private boolean isAt(int slot, int hash, int start, int length) {
        int place = EACH * slot;
        if (places[place] != hash || places[place + 2] != length) {
            return false;
        }
        int there = places[place + 1];
        for (int i = 0; i < length; i++) {
            if (bytes[there + i] != bytes[start + i]) {
                return false;
            }
        }
        return true;
    }

    private String add(int slot, int hash, int start, int length) {
        String text = interned ? fresh(start, length).intern() : fresh(start, length);
        put(slot, text, hash, start, length);
        used++;
        if (2 * used > texts.length) {
            grow();
        }
        return text;
    }

    private void put(int slot, String text, int hash, int start, int length) {
        texts[slot] = text;
        places[EACH * slot] = hash;
        places[EACH * slot + 1] = start;
        places[EACH * slot + 2] = length;
    }

    private void grow() {
        @Nullable String[] before = texts;
        int[] at = places;
        texts = new String[2 * before.length];
        places = new int[EACH * texts.length];
        for (int i = 0; i < before.length; i++) {
            String text = before[i];
            if (text != null) {
                int hash = at[EACH * i];
                int start = at[EACH * i + 1];
                int length = at[EACH * i + 2];
                put(slot(hash, start, length), text, hash, start, length);
            }
        }
    }
}

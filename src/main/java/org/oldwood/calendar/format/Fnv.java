package org.oldwood.calendar.format;

/** FNV-1a in 64 bits, over characters. Tells contents apart; it keeps nobody out. */
public final class Fnv {
    public static final long START = 0xcbf29ce484222325L;
    public static final long PRIME = 0x100000001b3L;

    /** After every text, so that no two run together. */
    private static final char END = '\u001F';

    private Fnv() {}

    /** A whole text and its end. */
    public static long add(long hash, String text) {
        return end(characters(hash, text));
    }

    public static long characters(long hash, String text) {
        long h = hash;
        char[] characters = text.toCharArray();
        for (char c : characters) {
            h = (h ^ c) * PRIME;
        }
        return h;
    }

    /** Characters of one octet each, from {@code from} to before {@code to}. */
    public static long octets(long hash, byte[] octets, int from, int to) {
        long h = hash;
        for (int i = from; i < to; i++) {
            h = (h ^ (octets[i] & 0xFF)) * PRIME;
        }
        return h;
    }

    public static long character(long hash, char c) {
        return (hash ^ c) * PRIME;
    }

    public static long end(long hash) {
        return (hash ^ END) * PRIME;
    }
}

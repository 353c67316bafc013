package org.oldwood.calendar;

/** FNV-1a in 64 bits, over characters. Tells contents apart; it keeps nobody out. */
final class Fnv {
    static final long START = 0xcbf29ce484222325L;
    static final long PRIME = 0x100000001b3L;

    /** After every text, so that no two run together. */
    private static final char END = '\u001F';

    private Fnv() {}

    /** A whole text and its end. */
    static long add(long hash, String text) {
        return end(characters(hash, text));
    }

    static long characters(long hash, String text) {
        long h = hash;
        char[] characters = text.toCharArray();
        for (char c : characters) {
            h = (h ^ c) * PRIME;
        }
        return h;
    }

    /** Characters of one octet each, from {@code from} to before {@code to}. */
    static long octets(long hash, byte[] octets, int from, int to) {
        long h = hash;
        for (int i = from; i < to; i++) {
            h = (h ^ (octets[i] & 0xFF)) * PRIME;
        }
        return h;
    }

    static long character(long hash, char c) {
        return (hash ^ c) * PRIME;
    }

    static long end(long hash) {
        return (hash ^ END) * PRIME;
    }
}

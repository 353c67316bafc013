package org.oldwood.calendar;

import java.util.Arrays;

/**
 * The SHA-1 of short names. Source: FIPS 180-4, sections 5.1.1, 5.3.1 and 6.1.2. It serves to make
 * identities, not to keep secrets. The JDK has one too, but goes through all its providers of
 * security before it gives it out, which takes a short run longer than all its names.
 */
final class Sha1 {
    /** Octets of a hash. */
    static final int LENGTH = 20;

    private static final int BLOCK = 64;

    /** What follows a message at least: one octet of a mark, and eight of its length. */
    private static final int PADDING = 9;

    private final int[] words = new int[80];
    private final int[] state = new int[5];

    /** Room for a message of that many octets, with what follows it. */
    static int room(int octets) {
        return (octets + PADDING + BLOCK - 1) / BLOCK * BLOCK;
    }

    /**
     * Hashes the first octets of {@code message}, which must have {@link #room} for what follows
     * them: that part of it is written over.
     */
    void hash(byte[] message, int octets, byte[] hash) {
        int end = room(octets);
        Arrays.fill(message, octets, end, (byte) 0);
        message[octets] = (byte) 0x80;
        put(message, end - 4, octets << 3);
        state[0] = 0x67452301;
        state[1] = 0xEFCDAB89;
        state[2] = 0x98BADCFE;
        state[3] = 0x10325476;
        state[4] = 0xC3D2E1F0;
        for (int at = 0; at < end; at += BLOCK) {
            schedule(message, at);
            rounds();
        }
        for (int i = 0; i < 5; i++) {
            put(hash, 4 * i, state[i]);
        }
    }

    private static void put(byte[] to, int at, int word) {
        to[at] = (byte) (word >> 24);
        to[at + 1] = (byte) (word >> 16);
        to[at + 2] = (byte) (word >> 8);
        to[at + 3] = (byte) word;
    }

    private void schedule(byte[] message, int from) {
        int[] w = words;
        int at = from;
        for (int t = 0; t < 16; t++) {
            w[t] =
                    (message[at] << 24)
                            | ((message[at + 1] & 0xFF) << 16)
                            | ((message[at + 2] & 0xFF) << 8)
                            | (message[at + 3] & 0xFF);
            at += 4;
        }
        for (int t = 16; t < 80; t++) {
            int word = w[t - 3] ^ w[t - 8] ^ w[t - 14] ^ w[t - 16];
            w[t] = (word << 1) | (word >>> 31);
        }
    }

    private void rounds() {
        int[] w = words;
        int a = state[0];
        int b = state[1];
        int c = state[2];
        int d = state[3];
        int e = state[4];
        for (int t = 0; t < 80; t++) {
            int mixed;
            if (t < 20) {
                mixed = ((b & c) | (~b & d)) + 0x5A827999;
            } else if (t < 40) {
                mixed = (b ^ c ^ d) + 0x6ED9EBA1;
            } else if (t < 60) {
                mixed = ((b & c) | (b & d) | (c & d)) + 0x8F1BBCDC;
            } else {
                mixed = (b ^ c ^ d) + 0xCA62C1D6;
            }
            int next = ((a << 5) | (a >>> 27)) + mixed + e + w[t];
            e = d;
            d = c;
            c = (b << 30) | (b >>> 2);
            b = a;
            a = next;
        }
        state[0] += a;
        state[1] += b;
        state[2] += c;
        state[3] += d;
        state[4] += e;
    }
}

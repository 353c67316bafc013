package org.oldwood.calendar.format;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.DigestException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.UUID;

/**
 * Name-based UUIDs of version 5: the same namespace and name always give the same UUID, so an identity can be rebuilt
 * after a lost file. Source: RFC 4122, section 4.3 (SHA-1).
 */
public final class UuidV5 {
    private static final int VERSION_5 = 0x50;
    private static final int VARIANT_RFC_4122 = 0x80;

    /** How many octets of the name are the namespace; as many of the hash are the UUID. */
    private static final int NAMESPACE = 16;

    private static final byte[] DIGITS = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);

    /** As many octets as a UUID takes as text. */
    public static final int LENGTH = 36;

    private final MessageDigest sha1 = sha1();
    private final byte[] hash = new byte[20];
    private byte[] name = new byte[256];

    public UuidV5(UUID namespace) {
        ByteBuffer.wrap(name).putLong(namespace.getMostSignificantBits()).putLong(namespace.getLeastSignificantBits());
    }

    /** The UUID of {@code name}, as UTF-8, within {@code namespace}. */
    public static UUID of(UUID namespace, String name) {
        UuidV5 within = new UuidV5(namespace);
        within.hash(name);
        ByteBuffer hash = ByteBuffer.wrap(within.hash);
        return new UUID(hash.getLong(), hash.getLong());
    }

    /** Writes the UUID of a name as text; returns where the next octet goes. */
    public int put(byte[] to, int at, String ofName) {
        hash(ofName);
        int next = at;
        for (int i = 0; i < NAMESPACE; i++) {
            if (i == 4 || i == 6 || i == 8 || i == 10) {
                to[next++] = '-';
            }
            to[next++] = DIGITS[(hash[i] >> 4) & 0xF];
            to[next++] = DIGITS[hash[i] & 0xF];
        }
        return next;
    }

    private void hash(String ofName) {
        byte[] octets = ofName.getBytes(StandardCharsets.UTF_8);
        if (NAMESPACE + octets.length > name.length) {
            name = Arrays.copyOf(name, 2 * (NAMESPACE + octets.length));
        }
        System.arraycopy(octets, 0, name, NAMESPACE, octets.length);
        sha1.update(name, 0, NAMESPACE + octets.length);
        try {
            sha1.digest(hash, 0, hash.length);
        } catch (DigestException e) {
            throw new IllegalStateException("SHA-1 has twenty octets", e);
        }
        hash[6] = (byte) ((hash[6] & 0x0F) | VERSION_5);
        hash[8] = (byte) ((hash[8] & 0x3F) | VARIANT_RFC_4122);
    }

    private static MessageDigest sha1() {
        try {
            return MessageDigest.getInstance("SHA-1");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }
}

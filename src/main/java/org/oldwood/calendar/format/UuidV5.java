package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/**
 * Name-based UUIDs of version 5: the same namespace and name always give the same UUID, so an identity can be rebuilt
 * after a lost file. Source: RFC 4122, section 4.3 (SHA-1).
 */
public final class UuidV5 {
    private static final long VERSION = 0xF000L;
    private static final long VERSION_5 = 0x5000L;
    private static final long VARIANT = 0xC000_0000_0000_0000L;
    private static final long VARIANT_RFC_4122 = 0x8000_0000_0000_0000L;

    private UuidV5() {}

    /** The UUID of {@code name}, as UTF-8, within {@code namespace}. */
    public static UUID of(UUID namespace, String name) {
        try {
            MessageDigest sha1 = MessageDigest.getInstance("SHA-1");
            sha1.update(ByteBuffer.allocate(2 * Long.BYTES).putLong(namespace.getMostSignificantBits())
                    .putLong(namespace.getLeastSignificantBits()).flip());
            ByteBuffer hash = ByteBuffer.wrap(sha1.digest(name.getBytes(UTF_8)));
            return new UUID((hash.getLong() & ~VERSION) | VERSION_5, (hash.getLong() & ~VARIANT) | VARIANT_RFC_4122);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }
}

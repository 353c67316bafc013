package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Sha1Test {
    private final Sha1 sha1 = new Sha1();

    /** RFC 3174, section 7.3, tests 1 and 2. */
    @ParameterizedTest
    @CsvSource({
        "abc, a9993e364706816aba3e25717850c26c9cd0d89d",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
                + " 84983e441c3bd26ebaae4aa1f95129e5e54670f1"
    })
    void gives_the_published_hashes(String message, String hash) {
        assertThat(HexFormat.of().formatHex(hash(message.getBytes(US_ASCII)))).isEqualTo(hash);
    }

    @Test
    void gives_what_the_jdk_gives_at_every_length_of_a_few_blocks()
            throws NoSuchAlgorithmException {
        MessageDigest jdk = MessageDigest.getInstance("SHA-1");
        Random random = new Random(1);
        for (int length = 0; length < 300; length++) {
            byte[] message = new byte[length];
            random.nextBytes(message);

            assertThat(hash(message)).as("%d octets", length).isEqualTo(jdk.digest(message));
        }
    }

    private byte[] hash(byte[] message) {
        byte[] hash = new byte[Sha1.LENGTH];
        byte[] room = Arrays.copyOf(message, Sha1.room(message.length));
        Arrays.fill(room, message.length, room.length, (byte) -1);
        sha1.hash(room, message.length, hash);
        return hash;
    }
}

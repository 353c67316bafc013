package org.oldwood.calendar.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Source: RFC 9562 (which replaces RFC 4122), appendix A.4; namespace from appendix C of 4122. */
class UuidV5Test {
    private static final UUID DNS = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");

    @Test
    void gives_the_uuid_printed_in_the_standard() {
        UUID uuid = UuidV5.of(DNS, "www.example.com");

        assertThat(uuid).hasToString("2ed6657d-e927-568b-95e1-2665a8aea6a2");
        assertThat(uuid.version()).isEqualTo(5);
        assertThat(uuid.variant()).isEqualTo(2);
    }
}

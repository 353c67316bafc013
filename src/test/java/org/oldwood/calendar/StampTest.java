package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StampTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-25T00:00:00Z",
                "2026-02-28T23:59:59Z",
                "2024-02-29T06:07:08Z",
                "2026-11-25T00:00:00.250Z",
                "1999-12-31T00:00:01Z"
            })
    void times_are_written_and_read_as_the_jdk_does(String text) {
        Instant time = Instant.parse(text);

        assertThat(Stamp.parse(text)).isEqualTo(time);
        assertThat(Stamp.text(time)).isEqualTo(time.toString());
    }
}

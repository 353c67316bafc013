package org.oldwood.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Numbers are rounded as {@code String.format} rounds them, which is asked beside ours. */
class DecimalsTest {
    private static final long SEED = 20261125;

    @Test
    void numbers_are_written_as_the_jdk_formats_them() {
        Random random = new Random(SEED);
        for (int i = 0; i < 20_000; i++) {
            double value = i % 2 == 0 ? random.nextDouble() * 500 : random.nextInt(20_000) / 100.0;

            assertThat(Words.one(value)).isEqualTo(String.format(Locale.ROOT, "%.1f", value));
            assertThat(Words.whole(value)).isEqualTo(String.format(Locale.ROOT, "%.0f", value));
        }
    }
}

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

    @Test
    void halves_of_a_step_are_rounded_up() {
        assertThat(Words.nearest(2.5, 1)).isEqualTo(3);
        assertThat(Words.nearest(4.5, 1)).isEqualTo(5);
        assertThat(Words.nearest(1.125, 0.25)).isEqualTo(1.25);
        assertThat(Words.nearest(125, 10)).isEqualTo(130);
        assertThat(Words.nearest(0.15 * 30, 1)).isEqualTo(5);
        assertThat(Words.nearest(2.4, 1)).isEqualTo(2);
    }
}

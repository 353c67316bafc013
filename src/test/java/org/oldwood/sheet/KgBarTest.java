package org.oldwood.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KgBarTest {
    @Test
    void lies_from_its_least_to_its_most_on_the_scale_of_the_picture() {
        KgBar bar = new KgBar(1, 2, 4, 8);

        assertThat(bar.x()).isEqualTo("12.5%");
        assertThat(bar.width()).isEqualTo("37.5%");
        assertThat(bar.middle()).isEqualTo("25%");
        assertThat(bar.inShort()).isEqualTo("2.0 kg (1.0–4.0 kg)");
    }

    @Test
    void what_is_known_has_no_range() { assertThat(new KgBar(0.25, 0.25, 0.25, 1).inShort()).isEqualTo("0.25 kg"); }

    @Test
    void a_crop_of_nothing_lies_at_the_left_end() { assertThat(new KgBar(0, 0, 0, 0).middle()).isEqualTo("0%"); }
}

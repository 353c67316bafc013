package org.oldwood.cuttings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ParentHealthTest {
    private static final HealthSigns SIGNS = Crafted.propagation("blackcurrant").health();

    @Test
    void big_bud_bars_a_bush_and_says_what_to_do_instead() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("big-bud"), true, 4);

        assertThat(health.fit()).isFalse();
        assertThat(health.warnings().get(0).words()).contains("certified stock");
        assertThat(health.warnings().get(0).sources()).contains("plantwise-reversion");
    }

    @Test
    void a_poor_crop_is_a_warning_only() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("poor-crop"), true, 4);

        assertThat(health.fit()).isTrue();
        assertThat(health.warnings()).hasSize(1);
    }

    @Test
    void what_bars_stands_before_what_warns() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("poor-crop", "reversion"), true, 4);

        assertThat(health.fit()).isFalse();
        assertThat(health.warnings().get(0).words()).contains("reversion");
    }

    @Test
    void an_old_bush_that_nobody_looked_at_is_a_warning_and_a_young_one_is_not() {
        assertThat(ParentHealth.of(SIGNS, List.of(), false, 10).warnings()).hasSize(1);
        assertThat(ParentHealth.of(SIGNS, List.of(), false, 9.9).warnings()).isEmpty();
        assertThat(ParentHealth.of(SIGNS, List.of(), true, 30).warnings()).isEmpty();
    }
}

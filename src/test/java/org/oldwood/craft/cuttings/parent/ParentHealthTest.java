package org.oldwood.craft.cuttings.parent;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.cuttings.Crafted;

class ParentHealthTest {
    private static final HealthSigns SIGNS = Crafted.propagation("blackcurrant").health();

    @Test
    void big_bud_bars_a_bush_and_says_what_to_do_instead() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("big-bud"), 0, 4);

        assertThat(health.fit()).isFalse();
        assertThat(health.warnings().get(0).words()).contains("certified stock");
        assertThat(health.warnings().get(0).sources()).contains("plantwise-reversion");
    }

    @Test
    void a_poor_crop_is_a_warning_only() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("poor-crop"), 0, 4);

        assertThat(health.fit()).isTrue();
        assertThat(health.warnings()).hasSize(1);
    }

    @Test
    void what_bars_stands_before_what_warns() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("poor-crop", "reversion"), 0, 4);

        assertThat(health.fit()).isFalse();
        assertThat(health.warnings().get(0).words()).contains("reversion");
    }

    @Test
    void an_old_bush_that_nobody_looked_at_is_a_warning_and_a_young_one_is_not() {
        assertThat(ParentHealth.of(SIGNS, List.of(), 10, 10).warnings()).hasSize(1);
        assertThat(ParentHealth.of(SIGNS, List.of(), 9.9, 9.9).warnings()).isEmpty();
        assertThat(ParentHealth.of(SIGNS, List.of(), 0.5, 30).warnings()).isEmpty();
        assertThat(ParentHealth.of(SIGNS, List.of(), 12, 30).warnings().get(0).words()).contains("30 years old",
                "12 years back");
    }

    @Test
    void a_sick_neighbour_bars_a_bush_that_looks_sound() {
        ParentHealth health = ParentHealth.of(SIGNS, List.of("mildew"), 0, 4)
                .beside(List.of(new ParentHealth.Sick("bc-4", "big-bud", List.of("plantwise-reversion"))));

        assertThat(health.fit()).isFalse();
        assertThat(health.warnings()).hasSize(2);
        assertThat(health.warnings().get(0).words()).contains("bc-4", "certified stock");
    }
}

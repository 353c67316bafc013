package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** How the nitrogen of a year is shared among its dressings. */
class DressingsTest {
    private static final List<Timing.Dressing> HALVES = List.of(
            new Timing.Dressing("first", "at bud burst", 0.5), new Timing.Dressing("second", "in early June", 0.5));
    private static final List<Timing.Dressing> ONE = HALVES.subList(0, 1);

    private static Nutrients due(List<Timing.Dressing> dressings, int which, double need, double given, boolean begun) {
        Balance balance = Balance.of(new Nutrients(need, 4, 0, 0), new Nutrients(given, 0, 0, 0));
        return Dressings.due(dressings, which, balance, begun, 10);
    }

    @Test
    void halves_come_at_their_time_and_phosphate_with_the_first() {
        assertThat(due(HALVES, 0, 14, 0, false)).isEqualTo(new Nutrients(7, 4, 0, 0));
        assertThat(due(HALVES, 1, 14, 0, false)).isEqualTo(new Nutrients(7, 0, 0, 0));
        assertThat(due(HALVES, 1, 14, 7, true).n()).isEqualTo(7);
    }

    @Test
    void what_the_ceiling_cuts_off_goes_with_the_next() {
        assertThat(due(ONE, 0, 15, 0, false).n()).isEqualTo(10);
        assertThat(due(ONE, 1, 15, 0, false).n()).isEqualTo(5);
        assertThat(due(ONE, 1, 15, 10, true).n()).isEqualTo(5);
    }

    @Test
    void a_dressing_given_too_small_is_made_up_for() {
        assertThat(due(HALVES, 1, 14, 3, true).n()).isEqualTo(10);
        assertThat(due(HALVES, 1, 14, 14, true).n()).isZero();
    }

    @Property
    void two_dressings_never_bring_more_than_is_due(
            @ForAll @DoubleRange(min = 0, max = 40) double need, @ForAll @DoubleRange(min = 0, max = 40) double given) {
        double both = due(HALVES, 0, need, given, false).n()
                + due(HALVES, 1, need, given, false).n();
        double open = Math.max(0, need - given);

        assertThat(both).isLessThanOrEqualTo(open + 1e-9);
        if (open <= 10 || given == 0 && need <= 20) {
            assertThat(both).isCloseTo(open, within(1e-9));
        }
    }
}

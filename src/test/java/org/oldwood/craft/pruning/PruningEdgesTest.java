package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Numbers that run over more than one age; faults put into them went unnoticed before. */
class PruningEdgesTest {
    /** Two go in a winter: the one of seven years, and one of the three of six. */
    @Test
    void what_one_age_has_given_the_next_need_not_give() {
        SpurSchool red = (SpurSchool) Schools.school("redcurrant", "leg", "open-bush");

        Cut cut = red.winter(Bush.of(Stems.of(2, 2, 2, 2, 0, 3, 1)));

        assertThat(cut.of(7)).isEqualTo(1);
        assertThat(cut.of(6)).isEqualTo(1);
    }

    @Test
    void of_weak_shoots_alone_one_is_left_to_follow() {
        Cut cut = Schools.stool("blackcurrant", "half-young")
                .winter(Bush.of(Stems.of(3, 3, 3)).withFaults(Stems.of(0), Stems.of(3, 0, 0)));

        assertThat(cut.of(Why.WEAK)).isEqualTo(2);
        assertThat(cut.after().at(1)).isEqualTo(1);
    }
}

package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stems;

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

    @Test
    void a_bush_without_a_sound_stem_gets_a_word() {
        School way = Schools.stool("blackcurrant", "half-young");
        Stems all = Stems.of(2, 3, 1);

        assertThat(way.winter(Bush.of(all).withFaults(all, Stems.of(0, 0, 0))).remarks())
                .contains(Cut.Remark.NONE_SOUND);
        assertThat(way.winter(Bush.of(all).withFaults(Stems.of(2, 3, 0), Stems.of(0, 0, 0))).remarks())
                .doesNotContain(Cut.Remark.NONE_SOUND);
        assertThat(way.winter(Bush.of(Stems.of(0, 0))).remarks()).doesNotContain(Cut.Remark.NONE_SOUND);
    }

    @Test
    void counts_by_age_keep_what_was_not_counted_apart_from_none() {
        Stems gap = Stems.from(new TreeMap<>(Map.of(1, 2, 3, 0)), OptionalInt.of(3));

        assertThat(gap.oldest()).isEqualTo(3);
        assertThat(gap.isOpen()).isTrue();
        assertThat(gap.knows(2)).isFalse();
        assertThat(gap.knows(3)).isTrue();
        assertThat(gap.firstUnknown()).hasValue(2);
        assertThat(Stems.from(new TreeMap<>(), OptionalInt.of(1)).isOpen()).isFalse();
        assertThat(Stems.from(new TreeMap<>(Map.of(1, 2)), OptionalInt.empty()).isOpen()).isFalse();
        assertThatThrownBy(() -> Stems.from(new TreeMap<>(Map.of(1, -1)), OptionalInt.empty()))
                .hasMessageContaining("cannot be -1");
        assertThat(Stems.of(2, 1)).hasSameHashCodeAs(Stems.of(2, 1));
        assertThat(Stems.of(2, 1).hashCode()).isNotIn(0, Stems.of(1, 2).hashCode());
    }

    @ParameterizedTest
    @CsvSource({"0.5, half", "0.333, a third", "0.25, a quarter", "0.2, a fifth", "0.1667, a sixth", "0.143, 14 %"})
    void a_share_is_said_as_people_say_it(double share, String words) {
        assertThat(Measures.share(share)).isEqualTo(words);
    }

    @Test
    void one_of_several_is_said_without_an_s() {
        assertThat(Measures.inWords(new Figure(1, 1, 1, "buds", List.of(), Seen.READ, ""))).isEqualTo("1 bud");
        assertThat(Measures.inWords(new Figure(2, 1, 3, "buds", List.of(), Seen.READ, "")))
                .isEqualTo("2 buds (1 to 3)");
        assertThat(Measures.inWords(new Figure(1, 1, 1, "cm", List.of(), Seen.READ, ""))).isEqualTo("1 cm");
    }

    @Test
    void a_bush_cannot_have_more_faulty_stems_than_stems() {
        assertThatThrownBy(() -> Bush.of(Stems.of(2)).withFaults(Stems.of(2), Stems.of(1)))
                .hasMessageContaining("3 of 2");
    }

    @Test
    void a_bush_has_room_and_a_winter() {
        assertThatThrownBy(() -> Bush.of(Stems.of(2)).along(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bush.of(Stems.of(2)).inRenovationWinter(0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Bush.of(Stems.of(2)).inRenovationWinter(1).renovationWinter()).isEqualTo(1);
        assertThat(Bush.of(Stems.of(2)).withFaults(Stems.of(1), Stems.of(1)).weak()).isEqualTo(Stems.of(1));
    }
}

package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stems;

class CountedStemsTest {
    private static final Stems COUNT = Stems.parse("1=5,2=4,3=4,4+=3");

    @Test
    void a_count_says_the_same_in_its_own_season() { assertThat(counted(2027).in(2027)).isEqualTo(COUNT); }

    @Test
    void stems_age_by_one_a_season_and_the_new_shoots_are_not_known() {
        assertThat(counted(2027).in(2028)).hasToString("2=5,3=4,4=4,5+=3");
    }

    @Test
    void a_season_before_the_count_knows_nothing_of_what_grew_since() {
        assertThat(counted(2027).in(2025)).hasToString("0=4,1=4,2+=3");
        assertThat(counted(2027).in(2020)).hasToString("");
        assertThat(CountedStems.UNKNOWN.in(2027)).isEqualTo(Stems.NONE);
    }

    @Test
    void what_was_cut_is_gone_and_the_oldest_of_an_open_class_go_first() {
        assertThat(counted(2026).in(2027).less(Stems.parse("4+=5"))).hasToString("2=5,3=4,4=2,5+=0");
    }

    @Test
    void cutting_more_than_there_is_leaves_none() {
        assertThat(COUNT.less(Stems.parse("2=9"))).hasToString("1=5,2=0,3=4,4+=3");
        assertThat(Stems.NONE.less(Stems.parse("2=9"))).isEqualTo(Stems.NONE);
    }

    @Test
    void a_part_count_replaces_only_the_classes_that_it_names() {
        assertThat(counted(2027).in(2028).recounted(Stems.parse("1=7"))).hasToString("1=7,2=5,3=4,4=4,5+=3");
    }

    @Test
    void an_age_that_was_lumped_is_cut_from_the_open_class() {
        assertThat(COUNT.less(Stems.parse("6=1"))).hasToString("1=5,2=4,3=4,4+=2");
    }

    @Test
    void an_open_count_replaces_all_that_is_as_old_or_older() {
        Stems fresh = Stems.from(new TreeMap<>(Map.of(0, 2, 3, 6)), OptionalInt.of(3));

        assertThat(counted(2027).in(2028).recounted(fresh)).hasToString("0=2,2=5,3+=6");
    }

    @Test
    void what_is_cut_in_winter_are_the_classes_with_stems_less_this_summers_shoots() {
        assertThat(Stems.from(new TreeMap<>(Map.of(0, 2, 1, 4, 2, 3, 3, 0)), OptionalInt.of(3)).inWinter())
                .isEqualTo(Stems.of(4, 3));
        assertThat(COUNT.inWinter()).isEqualTo(COUNT);
        assertThat(Stems.of(0).inWinter()).isEqualTo(Stems.of(0));
        assertThat(Stems.parse("2=0").inWinter()).isEqualTo(Stems.NONE);
    }

    private static CountedStems counted(int year) { return new CountedStems(COUNT, year); }
}

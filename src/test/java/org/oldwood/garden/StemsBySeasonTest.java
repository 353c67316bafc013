package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StemsBySeasonTest {
    private static final StemAges COUNT = new StemAges(new TreeMap<>(Map.of(1, 5, 2, 4, 3, 4, 4, 3)),
            OptionalInt.of(4));

    @Test
    void a_count_says_the_same_in_its_own_season() {
        assertThat(StemsBySeason.counted(COUNT, 2027).ages(2027).inWords()).isEqualTo("1=5, 2=4, 3=4, 4+=3");
    }

    @Test
    void stems_age_by_one_a_season_and_the_new_shoots_are_not_known() {
        assertThat(StemsBySeason.counted(COUNT, 2027).ages(2028).inWords()).isEqualTo("2=5, 3=4, 4=4, 5+=3");
    }

    @Test
    void what_was_cut_is_gone_and_the_oldest_of_an_open_class_go_first() {
        StemsBySeason older = StemsBySeason.counted(COUNT, 2026);
        StemAges cut = new StemAges(new TreeMap<>(Map.of(4, 5)), OptionalInt.of(4));

        assertThat(older.without(cut, 2027).ages(2027).inWords()).isEqualTo("2=5, 3=4, 4=2, 5+=0");
    }

    @Test
    void cutting_more_than_there_is_leaves_none() {
        StemAges cut = new StemAges(new TreeMap<>(Map.of(2, 9)), OptionalInt.empty());

        assertThat(StemsBySeason.counted(COUNT, 2027).without(cut, 2027).ages(2027).counts()).containsEntry(2, 0);
    }

    @Test
    void a_part_count_replaces_only_the_classes_that_it_names() {
        StemAges fresh = new StemAges(new TreeMap<>(Map.of(1, 7)), OptionalInt.empty());

        assertThat(StemsBySeason.counted(COUNT, 2027).recounted(fresh, 2028).ages(2028).inWords())
                .isEqualTo("1=7, 2=5, 3=4, 4=4, 5+=3");
    }

    @Test
    void an_age_that_was_lumped_is_cut_from_the_open_class() {
        StemAges cut = new StemAges(new TreeMap<>(Map.of(6, 1)), OptionalInt.empty());

        assertThat(StemsBySeason.counted(COUNT, 2027).without(cut, 2027).ages(2027).inWords())
                .isEqualTo("1=5, 2=4, 3=4, 4+=2");
    }

    @Test
    void an_open_count_replaces_all_that_is_as_old_or_older() {
        StemAges fresh = new StemAges(new TreeMap<>(Map.of(0, 2, 3, 6)), OptionalInt.of(3));

        StemsBySeason later = StemsBySeason.counted(COUNT, 2027).recounted(fresh, 2028);

        assertThat(later.ages(2028).inWords()).isEqualTo("0=2, 2=5, 3+=6");
    }

    @Test
    void stems_that_are_not_the_same_can_be_told_apart() {
        StemsBySeason stems = StemsBySeason.counted(COUNT, 2027);
        StemAges closed = new StemAges(COUNT.counts(), OptionalInt.empty());

        assertThat(stems).isEqualTo(StemsBySeason.counted(COUNT, 2027))
                .hasToString(StemsBySeason.counted(COUNT, 2027).toString());
        for (StemsBySeason other : List.of(StemsBySeason.counted(COUNT, 2026), StemsBySeason.counted(closed, 2027),
                StemsBySeason.UNKNOWN)) {
            assertThat(other).isNotEqualTo(stems);
            assertThat(other.toString()).isNotEqualTo(stems.toString());
        }
    }
}

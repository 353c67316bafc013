package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stems;

/** What happens each winter: the plan, nothing, or what was done before. */
class HabitTest {
    private static Stems after(Stems bush, int winter, Stems... taken) {
        return Habit.asDone(List.of(taken)).cut(Bush.of(bush), winter).after();
    }

    @Test
    void past_winters_are_repeated_in_turn() {
        Stems bush = Stems.of(8, 5, 4, 3);
        Stems first = Stems.of(1);
        Stems second = Stems.of(0, 2);

        assertThat(after(bush, 0, first, second)).isEqualTo(Stems.of(7, 5, 4, 3));
        assertThat(after(bush, 1, first, second)).isEqualTo(Stems.of(8, 3, 4, 3));
        assertThat(after(bush, 2, first, second)).isEqualTo(Stems.of(7, 5, 4, 3));
    }

    @Test
    void a_lump_is_taken_from_the_oldest_down_to_its_age() {
        assertThat(after(Stems.of(8, 5, 4, 3, 2), 0, Stems.ofOpen(0, 0, 0, 4))).isEqualTo(Stems.of(8, 5, 4, 1, 0));
        assertThat(after(Stems.of(8, 5, 4, 3, 2), 0, Stems.ofOpen(0, 0, 0, 9))).isEqualTo(Stems.of(8, 5, 4, 0, 0));
        assertThat(after(Stems.of(8, 5), 0, Stems.ofOpen(0, 0, 0, 9))).isEqualTo(Stems.of(8, 5));
    }

    @Test
    void ages_that_the_bush_lumps_are_taken_from_its_open_class() {
        assertThat(after(Stems.ofOpen(8, 5, 4), 0, Stems.of(0, 1, 1, 1, 1))).isEqualTo(Stems.ofOpen(8, 4, 1));
        assertThat(after(Stems.ofOpen(8, 5, 4), 0, Stems.ofOpen(0, 0, 1, 1, 1))).isEqualTo(Stems.ofOpen(8, 5, 1));
        assertThat(after(Stems.ofOpen(8, 5, 4), 0, Stems.ofOpen(2, 3))).isEqualTo(Stems.ofOpen(6, 5, 1));
    }

    @Test
    void what_was_done_is_told_as_taken_and_leaves_the_rest() {
        Cut cut = Habit.asDone(List.of(Stems.of(2, 1))).cut(Bush.of(Stems.of(8, 5)), 0);

        assertThat(cut.taken()).containsExactly(new Cut.Taken(2, 1, Why.OLDEST), new Cut.Taken(1, 2, Why.OLDEST));
        assertThat(cut.youngToLeave()).isEqualTo(6);
        assertThat(cut.heldBack()).isZero();
        assertThat(cut.remarks()).isEmpty();
    }

    @Test
    void without_pruning_nothing_goes() {
        Cut cut = Habit.NONE.cut(Bush.of(Stems.of(8, 5, 9)), 3);

        assertThat(cut.taken()).isEmpty();
        assertThat(cut.after()).isEqualTo(Stems.of(8, 5, 9));
        assertThat(cut.heldBack()).isZero();
        assertThat(cut.youngToLeave()).isEqualTo(8);
    }

    @Test
    void a_bush_is_cut_down_once_and_then_built_by_the_other_way() {
        School down = Schools.stool("blackcurrant", "cut-down");
        School after = Schools.stool("blackcurrant", "half-young");
        Bush bush = Bush.of(Stems.of(8, 3, 3, 3));
        Habit habit = Habit.plan(down, after);

        assertThat(habit.cut(bush, 0).after().total()).isZero();
        assertThat(habit.cut(bush, 1)).isEqualTo(after.winter(bush));
        assertThat(Habit.plan(after, down).cut(bush, 1)).isEqualTo(after.winter(bush));
    }

    @Provide
    Arbitrary<Stems> stems() {
        Arbitrary<int[]> counts = Arbitraries.integers().between(0, 12).array(int[].class).ofMinSize(1).ofMaxSize(7);
        return counts.flatMap(of -> Arbitraries.of(true, false).map(o -> o ? Stems.ofOpen(of) : Stems.of(of)));
    }

    @Property
    void no_more_is_taken_than_was_taken_before_nor_than_there_is(@ForAll("stems") Stems bush,
            @ForAll("stems") Stems taken, @ForAll @IntRange(max = 9) int winter) {
        Cut cut = Habit.asDone(List.of(taken)).cut(Bush.of(bush), winter);

        assertThat(cut.number()).isLessThanOrEqualTo(Math.min(taken.total(), bush.total()));
        for (int age = 1; age <= bush.oldest(); age++) {
            assertThat(cut.after().at(age)).isBetween(0, bush.at(age));
        }
    }
}

package org.oldwood.sheet.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.Why;
import org.oldwood.crop.Stems;

class WoodTest {
    private static Wood wood(Stems before, int age, int out) {
        return Wood.of(new Cut(StageOfLife.BEARING, before, List.of(new Cut.Taken(age, out, Why.SPENT)),
                before.without(age, out), 0, 0, EnumSet.noneOf(Cut.Remark.class), java.util.Optional.empty()));
    }

    private static long hollow(Wood.Age age) {
        return age.now().stream().filter(it -> it.drawing().startsWith("out")).count();
    }

    @Test
    void each_stem_is_one_stroke_and_those_that_come_out_are_hollow() {
        Wood wood = wood(Stems.ofOpen(5, 4, 0, 3), 4, 2);

        assertThat(wood.each()).isEqualTo(1);
        assertThat(wood.ages()).extracting(Wood.Age::label).containsExactly("1", "2", "4+");
        assertThat(wood.ages()).extracting(it -> it.now().size()).containsExactly(5, 4, 3);
        assertThat(hollow(wood.ages().get(0))).isZero();
        assertThat(hollow(wood.ages().get(2))).isEqualTo(2);
        assertThat(wood.ages().get(2).then()).hasSize(1);
    }

    @Test
    void strokes_stand_apart_from_the_left_inside_the_picture() {
        Wood.Age age = wood(Stems.of(12), 1, 3).ages().get(0);

        assertThat(age.now()).extracting(Wood.Stroke::x).isSorted().doesNotHaveDuplicates();
        assertThat(age.now().get(11).x()).isLessThan(age.width());
    }

    @Test
    void a_long_row_is_drawn_by_fewer_strokes_and_none_is_lost() {
        Wood wood = wood(Stems.of(90, 1), 1, 45);

        assertThat(wood.each()).isGreaterThan(1);
        Wood.Age young = wood.ages().get(0);
        assertThat(young.now().size() * wood.each()).isBetween(90, 90 + wood.each());
        assertThat(young.width()).isLessThanOrEqualTo(290);
        assertThat(wood.ages().get(1).now()).hasSize(1);
        assertThat(wood.ages().get(1).then()).hasSize(1);
    }

    @Test
    void older_wood_is_drawn_otherwise_than_younger() {
        Wood wood = wood(Stems.of(1, 1, 1, 1, 1), 5, 1);

        assertThat(wood.ages()).extracting(it -> it.now().get(0).drawing()).containsExactly("stem1a", "stem2a",
                "stem3a", "stem4a", "out5a");
    }
}

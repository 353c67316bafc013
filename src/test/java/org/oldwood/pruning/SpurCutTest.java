package org.oldwood.pruning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Figure;

class SpurCutTest {
    private final SpurSchool red = (SpurSchool) Schools.school("redcurrant", "leg", "open-bush");
    private final SpurSchool goose =
            (SpurSchool) Schools.school("gooseberry", "leg", "quarter-tips");

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/spur-cut.csv", useHeadersInDisplayName = true)
    void its_measures_are_those_of_print(
            String id,
            String crop,
            String form,
            String school,
            String at,
            String unit,
            double least,
            double most,
            String source) {
        FormPruning pruning = Schools.form(crop, form);
        School way = pruning.school(school).orElseThrow();
        List<Figure> figures = new ArrayList<>();
        if (at.equals("frame")) {
            figures.add(((SpurSchool) way).branches());
        }
        for (StageOfLife life : StageOfLife.values()) {
            pruning.steps(way, at, life).forEach(step -> step.figure().ifPresent(figures::add));
        }

        assertThat(figures)
                .as("a measure in " + unit)
                .anySatisfy(
                        figure -> {
                            assertThat(figure.unit()).isEqualTo(unit);
                            assertThat(figure.low()).isCloseTo(least, within(1e-9));
                            assertThat(figure.high()).isCloseTo(most, within(1e-9));
                            assertThat(figure.sources()).contains(source);
                        });
    }

    @Test
    void a_frame_in_order_loses_nothing() {
        Cut cut = red.winter(Bush.of(Stems.of(2, 2, 2, 2, 2)).after(6));

        assertThat(cut.taken()).isEmpty();
        assertThat(cut.life()).isEqualTo(StageOfLife.BEARING);
        assertThat(cut.youngToLeave()).isEqualTo(2);
    }

    @Test
    void a_branch_past_its_age_goes_when_a_young_shoot_can_follow() {
        Stems stems = Stems.of(1, 2, 2, 2, 1, 2);

        assertThat(red.winter(Bush.of(stems)).taken()).containsExactly(new Taken(6, 1, Why.SPENT));
        Cut without = red.winter(Bush.of(stems.without(1, 1)));
        assertThat(without.taken()).isEmpty();
        assertThat(without.remarks()).contains(Cut.Remark.NO_SUCCESSOR);
        assertThat(without.heldBack()).isEqualTo(2);
    }

    @Test
    void at_most_two_of_the_oldest_branches_of_a_red_currant_go_in_a_winter() {
        // forum-redcurrant-neglected, american-fruit-culturist: one to three
        Cut cut = red.winter(Bush.of(Stems.of(5, 1, 1, 1, 1, 6)));

        assertThat(cut.of(6)).isEqualTo(2);
        assertThat(cut.life()).isEqualTo(StageOfLife.NEGLECTED);
        assertThat(cut.remarks()).contains(Cut.Remark.LIMITED);
    }

    @Test
    void at_most_a_sixth_of_a_gooseberry_goes_in_a_winter() {
        // swedish-gooseberry-renewal: for an even crop
        SpurSchool school = (SpurSchool) Schools.school("gooseberry", "leg", "fifteen-branches");

        Cut cut = school.winter(Bush.of(Stems.of(6, 3, 3, 3, 3, 6)));

        assertThat(cut.of(6)).isEqualTo(3);
    }

    @Test
    void branches_above_the_number_of_the_form_come_out_over_some_winters() {
        Cut cut = goose.winter(Bush.of(StemClass.parse("2+=13")));

        assertThat(cut.taken()).containsExactly(new Taken(2, 2, Why.CROWDED));
        assertThat(cut.after().from(2)).isEqualTo(11);
    }

    @Test
    void a_replaced_branch_also_lessens_the_surplus() {
        Cut cut = red.winter(Bush.of(Stems.of(1, 5, 5, 0, 0, 1)));

        assertThat(cut.of(Why.SPENT)).isEqualTo(1);
        assertThat(cut.of(Why.CROWDED)).isZero();
    }

    @Test
    void dead_branches_go_whatever_the_limit() {
        Bush bush = Bush.of(Stems.of(0, 8)).withFaults(Stems.of(0, 5), Stems.NONE);

        assertThat(red.winter(bush).of(Why.SICK)).isEqualTo(5);
    }

    @Test
    void the_frame_is_young_until_it_stands() {
        assertThat(red.winter(Bush.of(Stems.of(5)).after(0)).life())
                .isEqualTo(StageOfLife.FIRST_YEAR);
        assertThat(red.winter(Bush.of(Stems.of(5, 2)).after(3)).life())
                .isEqualTo(StageOfLife.YOUNG);
        assertThat(red.winter(Bush.of(Stems.of(0, 8)).after(4)).life())
                .isEqualTo(StageOfLife.BEARING);
    }

    @Property
    void no_more_than_the_limit_goes_and_the_frame_never_goes_whole(
            @ForAll @IntRange(max = 20) int young,
            @ForAll @IntRange(max = 20) int branches,
            @ForAll @IntRange(max = 20) int old) {
        Cut cut = red.winter(Bush.of(Stems.of(young, branches, 0, 0, 0, old)));

        int frame = branches + old;
        assertThat(cut.number()).isLessThanOrEqualTo(frame < 2 ? 0 : Math.max(1, frame / 4));
        assertThat(cut.number()).isLessThanOrEqualTo(2);
        assertThat(cut.of(1)).isZero();
        if (frame > 0) {
            assertThat(cut.after().from(2)).isPositive();
        }
    }
}

package org.oldwood.craft.pruning;

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
import org.oldwood.crop.Stems;

class SpurCutTest {
    private final SpurSchool red = (SpurSchool) Schools.school("redcurrant", "leg", "open-bush");
    private final SpurSchool goose = (SpurSchool) Schools.school("gooseberry", "leg", "quarter-tips");

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/spur-cut.csv", useHeadersInDisplayName = true)
    void its_measures_are_those_of_print(String id, String crop, String form, String school, String at, String unit,
            double least, double most, String source) {
        FormPruning pruning = Schools.form(crop, form);
        School way = pruning.school(school).orElseThrow();
        List<Figure> figures = new ArrayList<>();
        if (at.equals("frame")) { figures.add(((SpurSchool) way).branches()); }
        for (StageOfLife life : StageOfLife.values()) {
            pruning.steps(way, at, life).forEach(step -> step.figure().ifPresent(figures::add));
        }

        assertThat(figures).as("a measure in " + unit).anySatisfy(figure -> {
            assertThat(figure.unit()).isEqualTo(unit);
            assertThat(figure.low()).isCloseTo(least, within(1e-9));
            assertThat(figure.high()).isCloseTo(most, within(1e-9));
            assertThat(figure.sources()).contains(source);
        });
    }

    @Test
    void a_frame_in_order_loses_nothing() {
        Cut cut = red.winter(Bushes.after(6, Bush.of(Stems.of(2, 2, 2, 2, 2))));

        assertThat(cut.taken()).isEmpty();
        assertThat(cut.life()).isEqualTo(StageOfLife.BEARING);
        assertThat(cut.youngToLeave()).isEqualTo(2);
    }

    @Test
    void a_branch_past_its_age_goes_when_a_young_shoot_can_follow() {
        Stems stems = Stems.of(1, 2, 2, 2, 1, 2);

        assertThat(red.winter(Bush.of(stems)).taken()).containsExactly(new Cut.Taken(6, 1, Why.SPENT));
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
        Cut cut = goose.winter(Bush.of(Stems.parse("2+=13")));

        assertThat(cut.taken()).containsExactly(new Cut.Taken(2, 2, Why.CROWDED));
        assertThat(cut.after().from(2)).isEqualTo(11);
    }

    @Test
    void a_replaced_branch_also_lessens_the_surplus() {
        Cut cut = red.winter(Bush.of(Stems.of(1, 5, 5, 0, 0, 1)));

        // ten branches stay, none of them old: the young low shoot has no place
        assertThat(cut.taken()).containsExactly(new Cut.Taken(6, 1, Why.SPENT), new Cut.Taken(1, 1, Why.CROWDED));
    }

    @Test
    void dead_branches_go_whatever_the_limit() {
        Bush bush = Bush.of(Stems.of(0, 8)).withFaults(Stems.of(0, 5), Stems.NONE);

        assertThat(red.winter(bush).of(Why.SICK)).isEqualTo(5);
    }

    @Test
    void the_frame_is_young_until_it_stands() {
        assertThat(red.winter(Bushes.after(0, Bush.of(Stems.of(5)))).life()).isEqualTo(StageOfLife.PLANTING_YEAR);
        assertThat(red.winter(Bushes.after(3, Bush.of(Stems.of(5, 2)))).life()).isEqualTo(StageOfLife.YOUNG);
        assertThat(red.winter(Bushes.after(4, Bush.of(Stems.of(0, 8)))).life()).isEqualTo(StageOfLife.BEARING);
    }

    @Property
    void no_more_than_the_limit_goes_and_the_frame_never_goes_whole(@ForAll @IntRange(max = 20) int young,
            @ForAll @IntRange(max = 20) int branches, @ForAll @IntRange(max = 20) int old) {
        Cut cut = red.winter(Bush.of(Stems.of(young, branches, 0, 0, 0, old)));

        int frame = branches + old;
        int limit = frame < 2 ? 0 : Math.min(2, Math.max(1, frame / 4));
        int tooMany = Math.max(0, frame - 10);
        boolean crowded = tooMany >= red.staged().orElseThrow().from().is();
        assertThat(cut.staged().isPresent()).isEqualTo(crowded);
        assertThat(Schools.older(cut)).isLessThanOrEqualTo(crowded ? (tooMany + 2) / 3 : limit);
        assertThat(cut.after().at(1)).isLessThanOrEqualTo(Math.max(1, 10 - frame + Schools.older(cut) + limit));
        if (frame > 0) { assertThat(cut.after().from(2)).isPositive(); }
    }

    @Test
    void of_many_old_branches_no_more_go_than_shoots_can_follow() {
        // four are past their age; the limit is two, one shoot can follow
        Cut one = red.winter(Bush.of(Stems.of(1, 2, 1, 1, 0, 4)));
        Cut two = red.winter(Bush.of(Stems.of(2, 2, 1, 1, 0, 4)));

        assertThat(one.taken()).containsExactly(new Cut.Taken(6, 1, Why.SPENT));
        assertThat(one.heldBack()).isEqualTo(3);
        assertThat(one.remarks()).containsExactly(Cut.Remark.NO_SUCCESSOR);
        assertThat(two.taken()).containsExactly(new Cut.Taken(6, 2, Why.SPENT));
        assertThat(two.remarks()).containsExactly(Cut.Remark.LIMITED);
    }

    @Test
    void a_single_branch_never_goes_and_of_two_one_may() {
        assertThat(red.winter(Bush.of(Stems.of(3, 0, 0, 0, 0, 1))).taken()).isEmpty();
        assertThat(red.winter(Bush.of(Stems.of(3, 0, 0, 0, 0, 2))).of(6)).isEqualTo(1);
    }

    @Test
    void a_frame_with_ten_branches_is_not_too_full_and_with_eleven_it_is() {
        // rhs-redcurrant-pruning: eight to ten
        assertThat(red.winter(Bush.of(Stems.of(0, 10))).taken()).isEmpty();
        assertThat(red.winter(Bush.of(Stems.of(0, 11))).taken()).containsExactly(new Cut.Taken(2, 1, Why.CROWDED));
        assertThat(red.winter(Bush.of(Stems.of(0, 11))).life()).isEqualTo(StageOfLife.BEARING);
        assertThat(red.winter(Bush.of(Stems.of(0, 15))).life()).isEqualTo(StageOfLife.NEGLECTED);
        assertThat(red.winter(Bush.of(Stems.of(0, 15))).remarks()).containsExactly(Cut.Remark.LIMITED);
    }

    @Property
    void the_plan_brings_a_frame_of_up_to_fifteen_to_its_number_in_eight_winters_where_it_stays(
            @ForAll @IntRange(max = 4) int young, @ForAll @IntRange(max = 8) int branches,
            @ForAll @IntRange(max = 3) int old, @ForAll @IntRange(max = 1) int newShoots) {
        // fifteen branches are the most that print leaves on any bush (swedish-gooseberry-renewal)
        Stems stems = Stems.of(young, branches, 0, 0, 0, old);
        for (int winter = 0; winter < 14; winter++) {
            Stems after = red.winter(Bush.of(stems)).after();
            if (winter >= 8) { assertThat(after.from(2)).as("winter %s", winter).isBetween(0, 10); }
            stems = after.aged(newShoots, 60);
        }
    }

    @Test
    void sick_young_shoots_go_too_and_what_waits_is_less_by_what_was_replaced() {
        Bush bush = Bush.of(Stems.of(3, 3, 3, 0, 0, 4)).withFaults(Stems.of(1), Stems.NONE);

        Cut cut = red.winter(bush);

        assertThat(cut.taken()).containsExactly(new Cut.Taken(1, 1, Why.SICK), new Cut.Taken(6, 2, Why.SPENT));
        assertThat(cut.youngToLeave()).isEqualTo(2);
        assertThat(cut.heldBack()).isEqualTo(2);
    }

    @Test
    void after_its_first_season_a_frame_is_cut_and_a_cordon_never_loses_its_stem() {
        Bush first = Bush.of(Stems.of(1, 3)).withFaults(Stems.of(0, 1), Stems.NONE);
        School cordon = Schools.school("redcurrant", "cordon", "cordon");

        assertThat(red.winter(Bushes.after(0, first)).taken()).isEmpty();
        assertThat(red.winter(Bushes.after(1, first)).of(Why.SICK)).isEqualTo(1);
        int[] old = new int[Stems.OLDEST_CLASS];
        old[Stems.OLDEST_CLASS - 1] = 1;
        assertThat(cordon.winter(Bush.of(Stems.of(old))).taken()).isEmpty();
        old[Stems.OLDEST_CLASS - 1] = 2;
        assertThat(cordon.winter(Bush.of(Stems.of(old))).of(Why.SPENT)).isZero();
    }

    @Test
    void weak_and_low_branches_go_before_old_ones_and_beyond_the_limit() {
        Bush bush = Bush.of(Stems.of(0, 9)).withFaults(Stems.NONE, Stems.of(0, 3));

        assertThat(red.winter(bush).taken()).containsExactly(new Cut.Taken(2, 3, Why.WEAK));
    }

    @Test
    void a_cordon_of_three_arms_keeps_all_but_a_dead_one() {
        for (String crop : java.util.List.of("redcurrant", "gooseberry")) {
            School cordon = Schools.school(crop, "cordon", "cordon");
            Bush triple = Bush.of(Stems.of(1, 1, 0, 0, 0, 0, 1));

            assertThat(cordon.winter(triple).taken()).isEmpty();
            assertThat(cordon.winter(triple.withFaults(Stems.of(0, 1), Stems.NONE)).taken())
                    .containsExactly(new Cut.Taken(2, 1, Why.SICK));
        }
    }
}

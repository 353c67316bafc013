package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stems;

/** Each bound of the winter cut at its last stem on this side and the first beyond. */
class StoolRenewalBoundsTest {
    private final RenewalSchool halfYoung = Schools.stool("blackcurrant", "half-young");
    private final RenewalSchool sixAges = Schools.stool("blueberry", "six-ages");
    private final RenewalSchool twoOldest = Schools.stool("blueberry", "two-oldest");
    private final RenewalSchool oneToFour = Schools.stool("blueberry", "one-to-four");

    private static Cut cut(RenewalSchool school, String stems) { return school.winter(Bush.of(Stems.parse(stems))); }

    @Test
    void a_bush_too_young_for_pruning_keeps_all_its_shoots_and_says_so() {
        Cut young = sixAges.winter(Bushes.after(2, Bush.of(Stems.of(7, 5))));

        assertThat(young.taken()).isEmpty();
        assertThat(young.life()).isEqualTo(StageOfLife.YOUNG);
        assertThat(young.remarks()).containsExactly(Cut.Remark.TOO_YOUNG);
        assertThat(young.youngToLeave()).isEqualTo(7);
        assertThat(young.heldBack()).isZero();
        assertThat(sixAges.winter(Bushes.after(3, Bush.of(Stems.of(7, 5)))).taken()).isNotEmpty();
    }

    @Test
    void of_a_bush_cut_down_nothing_waits_and_nothing_is_to_be_left() {
        Cut down = cut(Schools.stool("blackcurrant", "cut-down"), "1=4,2=3,4+=5");

        assertThat(down.heldBack()).isZero();
        assertThat(down.youngToLeave()).isZero();
    }

    @Test
    void of_an_open_class_that_has_room_none_is_spent_and_it_is_not_remarked_on() {
        // two each of 4, 5 and 6 years have room in 4+
        assertThat(cut(sixAges, "1=2,2=2,3=2,4+=6").taken()).isEmpty();
        assertThat(cut(sixAges, "1=2,2=2,3=2,4+=6").remarks()).isEmpty();
        assertThat(cut(sixAges, "1=2,2=2,3=2,4=2,5=2,6=2,7=2").remarks()).isEmpty();
        Cut one = cut(sixAges, "1=20,2=2,3=2,4+=7");
        assertThat(one.of(4)).isEqualTo(1);
        assertThat(one.of(Why.SPENT)).isEqualTo(1);
        assertThat(one.remarks()).containsExactly(Cut.Remark.OPEN_CLASS);
        assertThat(one.life()).isEqualTo(StageOfLife.BEARING);
    }

    @Test
    void a_hard_way_leaves_one_older_stem_and_no_more() {
        Cut hard = cut(Schools.stool("blackcurrant", "two-year-wood"), "1=5,2=0,3=4");

        assertThat(hard.of(3)).isEqualTo(3);
        assertThat(hard.heldBack()).isEqualTo(1);
        assertThat(hard.remarks()).containsExactly(Cut.Remark.LAST_BEARING_WOOD);
    }

    @Test
    void a_bush_in_order_is_not_called_neglected() {
        // fruit-handbook-blueberry: the two oldest each year
        Cut inOrder = cut(twoOldest, "1=5,2=2,3=2,4=2,5=2,6=2,7=2,8=2");

        assertThat(inOrder.life()).isEqualTo(StageOfLife.BEARING);
        assertThat(inOrder.of(8)).isEqualTo(2);
        // many new shoots alone make no neglected bush
        assertThat(cut(oneToFour, "1=20,2=2,3=2,4=2,5=2").life()).isEqualTo(StageOfLife.BEARING);
        // the printed share is no more than the usual limit: nothing to bring back by
        assertThat(cut(sixAges, "1=2,2=2,3=2,4=2,5=2,6=2,7=4").life()).isEqualTo(StageOfLife.BEARING);
    }

    @Test
    void a_bush_that_fell_behind_loses_the_printed_share() {
        // fruit-handbook-blueberry: up to a fifth on a neglected bush; 19 and 20 canes
        Cut three = cut(twoOldest, "1=2,2=2,3=2,4=2,5=2,6=2,7=2,8+=5");
        Cut four = cut(twoOldest, "1=2,2=2,3=2,4=2,5=2,6=2,7=2,8+=6");

        assertThat(three.of(Why.SPENT)).isEqualTo(3);
        assertThat(three.heldBack()).isEqualTo(2);
        assertThat(three.life()).isEqualTo(StageOfLife.NEGLECTED);
        assertThat(three.remarks()).containsExactly(Cut.Remark.LIMITED);
        assertThat(four.of(Why.SPENT)).isEqualTo(4);
    }

    @Test
    void a_surplus_of_any_older_age_counts_as_fallen_behind() {
        // 28 canes: a fifth is five, one more than one-to-four
        Cut young = cut(oneToFour, "1=2,2=20,3=2,4=2,5=2");
        Cut old = cut(oneToFour, "1=2,2=2,3=2,4=2,5=20");

        assertThat(young.of(Why.CROWDED)).isEqualTo(5);
        assertThat(old.of(Why.CROWDED)).isEqualTo(5);
        assertThat(young.life()).isEqualTo(StageOfLife.NEGLECTED);
        assertThat(young.remarks()).containsExactly(Cut.Remark.LIMITED);
    }

    @Test
    void what_waits_is_told_as_limited_or_as_the_last_that_bears() {
        assertThat(cut(halfYoung, "1=5,2=3,3=3,4=3").remarks()).isEmpty();
        assertThat(cut(halfYoung, "1=5,2=2,3=0,4=5").remarks()).containsExactly(Cut.Remark.LIMITED);
        assertThat(cut(halfYoung, "1=8,4=1").remarks()).contains(Cut.Remark.LAST_BEARING_WOOD)
                .doesNotContain(Cut.Remark.LIMITED);
        // ten old ones and none that bears: a third goes, the rest may go later
        assertThat(cut(halfYoung, "1=8,4=10").remarks()).contains(Cut.Remark.LIMITED)
                .doesNotContain(Cut.Remark.LAST_BEARING_WOOD);
    }

    @Test
    void a_share_of_the_bush_is_taken_to_the_nearest_whole_stem() {
        RenewalSchool third = Schools.stool("blackcurrant", "oldest-third");

        assertThat(cut(third, "1=4,2=3,3=3").of(Why.OLDEST)).isEqualTo(3);
        assertThat(cut(third, "1=4,2=3,3=4").of(Why.OLDEST)).isEqualTo(4);
        assertThat(cut(third, "1=4,2=3,3=4").remarks()).isEmpty();
    }

    @Test
    void weak_and_damaged_stems_go_beyond_the_limit_the_oldest_of_them_first() {
        Bush bush = Bush.of(Stems.of(2, 2, 2, 2, 2, 2)).withFaults(Stems.NONE, Stems.of(0, 2, 2, 0, 0, 0));

        Cut cut = sixAges.winter(bush);

        // four of twelve, where a fifth of the sound ones might go
        assertThat(cut.taken()).containsExactly(new Cut.Taken(3, 2, Why.WEAK), new Cut.Taken(2, 2, Why.WEAK));
    }

    @Test
    void a_damaged_spent_stem_goes_first_and_leaves_the_limit_to_the_sound_spent_ones() {
        Bush bush = Bush.of(Stems.of(2, 2, 2, 2, 2, 2, 4)).withFaults(Stems.NONE, Stems.of(0, 0, 0, 0, 0, 0, 2));

        Cut cut = sixAges.winter(bush);

        assertThat(cut.taken()).containsExactly(new Cut.Taken(7, 2, Why.WEAK), new Cut.Taken(7, 2, Why.SPENT));
        assertThat(cut.remarks()).isEmpty();
    }

    @Test
    void damaged_wood_goes_from_a_bush_too_young_for_pruning() {
        // "only dead, damaged and diseased wood goes", as its step says
        Bush bush = Bushes.after(2, Bush.of(Stems.of(7, 5)).withFaults(Stems.of(1), Stems.of(0, 2)));

        assertThat(sixAges.winter(bush).taken()).containsExactly(new Cut.Taken(1, 1, Why.SICK),
                new Cut.Taken(2, 2, Why.WEAK));
    }

    @Test
    void of_older_stems_that_are_all_damaged_the_youngest_stays_with_a_word() {
        Bush bush = Bush.of(Stems.of(5, 2, 2)).withFaults(Stems.NONE, Stems.of(0, 2, 2));

        Cut cut = halfYoung.winter(bush);

        assertThat(cut.after()).isEqualTo(Stems.of(5, 1, 0));
        assertThat(cut.remarks()).contains(Cut.Remark.LAST_BEARING_WOOD);
    }

    @Test
    void a_bush_without_shoots_keeps_its_six_sound_stems() {
        assertThat(cut(halfYoung, "1=0,2=6").taken()).isEmpty();
        assertThat(cut(halfYoung, "1=0,2=6").remarks()).isEmpty();
    }

    @Test
    void a_bush_short_of_its_total_loses_its_spent_wood_and_none_of_its_best() {
        assertThat(cut(halfYoung, "1=1,2=6,3=2,4=2").taken()).containsExactly(new Cut.Taken(4, 2, Why.SPENT));
    }

    @Test
    void older_stems_stand_in_for_missing_shoots_up_to_the_printed_ten() {
        // omafra-black-currants: ten to twelve stems
        Cut cut = cut(halfYoung, "1=2,2=6,3=4");

        assertThat(cut.taken()).containsExactly(new Cut.Taken(3, 1, Why.CROWDED), new Cut.Taken(2, 1, Why.CROWDED));
        assertThat(cut.after().total()).isEqualTo(10);
    }

    @Test
    void shoots_that_were_not_counted_are_taken_as_many_as_the_way_keeps() {
        assertThat(cut(halfYoung, "2=6,3=4").taken()).containsExactly(new Cut.Taken(3, 1, Why.CROWDED),
                new Cut.Taken(2, 3, Why.CROWDED));
    }

    @Test
    void while_spent_wood_waits_no_sound_bearing_wood_is_thinned() {
        Cut cut = cut(halfYoung, "1=5,2=5,3=0,4=7");

        assertThat(cut.heldBack()).isPositive();
        assertThat(cut.of(2)).isZero();
        assertThat(cut(halfYoung, "1=5,2=7,3=0,4=2").of(2)).isEqualTo(2);
    }

    @Test
    void thinning_of_older_wood_keeps_to_the_limit_and_says_so() {
        // half of 22 is eleven; twelve stand above the printed ten
        Cut cut = cut(halfYoung, "1=1,2=21");

        assertThat(cut.of(2)).isEqualTo(11);
        assertThat(cut.remarks()).contains(Cut.Remark.LIMITED);
        assertThat(cut(halfYoung, "1=2,2=18").of(2)).isEqualTo(10);
        assertThat(cut(halfYoung, "1=2,2=18").remarks()).doesNotContain(Cut.Remark.LIMITED);
    }

    @Test
    void as_many_new_shoots_fill_up_as_are_missing() {
        assertThat(cut(halfYoung, "1=9,2=2,3=2").after().at(1)).isEqualTo(6);
        assertThat(cut(halfYoung, "1=9,2=2,3=2").remarks()).containsExactly(Cut.Remark.FILLED_UP);
        assertThat(cut(halfYoung, "1=9,2=3,3=2").after().at(1)).isEqualTo(5);
        assertThat(cut(halfYoung, "1=9,2=3,3=2").remarks()).isEmpty();
        assertThat(cut(halfYoung, "1=5,2=1,3=1").remarks()).isEmpty();
        assertThat(cut(halfYoung, "1=5,2=1,3=1").youngToLeave()).isEqualTo(8);
    }

    @Test
    void a_blueberry_without_older_canes_keeps_the_printed_eight_to_ten() {
        // oregon-reduced-pruning: the best 8-10 canes after cutting down
        assertThat(cut(sixAges, "1=14").after().at(1)).isBetween(8, 10);
        assertThat(cut(sixAges, "1=12").after().at(1)).isEqualTo(8);
        // fruit-handbook-blueberry: only the two strongest from the first year on
        assertThat(twoOldest.winter(Bushes.after(1, Bush.of(Stems.of(14)))).after().at(1)).isEqualTo(2);
    }

    @Test
    void a_cane_more_takes_the_place_of_one_sprout_and_not_of_many() {
        assertThat(cut(sixAges, "1=12,2=1").after()).isEqualTo(Stems.of(7, 1));
        assertThat(cut(sixAges, "1=12,7+=8").after()).isEqualTo(Stems.parse("1=7,7+=5"));
    }

    @Test
    void of_thirty_canes_as_many_stay_as_print_wants_in_all() {
        // fruit-handbook-blueberry: 12-16 canes; handley-blueberry: 6-12
        assertThat(cut(twoOldest, "1=30").after().total()).isEqualTo(12);
        assertThat(cut(oneToFour, "1=30").after().total()).isEqualTo(6);
    }

    @Test
    void a_jostaberry_of_shoots_alone_keeps_the_printed_ten() {
        // german-retail-young-shoots: about ten young ones
        assertThat(cut(Schools.stool("jostaberry", "two-ages"), "1=40").after().total()).isEqualTo(10);
    }

    @Test
    void where_all_that_fruited_goes_the_young_ones_bear_and_none_older_need_stay() {
        RenewalSchool out = Schools.stool("blackcurrant", "fruited-out");

        assertThat(cut(out, "1=8,2=5").after()).isEqualTo(Stems.of(8, 0));
        assertThat(cut(out, "1=0,2=5").after()).isEqualTo(Stems.of(0, 1));
        assertThat(out.bearing(Stems.of(8))).isEqualTo(8);
    }

    @Test
    void stems_fold_at_the_spent_age_or_where_no_age_is_told_at_four() {
        assertThat(halfYoung.fold()).isEqualTo(4);
        assertThat(sixAges.fold()).isEqualTo(7);
        assertThat(Schools.stool("blackcurrant", "fruited-out").fold()).isEqualTo(2);
        assertThat(Schools.stool("blackcurrant", "oldest-third").fold()).isEqualTo(4);
        assertThat(sixAges.staged().orElseThrow().sources()).contains("tribune-blueberry-2017", "oldwood");
        assertThat(halfYoung.bearing(Stems.of(5, 3, 3, 2))).isEqualTo(6);
    }

    @Test
    void each_craft_tells_what_bears_and_what_is_too_young() {
        School row = Schools.form("summer-raspberry", "cane-row").school();
        School down = Schools.form("autumn-raspberry", "cane-row").school();
        School frame = Schools.form("redcurrant", "leg").school();

        assertThat(row.bearing(Stems.of(8, 3))).isEqualTo(8);
        assertThat(down.bearing(Stems.of(8, 3))).isEqualTo(11);
        assertThat(frame.bearing(Stems.of(2, 3, 4))).isEqualTo(7);
        assertThat(row.isTooYoung(Bushes.after(0, Bush.of(Stems.of(8))))).isTrue();
        assertThat(row.isTooYoung(Bushes.after(1, Bush.of(Stems.of(8))))).isFalse();
        assertThat(Pruning.read(Schools.CROPS.get("blackcurrant")).orElseThrow().looks("spent"))
                .extracting(Pruning.WoodLook::of).containsOnly("spent");
    }

    @Test
    void a_way_with_sick_stems_beyond_the_count_is_refused() {
        org.assertj.core.api.Assertions
                .assertThatThrownBy(() -> Bush.of(Stems.of(1)).withFaults(Stems.of(1), Stems.of(1)))
                .hasMessage("more sick and weak stems of age 1 than there are stems: 2 of 1");
    }

    @Test
    void a_third_of_a_young_bush_is_not_taken_of_its_best_stems() {
        RenewalSchool third = Schools.stool("blackcurrant", "oldest-third");

        assertThat(cut(third, "1=13,2=7").taken()).isEmpty();
        assertThat(cut(third, "1=13,2=6,3=1").taken()).containsExactly(new Cut.Taken(3, 1, Why.OLDEST));
    }

    @Test
    void a_weak_renewer_loses_no_more_stems_than_came_up() {
        RenewalSchool third = Schools.stool("blackcurrant", "oldest-third");

        Cut weak = cut(third, "1=1,2=2,3=5,4+=4");

        assertThat(weak.taken()).containsExactly(new Cut.Taken(4, 2, Why.OLDEST));
        assertThat(weak.remarks()).containsExactly(Cut.Remark.NO_MORE_THAN_CAME_UP);
    }

    @Test
    void a_renovation_is_under_way_until_nothing_waits() {
        Bush second = Bush.of(Stems.of(8, 5, 5, 4)).inRenovationWinter(2);
        Bush last = Bush.of(Stems.of(8, 5, 5, 4)).inRenovationWinter(3);

        assertThat(halfYoung.winter(second).of(Why.SPENT)).isEqualTo(2);
        assertThat(halfYoung.winter(second).life()).isEqualTo(StageOfLife.NEGLECTED);
        assertThat(halfYoung.winter(last).of(Why.SPENT)).isEqualTo(4);
        assertThat(halfYoung.winter(last).life()).isEqualTo(StageOfLife.BEARING);
    }

    @Test
    void the_limit_of_a_season_is_at_least_one_stem_and_at_most_the_printed_number() {
        assertThat(sixAges.limit().of(4)).isEqualTo(1);
        assertThat(sixAges.limit().of(10)).isEqualTo(2);
        assertThat(sixAges.limit().of(14)).isEqualTo(2);
        assertThat(sixAges.limit().of(15)).isEqualTo(3);
        assertThat(sixAges.limit().of(60)).isEqualTo(4);
        assertThat(sixAges.renovation().orElseThrow().limit(60)).isEqualTo(12);
        assertThat(sixAges.renovation().orElseThrow().limit(3)).isEqualTo(1);
        assertThat(halfYoung.renovation().orElseThrow().limit(60)).isZero();
    }

    @Test
    void a_winters_part_of_a_renovation_is_equal_over_the_winters_that_remain() {
        Renovation three = halfYoung.renovation().orElseThrow();

        assertThat(three.part(10, 20, 1)).isEqualTo(4);
        assertThat(three.part(6, 20, 2)).isEqualTo(3);
        assertThat(three.part(3, 20, 3)).isEqualTo(3);
        assertThat(three.part(5, 20, 9)).isEqualTo(5);
        // forum-redcurrant-neglected, american-fruit-culturist: two or three at once
        Renovation red = Schools.stool("redcurrant", "equal-ages").renovation().orElseThrow();
        assertThat(red.part(4, 12, 1)).isEqualTo(2);
        assertThat(red.part(12, 12, 1)).isEqualTo(3);
    }
}

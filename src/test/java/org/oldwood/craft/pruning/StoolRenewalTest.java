package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Stems;

class StoolRenewalTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/stool-renewal.csv", useHeadersInDisplayName = true)
    void cuts_as_its_source_says(String id, String crop, String school, Integer season, String counted, String out,
            String stay, String total, String source) {
        Stems stems = Stems.parse(counted);
        Bush bush = season == null ? Bush.of(stems) : Bushes.after(season, Bush.of(stems));

        Cut cut = Schools.stool(crop, school).winter(bush);

        check(out, stems, cut, true);
        check(stay, stems, cut, false);
        if (total != null) { assertThat(cut.after().total()).as("all that stay").satisfies(n -> within(n, total)); }
        assertThat(Schools.DOCUMENTS.problems().list()).isEmpty();
    }

    private static void check(String expected, Stems stems, Cut cut, boolean out) {
        if (expected == null) { return; }
        for (String part : expected.split(";")) {
            String name = part.substring(0, part.indexOf('='));
            int age = Integer.parseInt(name.replace("+", ""));
            assertThat(stems.label(age)).isEqualTo(name);
            int number = out ? cut.of(age) : cut.after().at(age);
            assertThat(number).as((out ? "out of age " : "stay of age ") + name)
                    .satisfies(n -> within(n, part.substring(part.indexOf('=') + 1)));
        }
    }

    private static void within(int number, String range) {
        String[] ends = range.split("-");
        assertThat(number).isBetween(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/stem-targets.csv", useHeadersInDisplayName = true)
    void a_bush_grown_by_a_school_has_the_stems_that_its_source_wants(String id, String crop, String school, int age,
            int least, int most, String source) {
        RenewalSchool way = Schools.stool(crop, school);
        Stems stems = Stems.of(9);
        for (int season = 1; season <= 14; season++) {
            stems = way.winter(Bushes.after(season, Bush.of(stems))).after();
            if (season < 14) { stems = stems.aged(9, way.fold()); }
        }

        assertThat(age == 0 ? stems.total() : stems.at(age)).isBetween(least, most);
        List<String> sources = new ArrayList<>(way.teaching().sources());
        way.keep().ifPresent(keep -> sources.addAll(keep.sources()));
        assertThat(sources).contains(source);
    }

    @Test
    void a_neglected_blackcurrant_gives_a_third_each_winter_for_three_winters() {
        // unpruned-blackcurrant-2009: one third out each winter for three years
        RenewalSchool school = Schools.stool("blackcurrant", "half-young");
        Bush bush = Bush.of(Stems.ofOpen(6, 0, 0, 10));
        List<Integer> parts = new ArrayList<>();
        for (int winter = 1; winter <= 3; winter++) {
            Cut cut = school.winter(bush.inRenovationWinter(winter));
            parts.add(cut.of(Why.SPENT));
            assertThat(cut.life()).isEqualTo(winter < 3 ? StageOfLife.NEGLECTED : StageOfLife.BEARING);
            bush = Bush.of(cut.after().aged(8, 4));
        }

        assertThat(parts).containsExactly(4, 3, 3);
    }

    @Test
    void nearly_all_old_wood_never_goes_in_one_winter() {
        // spectator-blackcurrants-1953: it went in one summer, and the next crop was small
        Cut cut = Schools.stool("blackcurrant", "half-young").winter(Bush.of(Stems.of(2, 0, 0, 12)));

        assertThat(cut.of(4)).isBetween(1, 6);
        assertThat(cut.heldBack()).isEqualTo(12 - cut.of(4));
        assertThat(cut.life()).isEqualTo(StageOfLife.NEGLECTED);
    }

    @Test
    void sick_stems_go_all_and_first_and_do_not_count_towards_the_limit() {
        Bush bush = Bush.of(Stems.of(5, 3, 3, 3)).withFaults(Stems.of(1, 2, 2, 0), Stems.of(0, 0, 0));

        Cut cut = Schools.stool("blackcurrant", "half-young").winter(bush);

        assertThat(cut.of(Why.SICK)).isEqualTo(5);
        assertThat(cut.taken().get(0).why()).isEqualTo(Why.SICK);
        assertThat(cut.after().at(1)).isEqualTo(4);
        // three spent against two that bear: two go, one waits
        assertThat(cut.of(Why.SPENT)).isEqualTo(2);
        assertThat(cut.heldBack()).isEqualTo(1);
    }

    @Test
    void weak_stems_go_before_sound_ones_of_their_age_are_thinned() {
        Bush bush = Bush.of(Stems.of(8, 5, 3)).withFaults(Stems.NONE, Stems.of(2, 1));

        Cut cut = Schools.stool("blackcurrant", "half-young").winter(bush);

        assertThat(cut.taken()).containsExactlyInAnyOrder(new Cut.Taken(2, 1, Why.WEAK), new Cut.Taken(1, 2, Why.WEAK),
                new Cut.Taken(2, 1, Why.CROWDED), new Cut.Taken(1, 1, Why.CROWDED));
    }

    @Test
    void the_last_young_shoot_stays_though_weak() {
        Bush bush = Bush.of(Stems.of(2, 3, 3)).withFaults(Stems.NONE, Stems.of(2));

        assertThat(Schools.stool("blackcurrant", "half-young").winter(bush).after().at(1)).isEqualTo(1);
    }

    @Test
    void the_only_old_stem_stays_until_others_bear() {
        Cut cut = Schools.stool("blackcurrant", "half-young").winter(Bush.of(Stems.of(6, 0, 0, 1)));

        assertThat(cut.of(4)).isZero();
        assertThat(cut.remarks()).contains(Cut.Remark.LAST_BEARING_WOOD);
    }

    @Test
    void a_bush_short_of_stems_keeps_more_new_ones() {
        Cut cut = Schools.stool("blackcurrant", "half-young").winter(Bush.of(Stems.of(9, 1, 1)));

        assertThat(cut.after().at(1)).isEqualTo(8);
        assertThat(cut.remarks()).contains(Cut.Remark.FILLED_UP);
    }

    @Test
    void new_shoots_that_were_not_counted_are_told_as_a_number_to_leave() {
        Stems stems = Stems.parse("2=4,3=3,4+=2");

        Cut cut = Schools.stool("blackcurrant", "half-young").winter(Bush.of(stems));

        assertThat(cut.of(4)).isEqualTo(2);
        assertThat(cut.of(1)).isZero();
        assertThat(cut.youngToLeave()).isBetween(5, 6);
        assertThat(cut.remarks()).contains(Cut.Remark.NOT_ALL_COUNTED);
    }

    @Test
    void of_an_open_class_below_the_spent_age_only_the_surplus_is_spent() {
        // two each of 4, 5 and 6 years have room in an open class from 4 up
        Cut cut = Schools.stool("blueberry", "six-ages").winter(Bush.of(Stems.parse("1=2,2=2,3=2,4+=8")));

        assertThat(cut.of(4)).isEqualTo(2);
        assertThat(cut.remarks()).contains(Cut.Remark.OPEN_CLASS);
    }

    @Test
    void cutting_down_takes_everything_and_says_so() {
        Cut cut = Schools.stool("gooseberry", "cut-down").winter(Bush.of(Stems.of(2, 1, 0, 9)));

        assertThat(cut.after().total()).isZero();
        assertThat(cut.of(Why.CUT_DOWN)).isEqualTo(12);
        assertThat(cut.remarks()).contains(Cut.Remark.HARD);
    }

    @Test
    void a_bush_in_its_first_season_is_only_cut_as_at_planting() {
        Cut cut = Schools.stool("blackcurrant", "half-young").winter(Bushes.after(0, Bush.of(Stems.of(20))));

        assertThat(cut.taken()).isEmpty();
        assertThat(cut.life()).isEqualTo(StageOfLife.PLANTING_YEAR);
    }

    @Test
    void the_stage_of_life_follows_season_and_wood() {
        RenewalSchool school = Schools.stool("blackcurrant", "half-young");

        assertThat(school.winter(Bushes.after(3, Bush.of(Stems.of(8, 6, 5)))).life()).isEqualTo(StageOfLife.YOUNG);
        assertThat(school.winter(Bushes.after(4, Bush.of(Stems.of(8, 3, 3, 3)))).life()).isEqualTo(StageOfLife.BEARING);
        assertThat(school.winter(Bushes.after(9, Bush.of(Stems.of(8, 3, 0, 4)))).life())
                .isEqualTo(StageOfLife.NEGLECTED);
        // three old stems beside two that bear are soon put right
        assertThat(school.winter(Bushes.after(9, Bush.of(Stems.of(8, 2, 0, 3)))).life()).isEqualTo(StageOfLife.BEARING);
    }
}

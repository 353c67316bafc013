package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Stems;

class CaneCutTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/cane-cut.csv", useHeadersInDisplayName = true)
    void keeps_as_many_canes_as_its_source_says(String id, String crop, String school, double metres, String canes,
            int fruitedOut, double stayLeast, double stayMost, String source) {
        String form = Schools.CROPS.get(crop).form();
        School way = Schools.school(crop, form, school);

        Cut cut = way.winter(Bush.of(Stems.parse(canes)).along(metres));

        assertThat(cut.of(Why.FRUITED)).isEqualTo(fruitedOut);
        assertThat((double) cut.after().total()).isBetween(stayLeast, stayMost);
        assertThat(way.teaching().sources()).contains(source);
    }

    @Test
    void sick_canes_go_first_then_weak_then_the_surplus() {
        Bush bush = Bush.of(Stems.of(20, 6)).along(1).withFaults(Stems.of(3, 0), Stems.of(4, 0));

        Cut cut = Schools.school("summer-raspberry", "cane-row", "eight-a-metre").winter(bush);

        assertThat(cut.of(Why.SICK)).isEqualTo(3);
        assertThat(cut.of(Why.WEAK)).isEqualTo(4);
        assertThat(cut.of(Why.CROWDED)).isEqualTo(20 - 3 - 4 - 8);
        assertThat(cut.after()).isEqualTo(Stems.of(8, 0));
    }

    @Test
    void one_cane_stays_though_all_are_weak() {
        Bush bush = Bush.of(Stems.of(3)).withFaults(Stems.NONE, Stems.of(3));

        assertThat(Schools.school("summer-raspberry", "cane-row", "eight-a-metre").winter(bush).after().total())
                .isEqualTo(1);
    }

    @Test
    void new_canes_that_were_not_counted_are_told_as_a_number_to_leave() {
        Bush bush = Bush.of(Stems.parse("2=14")).along(2.5);

        Cut cut = Schools.school("summer-raspberry", "cane-row", "eight-a-metre").winter(bush);

        assertThat(cut.youngToLeave()).isEqualTo(20);
        assertThat(cut.of(2)).isEqualTo(14);
        assertThat(cut.remarks()).contains(Cut.Remark.NOT_ALL_COUNTED);
    }

    @Test
    void a_row_just_planted_is_left_alone() {
        Cut cut = Schools.school("autumn-raspberry", "cane-row", "all-down")
                .winter(Bushes.after(0, Bush.of(Stems.of(9))));

        assertThat(cut.taken()).isEmpty();
        assertThat(cut.life()).isEqualTo(StageOfLife.PLANTING_YEAR);
    }

    @Test
    void a_density_becomes_a_number_by_length_only_where_it_is_per_metre() {
        assertThat(CaneSchool.canes(8, "canes/m", 3)).isEqualTo(24);
        assertThat(CaneSchool.canes(8, "canes/m", 0.45)).isEqualTo(4);
        assertThat(CaneSchool.canes(5, "canes/plant", 3)).isEqualTo(5);
        assertThat(CaneSchool.canes(8, "canes/m", 0.01)).isEqualTo(1);
    }

    @Property
    void all_fruited_canes_go_and_never_too_many_new_ones_stay(@ForAll @IntRange(min = 0, max = 200) int young,
            @ForAll @IntRange(min = 0, max = 200) int fruited,
            @ForAll @DoubleRange(min = 0.3, max = 12) double metres) {
        CaneSchool school = (CaneSchool) Schools.school("summer-raspberry", "cane-row", "eight-a-metre");

        Cut cut = school.winter(Bush.of(Stems.of(young, fruited)).along(metres));

        assertThat(cut.after().at(2)).isZero();
        assertThat(cut.after().at(1)).isEqualTo(Math.min(young, (int) Math.round(8 * metres)));
    }
}

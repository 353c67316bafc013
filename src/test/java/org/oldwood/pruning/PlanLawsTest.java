package org.oldwood.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Following the plan for eight seasons brings a bush to the structure that its school aims at,
 * where it stays. What holds for which start is told in docs/method-pruning.md.
 */
class PlanLawsTest {
    private static final int SEASONS = 8;

    /**
     * More canes than the fullest cultivar of a trial had on average, 22.3 (missouri-kaps-2010); up
     * to here a fifth a year is enough for eight seasons.
     */
    private static final int MOST_CANES = 30;

    @Provide
    Arbitrary<Stems> anyBush() {
        Arbitrary<int[]> counts =
                Arbitraries.integers().between(0, 14).array(int[].class).ofMinSize(1).ofMaxSize(10);
        return counts.flatMap(
                of -> Arbitraries.of(true, false).map(o -> o ? Stems.ofOpen(of) : Stems.of(of)));
    }

    @Provide
    Arbitrary<Stems> upToThirtyCanes() {
        return Arbitraries.integers()
                .between(1, 10)
                .flatMap(
                        classes ->
                                Arbitraries.integers()
                                        .between(0, classes - 1)
                                        .array(int[].class)
                                        .ofMaxSize(MOST_CANES)
                                        .flatMap(ages -> openOrNot(counts(classes, ages))));
    }

    private static int[] counts(int classes, int[] ages) {
        int[] counts = new int[classes];
        for (int age : ages) {
            counts[age]++;
        }
        return counts;
    }

    private static Arbitrary<Stems> openOrNot(int[] of) {
        return Arbitraries.of(true, false).map(open -> open ? Stems.ofOpen(of) : Stems.of(of));
    }

    @Property
    void any_currant_gooseberry_or_jostaberry_reaches_its_target_and_stays(
            @ForAll("anyBush") Stems start, @ForAll @IntRange(min = 3, max = 16) int newShoots) {
        for (String crop : List.of("blackcurrant", "redcurrant", "gooseberry", "jostaberry")) {
            for (School way : Schools.form(crop, "stool").schools()) {
                if (way instanceof RenewalSchool school && aims(school)) {
                    Stems after = plan(start, school, newShoots, SEASONS);

                    assertThat(after).as(school.id()).satisfies(s -> at(s, school, newShoots));
                    assertThat(plan(start, school, newShoots, SEASONS + 1)).isEqualTo(after);
                }
            }
        }
    }

    @Property
    void a_blueberry_of_up_to_thirty_canes_reaches_its_target_and_stays(
            @ForAll("upToThirtyCanes") Stems start,
            @ForAll @IntRange(min = 2, max = 6) int newCanes) {
        for (String id : List.of("six-ages", "two-oldest", "one-to-four")) {
            RenewalSchool school = Schools.stool("blueberry", id);
            Stems after = plan(start, school, newCanes, SEASONS);

            assertThat(after).as(id).satisfies(s -> at(s, school, newCanes));
            assertThat(plan(start, school, newCanes, SEASONS + 1)).isEqualTo(after);
        }
    }

    @Property
    void any_blueberry_that_is_cut_down_and_built_anew_reaches_its_target_and_stays(
            @ForAll("anyBush") Stems start, @ForAll @IntRange(min = 2, max = 12) int newCanes) {
        RenewalSchool school = Schools.stool("blueberry", "six-ages");
        Stems cutDown = Schools.stool("blueberry", "cut-down").winter(Bush.of(start)).after();
        Stems grown = cutDown.aged(newCanes, school.fold());

        Stems after = plan(grown, school, newCanes, SEASONS - 1);

        assertThat(after).satisfies(s -> at(s, school, newCanes));
        assertThat(plan(grown, school, newCanes, SEASONS)).isEqualTo(after);
    }

    @Property
    void a_blueberry_of_any_size_loses_a_fifth_a_year_until_it_is_in_order(
            @ForAll("anyBush") Stems start, @ForAll @IntRange(min = 2, max = 6) int newCanes) {
        for (String id : List.of("six-ages", "two-oldest", "one-to-four")) {
            RenewalSchool school = Schools.stool("blueberry", id);
            // 140 canes x 0.8^12 = 10
            assertThat(plan(start, school, newCanes, SEASONS + 12))
                    .as(id)
                    .satisfies(s -> at(s, school, newCanes));
        }
    }

    @Test
    void the_fullest_bush_measured_is_brought_back_with_all_its_canes_old() {
        // missouri-kaps-2010: 22.3 basal canes on average of the fullest cultivar
        RenewalSchool school = Schools.stool("blueberry", "six-ages");

        assertThat(plan(Stems.ofOpen(0, 0, 0, 0, 0, 0, 22), school, 2, SEASONS))
                .satisfies(s -> at(s, school, 2));
    }

    @Property
    void a_row_of_canes_is_at_its_target_after_one_winter_and_stays(
            @ForAll @IntRange(min = 32, max = 200) int young,
            @ForAll @IntRange(max = 200) int fruited) {
        School school = Schools.school("summer-raspberry", "cane-row", "eight-a-metre");
        Bush row = Bush.of(Stems.of(young, fruited)).along(4);

        Stems after = school.winter(row).after();
        Stems next = school.winter(Bush.of(after.aged(40, school.fold())).along(4)).after();

        assertThat(after.at(1)).isEqualTo(32);
        assertThat(after.from(2)).isZero();
        assertThat(next.at(1)).isEqualTo(32);
        assertThat(next.from(2)).isZero();
    }

    private static boolean aims(RenewalSchool school) {
        return school.keep().isPresent() && school.spentAge().isPresent();
    }

    /** As many of each age as the school aims at, or as many as grow. */
    private static void at(Stems stems, RenewalSchool school, int newShoots) {
        Keep keep = school.keep().orElseThrow();
        for (int age = 1; age <= Math.max(stems.oldest(), keep.stems().size()); age++) {
            assertThat(stems.at(age))
                    .as("age %s of %s", age, stems)
                    .isEqualTo(Math.min(newShoots, keep.of(age)));
        }
    }

    private static Stems plan(Stems start, RenewalSchool school, int newShoots, int seasons) {
        Cut cut = school.winter(Bush.of(start));
        int renovation = 1;
        for (int season = 0; season < seasons; season++) {
            boolean underWay = cut.life() == StageOfLife.NEGLECTED && cut.heldBack() > 0;
            renovation = underWay ? renovation + 1 : 1;
            Stems grown = cut.after().aged(newShoots, school.fold());
            cut = school.winter(Bush.of(grown).inRenovationWinter(renovation));
        }
        return cut.after();
    }
}

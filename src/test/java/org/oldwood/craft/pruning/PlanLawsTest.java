package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Stems;

/**
 * Following the plan for ten winters brings a plant of any crop and from any start to the structure that its way of
 * pruning aims at, where it stays. What was measured is told in docs/method-pruning.md.
 */
class PlanLawsTest {
    private static final int SEASONS = 10;

    /** Ways that keep every age to a number. */
    private static final List<RenewalSchool> AIMING = Schools.renewals().stream().filter(PlanLawsTest::aims).toList();

    /** Up to 14 stems of each age; or up to 140 stems, all of one age or two. */
    @Provide
    Arbitrary<Stems> anyBush() {
        Arbitrary<int[]> spread = Arbitraries.integers().between(0, 14).array(int[].class).ofMinSize(1).ofMaxSize(10);
        Arbitrary<int[]> lumped = Arbitraries.integers().between(0, 70).array(int[].class).ofSize(2)
                .flatMap(number -> Arbitraries.integers().between(1, 12).array(int[].class).ofSize(2)
                        .map(age -> lumped(age, number)));
        return Arbitraries.oneOf(spread, lumped)
                .flatMap(of -> Arbitraries.of(true, false).map(open -> open ? Stems.ofOpen(of) : Stems.of(of)));
    }

    private static int[] lumped(int[] age, int[] number) {
        int[] counts = new int[Math.max(age[0], age[1])];
        counts[age[0] - 1] += number[0];
        counts[age[1] - 1] += number[1];
        return counts;
    }

    @Property
    void any_stool_of_any_crop_reaches_its_target_within_ten_winters_and_stays(@ForAll("anyBush") Stems start,
            @ForAll @IntRange(min = 1, max = 16) int newShoots) {
        for (RenewalSchool way : AIMING) {
            if (newShoots >= enough(way)) {
                Stems after = plan(start, way, newShoots, SEASONS);

                assertThat(after).as(way.id()).satisfies(it -> at(it, way, newShoots));
                assertThat(plan(start, way, newShoots, SEASONS + 1)).isEqualTo(after);
            }
        }
    }

    /** With fewer new shoots one old stem a winter may go, and as many grow old. */
    private static int enough(RenewalSchool way) {
        return way.spent() <= 3 ? 3 : way.staged().isPresent() ? 2 : 1;
    }

    @Property
    void with_one_or_two_new_shoots_a_year_nothing_but_four_old_stems_at_most_is_too_many(
            @ForAll("anyBush") Stems start, @ForAll @IntRange(min = 1, max = 2) int newShoots) {
        for (RenewalSchool way : AIMING) {
            Stems after = plan(start, way, newShoots, SEASONS);

            for (int age = 1; age < way.spent(); age++) {
                assertThat(after.at(age)).as("%s, age %s of %s", way.id(), age, after)
                        .isEqualTo(Math.min(newShoots, way.keep().orElseThrow().of(age)));
            }
            assertThat(after.from(way.spent())).as(way.id()).isLessThanOrEqualTo(4);
        }
    }

    @Property
    void any_bush_that_is_cut_down_and_built_anew_reaches_its_target_and_stays(@ForAll("anyBush") Stems start,
            @ForAll @IntRange(min = 3, max = 12) int newShoots) {
        for (String crop : List.of("blueberry", "blackcurrant", "gooseberry")) {
            RenewalSchool then = (RenewalSchool) Schools.form(crop, "stool").school();
            Stems down = Schools.stool(crop, "cut-down").winter(Bush.of(start)).after();
            Stems grown = down.aged(newShoots, then.fold());

            Stems after = plan(grown, then, newShoots, SEASONS - 1);

            assertThat(after).as(crop).satisfies(it -> at(it, then, newShoots));
            assertThat(plan(grown, then, newShoots, SEASONS)).isEqualTo(after);
        }
    }

    @Property
    void below_its_bound_of_crowding_a_bush_needs_no_more_than_a_fifth_a_year(@ForAll("anyBush") Stems start,
            @ForAll @IntRange(min = 2, max = 6) int newCanes) {
        for (RenewalSchool way : staged()) {
            Stems after = plan(start, withoutStages(way), newCanes, SEASONS);
            boolean crowded = way.winter(Bush.of(start)).staged().isPresent();

            if (!crowded) { assertThat(after).as(way.id()).satisfies(it -> at(it, way, newCanes)); }
        }
    }

    @Test
    void the_fullest_bush_measured_is_brought_back_with_all_its_canes_old() {
        // missouri-kaps-2010: 22.3 basal canes on average of the fullest cultivar
        RenewalSchool way = Schools.stool("blueberry", "six-ages");

        assertThat(plan(Stems.ofOpen(0, 0, 0, 0, 0, 0, 22), way, 2, SEASONS)).satisfies(it -> at(it, way, 2));
    }

    @Property
    void any_frame_has_no_branch_too_many_after_ten_winters_and_keeps_so(@ForAll("anyBush") Stems start,
            @ForAll @IntRange(max = 6) int newShoots) {
        for (SpurSchool way : frames()) {
            Bush bush = Bush.of(start);
            for (int winter = 0; winter < SEASONS + 6; winter++) {
                Cut cut = way.winter(bush);
                if (winter >= SEASONS) {
                    assertThat(cut.after().from(2)).as("%s, winter %s", way.id(), winter)
                            .isLessThanOrEqualTo((int) way.branches().high());
                }
                bush = next(bush, cut, way, newShoots);
            }
        }
    }

    @Property
    void below_its_bound_of_crowding_a_frame_needs_no_more_than_the_limit_of_a_winter(@ForAll("anyBush") Stems start,
            @ForAll @IntRange(max = 5) int newShoots) {
        for (SpurSchool way : frames()) {
            Assume.that(way.staged().isPresent() || start.from(2) < 30);
            if (way.winter(Bush.of(start)).staged().isPresent()) { continue; }
            Bush bush = Bush.of(start);
            for (int winter = 0; winter < SEASONS; winter++) {
                Cut cut = way.winter(bush);
                assertThat(cut.staged()).isEmpty();
                bush = next(bush, cut, way, newShoots);
            }
            assertThat(way.winter(bush).after().from(2)).as(way.id()).isLessThanOrEqualTo((int) way.branches().high());
        }
    }

    @Property
    void any_row_of_canes_is_at_its_target_after_one_winter_and_stays(@ForAll @IntRange(max = 300) int young,
            @ForAll @IntRange(max = 300) int fruited, @ForAll @IntRange(max = 80) int newCanes) {
        for (CaneSchool way : canes()) {
            Bush row = Bush.of(Stems.of(young, fruited)).along(4);
            int target = way.target(row).total();

            Stems after = way.winter(row).after();
            Stems then = way.winter(Bush.of(after.aged(newCanes, way.fold())).along(4)).after();

            assertThat(after.at(1)).as(way.id()).isEqualTo(Math.min(young, target));
            assertThat(after.from(2)).isZero();
            assertThat(then.at(1)).as(way.id()).isEqualTo(Math.min(newCanes, target));
            assertThat(then.from(2)).isZero();
        }
    }

    @Test
    void the_law_has_nothing_to_hold_for_where_print_names_no_structure() {
        assertThat(Schools.renewals().stream().filter(way -> !aims(way))).extracting(RenewalSchool::id).containsOnly(
                "oldest-third", "late-start", "cut-down", "two-at-most", "balance", "centre-and-oldest", "one-in-five");
    }

    private static boolean aims(RenewalSchool way) { return way.keep().isPresent() && way.spentAge().isPresent(); }

    private static List<RenewalSchool> staged() {
        return AIMING.stream().filter(way -> way.staged().isPresent()).toList();
    }

    private static List<SpurSchool> frames() {
        return Schools.all().stream().filter(SpurSchool.class::isInstance).map(SpurSchool.class::cast)
                .filter(way -> !way.permanent()).toList();
    }

    private static List<CaneSchool> canes() {
        return Schools.all().stream().filter(CaneSchool.class::isInstance).map(CaneSchool.class::cast).toList();
    }

    private static RenewalSchool withoutStages(RenewalSchool way) {
        Renovation all = way.renovation().orElseThrow();
        Renovation rest = new Renovation(all.winters(), all.share(), all.stems(), all.fromSpent(), all.sources(),
                all.seen(), all.note(), Optional.empty());
        return new RenewalSchool(way.teaching(), way.spentAge(), way.keep(), way.seasonLimit(), way.shares(),
                way.buildUp(), way.firstPruning(), way.sharesFrom(), Optional.of(rest), way.hard(), way.cutsDown());
    }

    /** As many of each age as the way aims at, or as many as grow; more only where the printed total needs them. */
    private static void at(Stems stems, RenewalSchool way, int newShoots) {
        Keep keep = way.keep().orElseThrow();
        if (stems.total() == keep.totalLeast()) {
            for (int age = 1; age <= keep.stems().size(); age++) {
                assertThat(stems.at(age)).as("age %s of %s", age, stems)
                        .isGreaterThanOrEqualTo(Math.min(newShoots, keep.of(age)));
            }
            assertThat(stems.from(way.spent())).isZero();
            return;
        }
        for (int age = 1; age <= Math.max(stems.oldest(), keep.stems().size()); age++) {
            assertThat(stems.at(age)).as("age %s of %s", age, stems).isEqualTo(Math.min(newShoots, keep.of(age)));
        }
    }

    private static Bush next(Bush bush, Cut cut, School way, int newShoots) {
        return Bush.of(cut.after().aged(newShoots, way.fold()))
                .inRenovationWinter(cut.nextRenovationWinter(way, bush.renovationWinter()));
    }

    private static Stems plan(Stems start, RenewalSchool way, int newShoots, int seasons) {
        List<Cut> cuts = new ArrayList<>();
        Bush bush = Bush.of(start);
        for (int season = 0; season <= seasons; season++) {
            Cut cut = way.winter(bush);
            cuts.add(cut);
            bush = next(bush, cut, way, newShoots);
        }
        return cuts.get(seasons).after();
    }
}

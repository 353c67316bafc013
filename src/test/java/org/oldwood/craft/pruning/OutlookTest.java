package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;

class OutlookTest {
    private final Crop blackcurrant = Schools.CROPS.get("blackcurrant");
    private final FormPruning stool = Schools.form("blackcurrant", "stool");
    private final Outlook.Basis basis = new Outlook.Basis(stool.school(), stool, Yield.read(blackcurrant),
            stool.newShoots().orElseThrow());

    private Outlook plan(Bush bush) { return Outlook.of(bush, Habit.plan(stool.school(), stool.school()), basis, 6); }

    @Test
    void a_bush_at_target_stays_there_and_bears_the_full_crop() {
        Outlook outlook = plan(Bushes.after(8, Bush.of(Stems.of(8, 3, 3, 3))));

        assertThat(outlook.winters()).hasSize(6);
        for (Outlook.Winter winter : outlook.winters()) {
            assertThat(winter.cut().after().total()).isEqualTo(11);
            assertThat(winter.bearing()).isEqualTo(6);
            assertThat(winter.bearingShare()).isCloseTo(6 / 11.0, within(1e-9));
            assertThat(winter.share().orElseThrow().is()).isCloseTo(1, within(1e-9));
            assertThat(winter.kg().orElseThrow().is()).isCloseTo(3.5, within(1e-9));
        }
    }

    @Test
    void a_young_bush_follows_the_printed_build_up_and_crop() {
        Outlook outlook = plan(Bushes.after(1, Bush.of(Stems.of(8))));

        assertThat(outlook.winters().get(0).cut().after()).isEqualTo(Stems.of(7));
        // the second season: a tenth of the full crop (informed-farmers-blackcurrants)
        assertThat(outlook.winters().get(0).kg().orElseThrow().is()).isCloseTo(0.35, within(1e-9));
        assertThat(outlook.winters().get(5).kg().orElseThrow().is()).isCloseTo(3.5, within(1e-9));
    }

    @Test
    void without_pruning_old_wood_gathers_and_its_share_falls() {
        Outlook none = Outlook.of(Bush.of(Stems.of(8, 3, 3, 3)), Habit.NONE, basis, 6);

        // four shoots a year of a bush that is not cut, fewer as it fills; three in ten of the old ones die
        assertThat(none.winters().get(5).cut().after().total()).isEqualTo(17);
        assertThat(none.winters().get(5).cut().after().from(4)).isGreaterThan(3);
        assertThat(none.winters().get(5).bearingShare()).isLessThan(none.winters().get(1).bearingShare());
    }

    @Test
    void as_done_takes_as_many_of_each_age_as_last_time() {
        Habit habit = Habit.asDone(List.of(Stems.ofOpen(2, 0, 0, 1)));
        Outlook done = Outlook.of(Bush.of(Stems.of(8, 3, 3, 3)), habit, basis, 3);

        assertThat(done.winters().get(0).cut().after()).isEqualTo(Stems.of(6, 3, 3, 2));
        assertThat(done.winters().get(1).cut().after()).isEqualTo(Stems.ofOpen(2, 6, 3, 3));
    }

    @Test
    void a_bush_cut_down_has_no_crop_for_a_year_and_is_then_built_anew() {
        // allotments4all-73529: one year without crop, a good crop two years later
        School down = stool.school("cut-down").orElseThrow();
        Outlook outlook = Outlook.of(Bushes.after(15, Bush.of(Stems.of(1, 0, 0, 12))), Habit.plan(down, stool.school()),
                basis, 4);

        assertThat(outlook.winters().get(0).kg().orElseThrow().is()).isZero();
        assertThat(outlook.winters().get(1).cut().after().total()).isEqualTo(9);
        assertThat(outlook.winters().get(2).kg().orElseThrow().is()).isGreaterThan(3.5 / 2);
    }

    @Test
    void a_row_bears_by_its_metres() {
        FormPruning row = Schools.form("summer-raspberry", "cane-row");
        Outlook.Basis rows = new Outlook.Basis(row.school(), row, Yield.read(Schools.CROPS.get("summer-raspberry")),
                row.newShoots().orElseThrow());
        Bush bush = Bushes.after(5, Bush.of(Stems.of(60, 30)).along(4));

        Outlook outlook = Outlook.of(bush, Habit.plan(row.school(), row.school()), rows, 3);

        // 1.4 kg on a metre, four metres
        assertThat(outlook.winters().get(2).kg().orElseThrow().is()).isCloseTo(5.6, within(1e-9));
        assertThat(outlook.winters().get(2).cut().after().at(1)).isEqualTo(32);
        assertThat(outlook.winters().get(1).cut().before().at(1)).isEqualTo(56);
    }

    @Test
    void a_crop_without_yield_figures_has_no_kilograms() {
        Outlook.Basis bare = new Outlook.Basis(stool.school(), stool, Optional.empty(),
                stool.newShoots().orElseThrow());

        assertThat(Outlook.of(Bush.of(Stems.of(8)), Habit.NONE, bare, 1).winters().get(0).kg()).isEmpty();
    }

    @Test
    void the_crop_does_not_follow_the_name_of_the_way() {
        Bush uncut = Bushes.after(9, Bush.of(Stems.of(8, 5, 4, 4)));
        double first = firstOf(uncut, stool.school());

        for (School way : stool.schools()) {
            assertThat(firstOf(uncut, way)).as(way.id()).isEqualTo(first);
        }
    }

    private double firstOf(Bush bush, School way) {
        Outlook.Basis of = new Outlook.Basis(way, stool, Yield.read(blackcurrant), stool.newShoots().orElseThrow());
        return Outlook.of(bush, Habit.NONE, of, 1).winters().get(0).kg().orElseThrow().is();
    }

    @Test
    void youth_is_counted_once() {
        // missouri-kaps-2019: a bush that grows by the plan bears what its own series says
        FormPruning blue = Schools.form("blueberry", "stool");
        Yield yield = Yield.read(Schools.CROPS.get("blueberry")).orElseThrow();
        Outlook.Basis of = new Outlook.Basis(blue.school(), blue, Optional.of(yield), blue.newShoots().orElseThrow());
        Outlook plan = Outlook.of(Bushes.after(1, Bush.of(Stems.of(3))), Habit.plan(blue.school(), blue.school()), of,
                7);

        for (int winter = 0; winter < 7; winter++) {
            double printed = yield.expected("stool", winter + 2).orElseThrow().is();
            assertThat(plan.winters().get(winter).kg().orElseThrow().is()).as("season %s", winter + 2)
                    .isBetween(0.95 * printed, 1.1 * printed);
        }
    }

    @Test
    void a_row_bears_by_its_canes_and_fruited_ones_bear_nothing() {
        FormPruning row = Schools.form("summer-raspberry", "cane-row");
        Outlook.Basis of = new Outlook.Basis(row.school(), row, Yield.read(Schools.CROPS.get("summer-raspberry")),
                row.newShoots().orElseThrow());

        double none = kg(Stems.of(0, 30), of);
        double four = kg(Stems.of(4, 30), of);
        double eight = kg(Stems.of(8, 0), of);

        assertThat(none).isZero();
        assertThat(eight).isCloseTo(1.4, within(1e-9));
        assertThat(four / eight).isCloseTo(0.81, within(0.005));
    }

    private static double kg(Stems canes, Outlook.Basis of) {
        return Outlook.of(Bushes.after(6, Bush.of(canes)), Habit.NONE, of, 1).winters().get(0).kg().orElseThrow().is();
    }

    @Test
    void a_bush_without_a_sound_stem_bears_nothing_and_a_cordon_bears_whatever_its_age() {
        Bush sick = Bushes.after(8, Bush.of(Stems.of(3, 3)).withFaults(Stems.of(3, 3), Stems.NONE));
        FormPruning cordon = Schools.form("redcurrant", "cordon");
        Yield red = Yield.read(Schools.CROPS.get("redcurrant")).orElseThrow();

        assertThat(plan(sick).winters().get(0).kg().orElseThrow()).isEqualTo(new Range(0, 0, 0));
        assertThat(WoodCrop.share(Stems.of(0, 0, 0, 1), cordon.inOrder(Bush.of(Stems.NONE)), 5, "cordon", red).is())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void dead_and_diseased_stems_that_nobody_takes_bear_nothing_either() {
        Stems all = Stems.of(4, 6, 4);
        Outlook none = Outlook.of(Bush.of(all).withFaults(all, Stems.NONE), Habit.NONE, basis, 6);

        assertThat(none.winters().get(0).cut().after()).isEqualTo(all);
        assertThat(none.winters().get(0).bearingShare()).isZero();
        assertThat(none.winters().get(0).kg().orElseThrow().high()).isZero();
        assertThat(none.winters().get(1).cut().after().from(2)).isZero();
    }

    @Test
    void every_band_is_a_quarter_to_either_side_or_wider() {
        for (Outlook.Winter winter : plan(Bush.of(Stems.of(2, 2, 2, 3, 3))).winters()) {
            Range share = winter.share().orElseThrow();
            assertThat(share.low()).isLessThanOrEqualTo(0.75 * share.is());
            assertThat(share.high()).isGreaterThanOrEqualTo(1.25 * share.is());
            assertThat(share.is()).isLessThanOrEqualTo(1.1);
        }
    }

    @Test
    void berries_grow_small_and_picking_slow_on_an_unpruned_blueberry() {
        // strik-blueberry-severity: berries 19-27 % smaller; picking at 0.49 of the speed in the later years
        FormPruning blue = Schools.form("blueberry", "stool");
        Outlook.Basis of = new Outlook.Basis(blue.school(), blue, Yield.read(Schools.CROPS.get("blueberry")),
                blue.newShoots().orElseThrow());
        Bush bush = Bushes.after(10, Bush.of(Stems.of(2, 2, 2, 2, 2, 2)));
        List<Outlook.Winter> none = Outlook.of(bush, Habit.NONE, of, 6).winters();

        assertThat(none.get(0).berry().orElseThrow().weight()).isEqualTo(new Range(0.73, 0.77, 0.81));
        assertThat(none.get(4).berry().orElseThrow().speed()).isCloseTo(0.49, within(1e-9));
        assertThat(none.get(5).berry().orElseThrow().speed()).isCloseTo(0.49, within(1e-9));
        assertThat(Outlook.of(bush, Habit.plan(blue.school(), blue.school()), of, 1).winters().get(0).berry()
                .orElseThrow().speed()).isEqualTo(1);
        assertThat(plan(bush).winters().get(0).berry()).isEmpty();
    }

    private static double unpruned(Bush start, int winter, double pick) {
        FormPruning bush = Schools.form("blueberry", "stool");
        Outlook.Basis blue = new Outlook.Basis(bush.school(), bush, Yield.read(Schools.CROPS.get("blueberry")),
                bush.newShoots().orElseThrow());
        Range kg = Outlook.of(start, Habit.NONE, blue, 6).winters().get(winter - 1).kg().orElseThrow();
        return pick < 0 ? kg.low() : pick > 0 ? kg.high() : kg.is();
    }

    @Test
    void a_blueberry_left_alone_bears_what_was_weighed_after_four_winters_and_no_less_later() {
        Bush grown = Bush.of(Stems.of(4, 4, 4, 4, 4, 4));

        // oregon-reduced-pruning, season of 2021: 3.1 against 3.8 kg
        assertThat(unpruned(grown, 4, 0) / 3.5).isCloseTo(3.1 / 3.8, within(0.005));
        assertThat(unpruned(grown, 2, 0) / 3.5).isCloseTo(1 - 0.18 / 2, within(1e-9));
        assertThat(unpruned(grown, 6, 0)).isEqualTo(unpruned(grown, 4, 0));
        // msu-ask-145154: 0.9 against 2.3 kg; strik-blueberry-severity: no less than pruned
        assertThat(unpruned(grown, 4, -1) / 0.9).isCloseTo(0.9 / 2.3, within(0.005));
        assertThat(unpruned(grown, 4, 1)).isGreaterThan(5.6);
    }

    @Test
    void winters_before_the_first_pruning_do_not_count_as_left_alone() {
        Bush young = Bushes.after(1, Bush.of(Stems.of(2, 2, 2)));

        // seasons 1 and 2 are before the first pruning: handley-blueberry
        assertThat(unpruned(young, 6, 0) / 3.5).isCloseTo(1 - 0.18, within(1e-9));
        assertThat(unpruned(young, 5, 0) / (3.5 * 0.95)).isCloseTo(1 - 0.18 * 0.75, within(1e-9));
    }
}

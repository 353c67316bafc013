package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;

class OutlookTest {
    private final Crop blackcurrant = Schools.CROPS.get("blackcurrant");
    private final FormPruning stool = Schools.form("blackcurrant", "stool");
    private final Outlook.Basis basis = new Outlook.Basis(
            stool.school(), "stool", Yield.read(blackcurrant), stool.newShoots().orElseThrow());

    private Outlook plan(Bush bush) {
        return Outlook.of(bush, Habit.plan(stool.school(), stool.school()), basis, 6);
    }

    @Test
    void a_bush_at_target_stays_there_and_bears_the_full_crop() {
        Outlook outlook = plan(Bush.of(Stems.of(8, 3, 3, 3)).after(8));

        assertThat(outlook.winters()).hasSize(6);
        for (Outlook.Winter winter : outlook.winters()) {
            assertThat(winter.cut().after().total()).isEqualTo(11);
            assertThat(winter.bearing()).isEqualTo(6);
            assertThat(winter.bearingShare()).isCloseTo(6 / 11.0, within(1e-9));
            assertThat(winter.kg().orElseThrow().is()).isCloseTo(3.5, within(1e-9));
        }
    }

    @Test
    void a_young_bush_follows_the_printed_build_up_and_crop() {
        Outlook outlook = plan(Bush.of(Stems.of(8)).after(1));

        assertThat(outlook.winters().get(0).cut().after()).isEqualTo(Stems.of(7));
        // the second season: a tenth of the full crop (informed-farmers-blackcurrants)
        assertThat(outlook.winters().get(0).kg().orElseThrow().is()).isCloseTo(0.35, within(1e-9));
        assertThat(outlook.winters().get(5).kg().orElseThrow().is()).isCloseTo(3.5, within(1e-9));
    }

    @Test
    void without_pruning_old_wood_gathers_and_its_share_falls() {
        Outlook none = Outlook.of(Bush.of(Stems.of(8, 3, 3, 3)), Habit.none(), basis, 6);

        assertThat(none.winters().get(5).cut().after().total()).isEqualTo(17 + 5 * 8);
        assertThat(none.winters().get(5).cut().after().from(4)).isEqualTo(17 + 8 * 2);
        assertThat(none.winters().get(5).bearingShare())
                .isLessThan(none.winters().get(1).bearingShare());
    }

    @Test
    void as_done_takes_as_many_of_each_age_as_last_time() {
        Habit habit = Habit.asDone(List.of(Stems.ofOpen(2, 0, 0, 1)));
        Outlook done = Outlook.of(Bush.of(Stems.of(8, 3, 3, 3)), habit, basis, 3);

        assertThat(done.winters().get(0).cut().after()).isEqualTo(Stems.of(6, 3, 3, 2));
        assertThat(done.winters().get(1).cut().after()).isEqualTo(Stems.ofOpen(6, 6, 3, 4));
    }

    @Test
    void a_bush_cut_down_has_no_crop_for_a_year_and_is_then_built_anew() {
        // allotments4all-73529: one year without crop, a good crop two years later
        School down = stool.school("cut-down").orElseThrow();
        Outlook outlook =
                Outlook.of(Bush.of(Stems.of(1, 0, 0, 12)).after(15), Habit.plan(down, stool.school()), basis, 4);

        assertThat(outlook.winters().get(0).kg().orElseThrow().is()).isZero();
        assertThat(outlook.winters().get(1).cut().after().total()).isEqualTo(8);
        assertThat(outlook.winters().get(2).kg().orElseThrow().is()).isGreaterThan(3.5 / 2);
    }

    @Test
    void a_row_bears_by_its_metres() {
        FormPruning row = Schools.form("summer-raspberry", "cane-row");
        Outlook.Basis rows = new Outlook.Basis(
                row.school(),
                "cane-row",
                Yield.read(Schools.CROPS.get("summer-raspberry")),
                row.newShoots().orElseThrow());
        Bush bush = Bush.of(Stems.of(60, 30)).along(4).after(5);

        Outlook outlook = Outlook.of(bush, Habit.plan(row.school(), row.school()), rows, 3);

        // 1.4 kg on a metre, four metres
        assertThat(outlook.winters().get(2).kg().orElseThrow().is()).isCloseTo(5.6, within(1e-9));
        assertThat(outlook.winters().get(2).cut().after().at(1)).isEqualTo(32);
        assertThat(outlook.winters().get(1).cut().before().at(1)).isEqualTo(56);
    }

    @Test
    void a_crop_without_yield_figures_has_no_kilograms() {
        Outlook.Basis bare = new Outlook.Basis(
                stool.school(), "stool", Optional.empty(), stool.newShoots().orElseThrow());

        assertThat(Outlook.of(Bush.of(Stems.of(8)), Habit.none(), bare, 1)
                        .winters()
                        .get(0)
                        .kg())
                .isEmpty();
    }

    @Test
    void wood_is_weighed_by_age_against_the_target_and_never_promises_more() {
        Yield yield = Yield.read(blackcurrant).orElseThrow();
        Stems target = Stems.of(5, 3, 3);

        Range full = WoodCrop.factor(Stems.of(9, 9, 9), target, yield.wood());
        Range old = WoodCrop.factor(Stems.of(0, 0, 0, 10), target, yield.wood());
        Range half = WoodCrop.factor(Stems.of(0, 3, 0), target, yield.wood());

        assertThat(full).isEqualTo(new Range(1, 1, 1));
        // ten stems at 0.4 against 5 x 0.5 + 3 + 3; and with the least and the most of each
        assertThat(old.is()).isCloseTo(10 * 0.4 / 8.5, within(1e-9));
        assertThat(old.low()).isCloseTo(10 * 0.2 / 7.0, within(1e-9));
        assertThat(old.high()).isCloseTo(10 * 0.8 / 10.0, within(1e-9));
        assertThat(half.is()).isCloseTo(3 / 8.5, within(1e-9));
        assertThat(WoodCrop.factor(Stems.of(2), Stems.NONE, yield.wood()).is()).isEqualTo(1);
        assertThat(WoodCrop.factor(Stems.of(4), Stems.of(8), Optional.empty()).is())
                .isEqualTo(0.5);
    }

    @Property(tries = 300)
    void the_range_holds_the_expected_crop_and_the_plan_loses_to_nothing_in_the_end(
            @ForAll @IntRange(max = 12) int one,
            @ForAll @IntRange(max = 12) int two,
            @ForAll @IntRange(max = 20) int four) {
        Outlook outlook = plan(Bush.of(Stems.ofOpen(one, two, 1, four)));

        for (Outlook.Winter winter : outlook.winters()) {
            Range kg = winter.kg().orElseThrow();
            assertThat(kg.low()).isBetween(0.0, kg.is());
            assertThat(kg.high()).isBetween(kg.is(), 5.0);
        }
        assertThat(outlook.winters().get(5).kg().orElseThrow().is()).isGreaterThan(3.0);
    }

    private static double unpruned(Bush start, int winter, double pick) {
        FormPruning bush = Schools.form("blueberry", "stool");
        Outlook.Basis blue = new Outlook.Basis(
                bush.school(),
                "stool",
                Yield.read(Schools.CROPS.get("blueberry")),
                bush.newShoots().orElseThrow());
        Range kg = Outlook.of(start, Habit.none(), blue, 6)
                .winters()
                .get(winter - 1)
                .kg()
                .orElseThrow();
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
        assertThat(unpruned(grown, 4, 1)).isCloseTo(5.6, within(1e-9));
    }

    @Test
    void winters_before_the_first_pruning_do_not_count_as_left_alone() {
        Bush young = Bush.of(Stems.of(2, 2, 2)).after(1);

        // seasons 1 and 2 are before the first pruning: handley-blueberry
        assertThat(unpruned(young, 6, 0) / 3.5).isCloseTo(1 - 0.18, within(1e-9));
        assertThat(unpruned(young, 5, 0) / (3.5 * 0.95)).isCloseTo(1 - 0.18 * 0.75, within(1e-9));
    }
}

package org.oldwood.facts.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Why;
import org.oldwood.crop.Stems;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.TestGarden;

/** Sick, weak, damaged and low stems as the journal has them reach the cut list by their age. */
class StemFaultsTest {
    private final TestGarden garden = new TestGarden(52, "");

    private PruningCase on(String plant, String day) {
        GardenState state = garden.on(day);
        PlantState one = state.plants().get(plant);
        return PruningCase.of(one, TestGarden.CROPS.get(one.plant().crop()), state.season(), state).orElseThrow();
    }

    private Cut cut(PruningCase one) { return one.school().winter(one.bush().orElseThrow()); }

    private void counted(String faults) {
        garden.note("counted", "2026-11-10", "'plant': 'bc', 'stems': {'1': 9, '2': 5, '3': 3, '4+': 3}" + faults);
    }

    @Test
    void dead_stems_go_first_and_weak_ones_before_sound_ones_of_their_age() {
        counted(", 'dead': {'2': 1, '4+': 1}, 'weak': {'1': 2}, 'damaged': {'2': 1}, 'low': {'1': 1}");

        PruningCase one = on("bc", "2026-11-25");
        Cut cut = cut(one);

        assertThat(one.faults().sick()).isEqualTo(Stems.of(0, 1, 0, 1));
        assertThat(one.faults().weak()).isEqualTo(Stems.of(3, 1, 0, 0));
        assertThat(cut.taken().get(0).why()).isEqualTo(Why.SICK);
        assertThat(cut.of(Why.SICK)).isEqualTo(2);
        assertThat(cut.of(Why.SPENT)).isEqualTo(2);
        assertThat(cut.of(Why.WEAK)).isEqualTo(4);
        assertThat(cut.after()).isEqualTo(Stems.ofOpen(5, 3, 3, 0));
    }

    @Test
    void a_stem_that_is_both_sick_and_weak_is_counted_once() {
        counted(", 'dead': {'3': 2}, 'weak': {'3': 2}, 'low': {'3': 1}");

        PruningCase one = on("bc", "2026-11-25");

        assertThat(one.faults().sick().at(3)).isEqualTo(2);
        assertThat(one.faults().weak().at(3)).isEqualTo(1);
    }

    @Test
    void faults_of_the_last_season_are_a_year_older_now() {
        garden.note("counted", "2025-11-10", "'plant': 'bc', 'stems': {'1': 9, '2': 5, '3': 3}, 'dead': {'2': 2}");

        assertThat(on("bc", "2026-11-25").faults().sick()).isEqualTo(Stems.of(0, 0, 2, 0));
    }

    @Test
    void what_was_noted_before_the_last_cut_says_nothing_any_more() {
        counted(", 'dead': {'2': 1}, 'weak': 2");
        garden.note("pruned", "2026-11-20", "'plant': 'bc', 'stems': {'2': 1}, 'cut': 'winter'");

        assertThat(on("bc", "2026-11-25").faults()).isEqualTo(StemFaults.NONE);
    }

    @Test
    void those_without_an_age_are_told_and_not_counted_off() {
        counted(", 'dead': 2, 'weak': 1, 'low': 3");

        PruningCase one = on("bc", "2026-11-25");

        assertThat(one.faults().sickInAll()).isEqualTo(2);
        assertThat(one.faults().weakInAll()).isEqualTo(4);
        assertThat(cut(one).of(Why.SICK)).isZero();
        assertThat(new PruningAmounts(one, 4, Optional.empty()).of("winter-cut", "winter").lines())
                .anyMatch(line -> line.contains("2 dead or diseased"))
                .anyMatch(line -> line.contains("4 weak, damaged or low"));
    }

    @Test
    void new_canes_that_are_dead_or_weak_go_before_the_surplus() {
        garden.note("canes", "2026-11-10", "'plant': 'ra', 'fresh': 50, 'fruited': 8, 'dead': 3, 'weak': 5");

        Cut cut = cut(on("ra", "2026-11-25"));

        assertThat(cut.of(Why.SICK)).isEqualTo(3);
        assertThat(cut.of(Why.WEAK)).isEqualTo(5);
        assertThat(cut.of(Why.CROWDED)).isEqualTo(50 - 3 - 5 - 32);
    }
}

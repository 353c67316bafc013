package org.oldwood.facts.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.TestGarden;

/** What the journal tells of past cuts: stems by age, new shoots, minutes. */
class PastPruningTest {
    private final TestGarden garden = new TestGarden(52, "");

    private PastPruning past(String plant) {
        GardenState state = garden.on("2026-11-25");
        PlantState one = state.plants().get(plant);
        return PastPruning.of(one.entries(), TestGarden.CROPS.get(one.plant().crop()), state.leafFalls());
    }

    private void counted(String date, String stems) {
        garden.note("counted", date, "'plant': 'bc', 'stems': {" + stems + "}");
    }

    private void pruned(String date, String values) { garden.note("pruned", date, "'plant': 'bc', " + values); }

    @Test
    void cuts_are_added_up_by_season_and_the_youngest_lump_holds() {
        pruned("2024-12-01", "'stems': {'1': 3, '4': 1, '5': 2}");
        pruned("2025-02-01", "'stems': {'1': 1, '4+': 2}");
        pruned("2025-12-01", "'stems': {'3': 2}");
        pruned("2026-11-20", "'cut': 'winter'");

        assertThat(past("bc").taken()).containsOnlyKeys(2025, 2026).containsEntry(2025, Stems.parse("1=4,4+=5"))
                .containsEntry(2026, Stems.parse("3=2"));
    }

    @Test
    void where_no_cut_was_noted_two_counts_tell_what_is_missing() {
        counted("2024-11-20", "'1': 8, '2': 5, '3': 4, '4+': 3");
        counted("2025-11-20", "'1': 7, '2': 6, '3': 5, '4+': 2");

        // eight became six, five stayed five, four and three became two
        assertThat(past("bc").taken()).containsOnlyKeys(2025).containsEntry(2025, Stems.ofOpen(2, 0, 5));
    }

    @Test
    void what_was_noted_goes_before_what_two_counts_tell() {
        counted("2024-11-20", "'1': 8, '2': 5");
        pruned("2024-12-01", "'stems': {'1': 1}");
        counted("2025-11-20", "'1': 7, '2': 6, '3': 5");

        assertThat(past("bc").taken()).containsEntry(2025, Stems.of(1));
    }

    @Test
    void only_counts_before_the_cut_tell_of_new_shoots() {
        counted("2024-11-20", "'1': 8, '2': 5");
        pruned("2024-12-01", "'stems': {'1': 3}");
        counted("2024-12-02", "'1': 5, '2': 5");
        counted("2025-11-20", "'1': 6");

        assertThat(past("bc").newShoots()).containsExactly(8, 6);
    }

    @Test
    void own_counts_of_new_shoots_replace_the_printed_figure() {
        Figure printed = form("bc").newShoots().orElseThrow();
        counted("2024-11-20", "'1': 12");
        Figure once = past("bc").shoots(printed);
        counted("2025-11-20", "'1': 9");
        Figure twice = past("bc").shoots(printed);

        assertThat(List.of(once.is(), once.low(), once.high())).containsExactly(12.0, printed.low(), 12.0);
        assertThat(List.of(twice.is(), twice.low(), twice.high())).containsExactly(10.5, 9.0, 12.0);
        assertThat(past("bl").shoots(printed)).isSameAs(printed);
    }

    @Test
    void canes_counted_in_a_row_are_new_canes_of_the_whole_row() {
        garden.note("canes", "2025-11-20", "'plant': 'ra', 'fresh': 44, 'fruited': 30");

        Figure own = past("ra").shoots(form("ra").newShoots().orElseThrow());

        assertThat(past("ra").newShoots()).containsExactly(44);
        assertThat(own.is()).isEqualTo(44);
        assertThat(own.unit()).doesNotEndWith("/m");
    }

    private FormPruning form(String plant) {
        PlantState one = garden.on("2026-11-25").plants().get(plant);
        Crop crop = TestGarden.CROPS.get(one.plant().crop());
        return Pruning.read(crop).orElseThrow().form(one.plant().form()).orElseThrow();
    }

    private Optional<Double> minutes(String plant, String time) {
        GardenState state = garden.on("2026-11-25");
        PlantState one = state.plants().get(plant);
        Crop crop = TestGarden.CROPS.get(one.plant().crop());
        return new PruningMinutes(state).of(List.of(one), crop, form(plant), time);
    }

    @Test
    void printed_minutes_are_for_each_bush_or_each_metre() {
        // four bushes at 6 min; a row of 4 m at 6 min/m
        assertThat(minutes("bc", "winter")).hasValue(24.0);
        assertThat(minutes("ra", "canes")).hasValue(24.0);
        assertThat(minutes("bc", "summer")).isEmpty();
    }

    @Test
    void own_minutes_are_those_of_the_plant_for_that_cut() {
        pruned("2024-12-01", "'cut': 'winter', 'minutes': 30");
        pruned("2025-12-01", "'cut': 'winter', 'minutes': 40");
        pruned("2026-01-01", "'cut': 'summer', 'minutes': 5");

        assertThat(minutes("bc", "winter")).hasValue(35.0);
        assertThat(minutes("bc", "summer")).hasValue(5.0);
        assertThat(minutes("bc", "renovation")).hasValue(35.0);
    }

    @Test
    void own_minutes_of_one_plant_tell_of_its_like() {
        garden.note("planted", "2020-11-20", "'plant': 'bc-9', 'crop': 'blackcurrant', 'bed': 'ribes', 'bushes': 2");
        garden.note("planted", "2020-11-20",
                "'plant': 'ra-9', 'crop': 'summer-raspberry', 'bed': 'canes', 'lengthM': 10");
        pruned("2025-12-01", "'minutes': 40");
        garden.note("pruned", "2026-08-20", "'plant': 'ra', 'cut': 'canes', 'minutes': 8");

        assertThat(minutes("bc-9", "winter")).hasValue(20.0);
        assertThat(minutes("ra-9", "canes")).hasValue(20.0);
    }

    @Test
    void shoots_of_the_same_summer_are_no_stems_of_a_winter() {
        pruned("2026-07-01", "'stems': {'0': 4, '1': 1}");
        pruned("2026-07-02", "'stems': {'0': 2}");

        assertThat(past("bc").taken()).containsOnly(java.util.Map.entry(2026, Stems.of(1)));
    }

    @Test
    void only_what_both_counts_tell_of_is_missing() {
        counted("2024-11-20", "'1': 8, '2': 5, '3': 4");
        counted("2025-11-20", "'2': 6, '4': 1");

        // fives of two years were not counted as threes
        assertThat(past("bc").taken()).containsOnly(java.util.Map.entry(2025, Stems.parse("1=2,3=3")));
    }

    @Test
    void a_lump_of_one_count_alone_is_compared_as_a_whole() {
        counted("2024-11-20", "'1': 8, '2': 5, '3': 4, '4': 2");
        counted("2025-11-20", "'2': 8, '3+': 6");

        assertThat(past("bc").taken()).containsOnly(java.util.Map.entry(2025, Stems.parse("1=0,2+=5")));
    }

    @Test
    void counts_two_seasons_apart_tell_nothing() {
        counted("2023-11-20", "'1': 8, '2': 5");
        counted("2025-11-20", "'1': 7, '3': 2");

        assertThat(past("bc").taken()).isEmpty();
    }

    @Test
    void the_first_count_of_a_season_holds() {
        counted("2025-11-20", "'1': 9");
        counted("2026-01-20", "'1': 4");

        assertThat(past("bc").newShoots()).containsExactly(9);
    }
}

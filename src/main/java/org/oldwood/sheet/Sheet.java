package org.oldwood.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Source;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Task;

/**
 * The second part of a full sheet, after the rounds and cards.
 *
 * @param outlookWords what the outlooks rest on, where it was not read in print
 * @param waterLacking what must be known before the beds' water can be told; empty for nothing
 */
record Sheet(List<Chart> stages, List<Year> years, List<BushCard> bushes, List<String> outlookWords, List<BedCard> beds,
        String waterLacking, List<String> questions, List<Source> sources) {

    record Year(String label, List<Chart> charts) {}

    /** The same ground and scope give the same sheet. */
    static Sheet of(Ground ground, Scope scope) {
        GardenState state = ground.state();
        List<Task> tasks = ground.plan().tasks().stream().filter(scope::holds).toList();
        List<PlantState> plants = state.walked().stream().filter(scope::holds).toList();
        List<BedState> beds = state.beds().values().stream().filter(it -> scope.showsBed(it.bed().id())).toList();
        List<Crop> crops = plants.stream().map(it -> it.plant().crop()).distinct().sorted()
                .map(ground.world().crops()::get).toList();
        return new Sheet(crops.isEmpty() ? List.of() : List.of(YearCharts.stages(ground, crops, state.season())),
                YearCharts.seasons(tasks).stream()
                        .map(season -> new Year(season.label(), YearCharts.of(ground, tasks, season))).toList(),
                BushCard.of(ground, plants), BushCard.rests(ground, plants), BedCard.of(ground, tasks, beds),
                beds.isEmpty() ? "" : ground.water().lacking().orElse(""),
                scope.isWhole() ? Stream.concat(state.questions().stream(), ground.plan().notices().stream()).toList()
                        : List.of(),
                tasks.stream().flatMap(task -> task.sources().stream()).distinct().sorted()
                        .flatMap(key -> ground.sources().find(key).stream()).toList());
    }
}

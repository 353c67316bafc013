package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crop;
import org.oldwood.garden.BedState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Task;
import org.oldwood.season.Season;

/** Gathers what the second part of a sheet says. The same ground and scope give the same sheet. */
final class SheetMaker {
    private final Ground ground;
    private final Scope scope;
    private final List<Task> tasks;

    SheetMaker(Ground ground, Scope scope) {
        this.ground = ground;
        this.scope = scope;
        this.tasks = ground.plan().tasks().stream().filter(scope::holds).toList();
    }

    Sheet make() {
        List<PlantState> plants =
                ground.state().walked().stream().filter(scope::holds).toList();
        List<BedState> beds = ground.state().beds().values().stream()
                .filter(it -> scope.showsBed(it.bed().id()))
                .toList();
        BushCards bushes = new BushCards(ground);
        return new Sheet(
                stages(plants),
                years(),
                bushes.of(plants),
                bushes.rests(plants),
                new BedCards(ground, tasks).of(beds),
                beds.isEmpty() ? "" : ground.water().lacking().orElse(""),
                questions(),
                tasks.stream()
                        .flatMap(task -> task.sources().stream())
                        .distinct()
                        .sorted()
                        .flatMap(key -> ground.sources().find(key).stream())
                        .toList());
    }

    private List<Chart> stages(List<PlantState> plants) {
        List<Crop> crops = plants.stream()
                .map(it -> it.plant().crop())
                .distinct()
                .sorted()
                .map(ground.world().crops()::get)
                .toList();
        return crops.isEmpty()
                ? List.of()
                : List.of(StageChart.of(ground, crops, ground.state().season()));
    }

    private List<Sheet.Year> years() {
        List<Sheet.Year> years = new ArrayList<>();
        for (Season season : YearCharts.seasons(tasks)) {
            years.add(new Sheet.Year(season.label(), YearCharts.of(ground, tasks, season)));
        }
        return years;
    }

    private List<String> questions() {
        if (!scope.isWhole()) {
            return List.of();
        }
        List<String> all = new ArrayList<>(ground.state().questions());
        all.addAll(ground.plan().notices());
        return all;
    }
}

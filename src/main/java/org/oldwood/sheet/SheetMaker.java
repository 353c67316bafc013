package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crop;
import org.oldwood.garden.BedState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.ShoppingList;
import org.oldwood.plan.Task;
import org.oldwood.season.Season;
import org.oldwood.words.Dates;

/** Gathers what a sheet says. The same ground and scope give the same sheet. */
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
        List<PlantState> plants = plants();
        List<LotState> lots =
                ground.state().lots().values().stream().filter(scope::holds).toList();
        List<BedState> beds = ground.state().beds().values().stream()
                .filter(it -> scope.showsBed(it.bed().id()))
                .toList();
        BushCards bushes = new BushCards(ground);
        ShoppingList shopping = ShoppingList.of(
                new Plan(ground.plan().from(), ground.plan().until(), tasks, List.of(), List.of()),
                ground.state().garden());
        return new Sheet(
                ground.state().garden().name(),
                title(),
                facts(plants, lots, beds),
                stages(plants),
                years(),
                JobMonths.of(tasks, ground.state().date()),
                JobMonths.finished(tasks),
                bushes.of(plants),
                bushes.rests(plants),
                LotCards.of(ground, lots),
                new BedCards(ground, tasks).of(beds),
                new PickTables(ground, scope).all(),
                beds.isEmpty() ? "" : ground.water().lacking().orElse(""),
                shopping.items().stream().map(ShopLine::of).toList(),
                shopping.lacking(),
                questions(),
                SourceLine.of(tasks, ground.sources()));
    }

    private List<PlantState> plants() {
        return ground.state().standing().stream().filter(scope::holds).toList();
    }

    private String title() {
        if (scope.plant().isPresent()) {
            return ground.subjects()
                    .find(scope.plant().get(), "plant")
                    .map(it -> it.words())
                    .orElse(scope.plant().get());
        }
        String bed = ground.bedName(scope.bed());
        return bed.isEmpty() ? "Year sheet" : bed;
    }

    private List<String> facts(List<PlantState> plants, List<LotState> lots, List<BedState> beds) {
        List<String> facts = new ArrayList<>();
        facts.add("season " + ground.state().season().label());
        facts.add("as on " + Dates.shortDay(ground.state().date()));
        if (beds.size() > 1) {
            facts.add(beds.size() + " beds");
        }
        if (scope.plant().isEmpty()) {
            int bushes = plants.stream().mapToInt(it -> it.plant().bushes()).sum();
            facts.add(Numbers.count(bushes, "bush or row", "bushes and rows"));
        }
        if (!lots.isEmpty()) {
            facts.add(Numbers.count(lots.size(), "batch of cuttings", "batches of cuttings"));
        }
        facts.add(Numbers.count(
                tasks.stream().filter(it -> it.state() == Task.State.OPEN).count(), "job", "jobs"));
        return facts;
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

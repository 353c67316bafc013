package org.oldwood.sheet.round;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Task;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/**
 * Cards of what to cut: for each plant the next open cut of the plan and nothing else. What a card says is the task's
 * own amount; stems are drawn only where they come to the same.
 */
final class CutCards {
    private final Situation.World world;
    private final Map<String, Task> next = new LinkedHashMap<>();

    /** Cards, how old wood of their crops is told, and whose cards did not fit. */
    record Drawn(List<RoundPage.Card> cards, List<String> looks, String undrawn) {}

    CutCards(Situation.World world, Plan plan) {
        this.world = world;
        Map<String, Task> first = new LinkedHashMap<>();
        plan.tasks().stream().filter(CutCards::isCut).sorted(Comparator.comparing(Task::day).thenComparing(Task::id))
                .forEach(task -> first.putIfAbsent(plant(task).plant().id(), task));
        world.state().walked().stream().map(plant -> plant.plant().id()).filter(first::containsKey)
                .forEach(id -> next.put(id, first.get(id)));
    }

    /** A cut of one plant that is still to be made. */
    private static boolean isCut(Task task) {
        return task.state() == Task.State.OPEN && task.subject().kind().equals("plant")
                && task.amount()
                        .filter(amount -> amount.noted().stream().anyMatch(noted -> noted.kind() == EntryKind.PRUNED))
                        .isPresent();
    }

    private static PlantState plant(Task task) { return task.subject().plants().get(0); }

    /** The next cuts that are made before a day. */
    Drawn until(LocalDate end) {
        return of(next.values().stream().filter(task -> task.day().isBefore(end)).toList(), Integer.MAX_VALUE);
    }

    /** Those among some tasks whose stems are known; where they come to more cards than {@code most}, none. */
    Drawn drawn(Set<String> tasks, int most) {
        return of(next.values().stream().filter(task -> tasks.contains(task.id()) && cut(task).isPresent()).toList(),
                most);
    }

    private Drawn of(List<Task> chosen, int most) {
        Map<List<Object>, List<Task>> alike = chosen.stream()
                .collect(Collectors.groupingBy(this::look, LinkedHashMap::new, Collectors.toList()));
        if (alike.size() > most) {
            return new Drawn(List.of(), List.of(),
                    "Which stems to take from %s bushes stands on the cards: oldwood sheet.".formatted(chosen.size()));
        }
        Set<String> looks = new LinkedHashSet<>();
        chosen.forEach(task -> pruningCase(task).ifPresent(one -> one.pruning().looks("spent")
                .forEach(look -> looks.add("%s: %s".formatted(Words.capital(one.crop().plural()), look.words())))));
        return new Drawn(alike.values().stream().map(this::card).toList(), List.copyOf(looks), "");
    }

    /** What a card shows but the plants' names. */
    private List<Object> look(Task task) {
        PlantState state = plant(task);
        return List.of(state.plant().crop(), state.plant().bed(), state.plant().form(), task.rule().id(),
                task.window().last(), task.amount().map(TaskWords::inWords).orElse(""),
                task.amount().map(Amount::lines).orElse(List.of()),
                cut(task).map(cut -> cut.before().toString()).orElse(""));
    }

    private RoundPage.Card card(List<Task> alike) {
        Task task = alike.get(0);
        PlantState state = plant(task);
        Crop crop = world.crops().get(state.plant().crop());
        List<String> facts = List.of(task.subject().bed().map(bed -> bed.bed().name()).orElse(""),
                state.plant().form().replace('-', ' '), "till %s".formatted(Dates.dayMonth(task.window().last())));
        return new RoundPage.Card(alike.stream().map(Task::id).toList(), Words.capital(crop.name()),
                alike.stream().map(each -> plant(each).plant().idAndCultivar()).toList(), facts,
                cut(task).map(Wood::of).filter(wood -> !wood.isEmpty()),
                Words.capital(task.amount().map(TaskWords::inWords).orElse("")),
                task.amount().stream().flatMap(amount -> amount.lines().stream())
                        .filter(line -> !line.startsWith("Spent wood")).limit(1).findFirst().orElse(""));
    }

    private Optional<PruningCase> pruningCase(Task task) {
        Crop crop = world.crops().get(plant(task).plant().crop());
        return PruningCase.of(plant(task), crop, task.season(), world.state());
    }

    /** The cut that the task's amount tells of; none where the stems were not counted, or the plan supposes others. */
    private Optional<Cut> cut(Task task) {
        return pruningCase(task).filter(one -> one.bush().isPresent())
                .filter(one -> task.amount()
                        .filter(amount -> amount.words().equals(CutWords.taken(one.cut(), one.form().counted())))
                        .isPresent())
                .map(PruningCase::cut);
    }
}

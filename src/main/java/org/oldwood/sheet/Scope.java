package org.oldwood.sheet;

import java.util.Optional;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Task;

/** What of the garden a sheet shows: all of it, or a smaller sheet to pin to one place. */
public record Scope(Optional<String> bed, Optional<String> plant) {
    /** The tasks of this part of the garden, those that were missed too. */
    public Plan part(Plan plan) {
        return isWhole() ? plan
                : plan.part(plan.tasks().stream().filter(this::holds).toList(),
                        plan.missed().stream().filter(missed -> plant.isEmpty() && missed.bed().equals(bed)).toList());
    }

    boolean isWhole() { return bed.isEmpty() && plant.isEmpty(); }

    boolean holds(Task task) {
        return bed.map(TaskGroup.bed(task)::equals).orElse(true) && plant.map(id -> ofPlant(task, id)).orElse(true);
    }

    private static boolean ofPlant(Task task, String id) {
        String kind = task.subject().kind();
        return (kind.equals("plant") || kind.equals("stand"))
                && task.subject().plants().stream().anyMatch(it -> it.plant().id().equals(id));
    }

    boolean holds(PlantState state) {
        return bed.map(state.plant().bed()::equals).orElse(true) && plant.map(state.plant().id()::equals).orElse(true);
    }

    /** Whether beds are told of one by one. */
    boolean showsBed(String id) {
        return plant.isEmpty() && bed.map(id::equals).orElse(true);
    }
}

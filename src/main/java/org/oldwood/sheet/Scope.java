package org.oldwood.sheet;

import java.time.YearMonth;
import java.util.Optional;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Task;

/**
 * What of the garden a sheet shows: all of it, or a smaller sheet to pin to one place.
 *
 * @param bed this bed alone, by its id
 * @param plant this plant alone, by its id
 * @param month the jobs of this month alone
 */
public record Scope(Optional<String> bed, Optional<String> plant, Optional<YearMonth> month) {
    /** The whole garden and year. */
    public static final Scope WHOLE = new Scope(Optional.empty(), Optional.empty(), Optional.empty());

    boolean isWhole() {
        return bed.isEmpty() && plant.isEmpty() && month.isEmpty();
    }

    boolean holds(Task task) {
        return month.map(it -> it.equals(YearMonth.from(task.day()))).orElse(true)
                && bed.map(id -> inBed(task, id)).orElse(true)
                && plant.map(id -> ofPlant(task, id)).orElse(true);
    }

    private static boolean inBed(Task task, String id) {
        return task.subject().bed().map(bed -> bed.bed().id().equals(id)).orElse(false);
    }

    private static boolean ofPlant(Task task, String id) {
        String kind = task.subject().kind();
        return (kind.equals("plant") || kind.equals("stand"))
                && task.subject().plants().stream()
                        .anyMatch(it -> it.plant().id().equals(id));
    }

    boolean holds(PlantState state) {
        return bed.map(state.plant().bed()::equals).orElse(true)
                && plant.map(state.plant().id()::equals).orElse(true);
    }

    boolean holds(LotState lot) {
        return plant.isEmpty()
                && month.isEmpty()
                && (bed.isEmpty() || lot.bed().map(bed.get()::equals).orElse(false));
    }

    /** Whether beds are told of one by one. */
    boolean showsBed(String id) {
        return plant.isEmpty() && month.isEmpty() && bed.map(id::equals).orElse(true);
    }
}

package org.oldwood.plan.round;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Task;
import org.oldwood.words.Words;

/**
 * One outing's worth of one kind of work.
 *
 * @param kind the kind of work
 * @param day the day on which to go out; in the window of every task
 * @param tasks in walking order, one at least
 */
public record Round(RoundKind kind, LocalDate day, List<Task> tasks) {
    private static final int LONGEST_TITLE = 40;

    /** The last day on which all of it is still in time. */
    public LocalDate lastGoodDay() {
        return tasks.stream()
                .map(task -> task.window().last())
                .min(LocalDate::compareTo)
                .orElse(day);
    }

    /** Minutes of the tasks whose time is known; 0 where none is. */
    public double minutes() {
        return tasks.stream().mapToDouble(task -> task.minutes().orElse(0.0)).sum();
    }

    /** How many bushes it goes to, each once; 0 where it is not about single plants. */
    public int bushes() {
        Map<String, Integer> bushes = new LinkedHashMap<>();
        for (Task task : tasks) {
            if (task.subject().kind().equals("plant") || task.subject().kind().equals("stand")) {
                for (PlantState plant : task.subject().plants()) {
                    bushes.put(plant.plant().id(), plant.plant().bushes());
                }
            }
        }
        return bushes.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** The names of its beds, in walking order. */
    public Set<String> beds() {
        Set<String> beds = new LinkedHashSet<>();
        tasks.forEach(
                task -> task.subject().bed().ifPresent(bed -> beds.add(bed.bed().name())));
        return beds;
    }

    /** Each caution once. */
    public Set<String> cautions() {
        Set<String> cautions = new LinkedHashSet<>();
        tasks.forEach(task -> cautions.addAll(task.cautions()));
        return cautions;
    }

    /** What, how many and where, in at most 40 characters. */
    public String title() {
        int bushes = bushes();
        String what =
                bushes == 0 ? kind.title() : "%s: %s".formatted(kind.title(), Words.count(bushes, "bush", "bushes"));
        Set<String> beds = beds();
        if (beds.isEmpty()) {
            return what;
        }
        String named = "%s, %s".formatted(what, beds.iterator().next());
        return beds.size() == 1 && named.length() <= LONGEST_TITLE
                ? named
                : "%s, %s".formatted(what, Words.count(beds.size(), "bed", "beds"));
    }

    /** How urgent it is on a day: the harm of missing its worst task, 1 to 3, over the days that are left for it. */
    public double urgency(LocalDate today) {
        return tasks.stream()
                .mapToDouble(task -> task.rule().ifMissed().harm()
                        / (1.0
                                + Math.max(
                                        0,
                                        ChronoUnit.DAYS.between(
                                                today, task.window().last()))))
                .max()
                .orElse(0);
    }
}

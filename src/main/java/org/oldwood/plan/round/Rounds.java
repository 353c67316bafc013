package org.oldwood.plan.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * Gathers the tasks of a plan into rounds: each task is in exactly one. Which one hangs on nothing that changes while
 * the work goes on: the kind that the data gives its rule, its season, and its crop, bed or week. Grows with the number
 * of tasks and their sorting.
 */
public final class Rounds {
    private final Map<String, RoundKind> byRule = new HashMap<>();

    private Rounds() {}

    /** The kinds of rounds in {@code rounds.json}. */
    public static Rounds read(Documents documents) {
        Rounds rounds = new Rounds();
        for (Fields fields : documents.fields("rounds.json").objects("kinds")) {
            RoundKind kind = RoundKind.read(fields);
            kind.jobs().forEach(job -> job.rules().forEach(rule -> rounds.byRule.put(rule, kind)));
        }
        return rounds;
    }

    /** The kind that gathers a rule's tasks. */
    public RoundKind kind(Rule rule) {
        return byRule.computeIfAbsent(rule.id(), id -> RoundKind.alone(rule));
    }

    /** The ids of all kinds that the data names. */
    public Set<String> kinds() {
        return byRule.values().stream().map(RoundKind::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** All rounds of a plan, those with nothing left to do too, by day, then by id. */
    public List<Round> of(Plan plan) {
        Map<String, List<Task>> together = new LinkedHashMap<>();
        for (Task task : plan.tasks()) {
            together.computeIfAbsent(kind(task.rule()).round(task), id -> new ArrayList<>())
                    .add(task);
        }
        List<Round> rounds = new ArrayList<>();
        together.forEach((id, tasks) -> rounds.add(round(id, tasks)));
        rounds.sort(Comparator.comparing(Round::day).thenComparing(Round::id));
        return rounds;
    }

    private Round round(String id, List<Task> all) {
        RoundKind kind = kind(all.get(0).rule());
        List<Task> walked = new ArrayList<>(all);
        walked.sort(Comparator.comparing(Rounds::bed)
                .thenComparing(task -> task.subject().id())
                .thenComparingInt(task -> kind.order(task.rule()))
                .thenComparing(Task::id));
        List<Task> open =
                walked.stream().filter(task -> task.state() == Task.State.OPEN).toList();
        List<Task> finished =
                walked.stream().filter(task -> task.state() != Task.State.OPEN).toList();
        return new Round(id, kind, day(kind, open.isEmpty() ? finished : open), open, finished);
    }

    /** The latest of the tasks' days on which all that can be done together is in time; never the latest of all. */
    private static LocalDate day(RoundKind kind, List<Task> tasks) {
        LocalDate first =
                tasks.stream().map(Task::day).min(LocalDate::compareTo).orElseThrow();
        if (kind.start() || tasks.get(0).state() != Task.State.OPEN) {
            return first;
        }
        Optional<LocalDate> last =
                tasks.stream().map(task -> task.window().last()).min(LocalDate::compareTo);
        return tasks.stream()
                .map(Task::day)
                .filter(day -> !day.isAfter(last.orElse(day)))
                .max(LocalDate::compareTo)
                .orElse(first);
    }

    private static String bed(Task task) {
        return task.subject().bed().map(bed -> bed.bed().id()).orElse("");
    }
}

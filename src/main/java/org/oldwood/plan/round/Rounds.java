package org.oldwood.plan.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * Gathers the open tasks of a plan into rounds: each task is in exactly one. A task joins the last round of its kind on
 * the same day, or is moved forward to it within its window, by as many days as the kind allows; a task that waits for
 * another is never moved. Grows with the number of tasks and their sorting.
 */
public final class Rounds {
    private final Map<String, RoundKind> byRule = new HashMap<>();

    private Rounds() {}

    /** The kinds of rounds in {@code rounds.json}. */
    public static Rounds read(Documents documents) {
        Rounds rounds = new Rounds();
        for (Fields fields : documents.fields("rounds.json").objects("kinds")) {
            RoundKind kind = RoundKind.read(fields);
            kind.rules().forEach(rule -> rounds.byRule.put(rule, kind));
        }
        return rounds;
    }

    /** The kind that gathers a rule's tasks. */
    public RoundKind kind(Rule rule) {
        return byRule.computeIfAbsent(rule.id(), id -> RoundKind.alone(rule));
    }

    /** The rounds of a plan's open tasks, by day, then by kind. */
    public List<Round> of(Plan plan) {
        Map<String, Gathering> last = new LinkedHashMap<>();
        List<Gathering> all = new ArrayList<>();
        List<Task> open = new ArrayList<>(plan.tasks());
        open.removeIf(task -> task.state() != Task.State.OPEN);
        open.sort(Comparator.comparing(Task::day).thenComparing(Task::id));
        for (Task task : open) {
            RoundKind kind = kind(task.rule());
            Gathering gathering = last.get(kind.id());
            if (gathering == null || !gathering.takes(task)) {
                gathering = new Gathering(kind, task.day());
                last.put(kind.id(), gathering);
                all.add(gathering);
            }
            gathering.add(task);
        }
        return all.stream()
                .map(Gathering::round)
                .sorted(Comparator.comparing(Round::day)
                        .thenComparing(round -> round.kind().id()))
                .toList();
    }

    private static final class Gathering {
        private final RoundKind kind;
        private final LocalDate day;
        private final List<Task> tasks = new ArrayList<>();
        private final Set<String> works = new HashSet<>();

        Gathering(RoundKind kind, LocalDate day) {
            this.kind = kind;
            this.day = day;
        }

        boolean takes(Task task) {
            boolean sameDay = task.day().equals(day);
            boolean mayMove = task.rule().after().isEmpty()
                    && !task.window().first().isAfter(day)
                    && !task.day().isAfter(day.plusDays(kind.joinDays()));
            return (sameDay || mayMove) && !works.contains(work(task));
        }

        void add(Task task) {
            tasks.add(task);
            works.add(work(task));
        }

        /** A repeat never falls into the same outing as the one before. */
        private static String work(Task task) {
            return "%s@%s".formatted(task.rule().id(), task.subject().id());
        }

        Round round() {
            List<Task> walked = new ArrayList<>(tasks);
            walked.sort(Comparator.comparing(Gathering::bed)
                    .thenComparing(task -> task.subject().id())
                    .thenComparingInt(task -> kind.rules().indexOf(task.rule().id())));
            return new Round(kind, day, List.copyOf(walked));
        }

        private static String bed(Task task) {
            return task.subject().bed().map(bed -> bed.bed().id()).orElse("");
        }
    }
}

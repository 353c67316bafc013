package org.oldwood.plan.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oldwood.crop.RecordReader;
import org.oldwood.facts.KeepApart;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Wishes;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;

/**
 * Gathers the tasks of a plan into rounds: each task is in exactly one. Which one hangs on nothing that changes while
 * the work goes on: the kind that the data gives its rule, its season, and its crop, bed or week. Grows with the number
 * of tasks and their sorting.
 */
public final class Rounds {
    private final Map<String, RoundKind> byRule = new HashMap<>();

    private final Documents documents;

    private record Kinds(List<RoundKind> kinds) {}

    private Rounds(Documents documents) { this.documents = documents; }

    /** The kinds of rounds in {@code rounds.json}. */
    public static Rounds read(Documents documents) {
        Rounds rounds = new Rounds(documents);
        RecordReader.read(documents.fields("rounds.json"), Kinds.class).kinds.forEach(
                kind -> kind.jobs().forEach(job -> job.rules().forEach(rule -> rounds.byRule.put(rule, kind))));
        return rounds;
    }

    public RoundKind kind(Rule rule) { return byRule.computeIfAbsent(rule.id(), id -> RoundKind.alone(rule)); }

    /** What was not done in its time, without what the grower does not want to be told of. */
    public List<Missed> wanted(List<Missed> missed, Wishes wishes) {
        return missed.stream()
                .filter(one -> !wishes.never().contains(one.rule().id()) && kind(one.rule()).wanted(wishes)).toList();
    }

    /** The ids of all kinds that the data names. */
    public Set<String> kinds() {
        return byRule.values().stream().map(RoundKind::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * All rounds of a plan, those with nothing left to do too, by day, then by id. A rule that is never wanted, though
     * its kind of round is, makes one for itself.
     */
    public List<Round> of(Plan plan, GardenState state) {
        Set<String> never = state.wishes().never();
        plan.tasks().stream().map(Task::rule).filter(rule -> never.contains(rule.id()))
                .filter(rule -> !never.contains(kind(rule).id()))
                .forEach(rule -> byRule.put(rule.id(), RoundKind.alone(rule)));
        Map<String, List<Task>> together = plan.tasks().stream().collect(Collectors.groupingBy(
                task -> kind(task.rule()).round(task, state.date()), LinkedHashMap::new, Collectors.toList()));
        List<Round> wanted = new ArrayList<>();
        List<Round> rounds = new ArrayList<>();
        Map<String, Integer> way = new HashMap<>();
        state.walked().forEach(plant -> way.put(plant.plant().id(), way.size()));
        together.forEach((id, tasks) -> {
            Round round = round(id, tasks, state, way);
            (round.wanted(state.wishes()) ? wanted : rounds).add(round);
        });
        // what nobody asks for takes no day from what is asked for
        rounds.addAll(new Diary(state, KeepApart.read(documents, state.beds().values())).spread(wanted));
        rounds.sort(Comparator.comparing(Round::day).thenComparing(Round::id));
        return rounds;
    }

    /** @param way where each plant comes as one walks */
    private Round round(String id, List<Task> all, GardenState state, Map<String, Integer> way) {
        RoundKind kind = kind(all.get(0).rule());
        List<Task> walked = new ArrayList<>(all);
        List<String> beds = List.copyOf(state.beds().keySet());
        walked.sort(Comparator
                .comparing((Task task) -> task.subject().bed().map(in -> beds.indexOf(in.bed().id())).orElse(-1))
                .thenComparing(task -> aroundThePlants(kind, task))
                .thenComparingInt(task -> task.subject().plants().stream()
                        .mapToInt(plant -> way.getOrDefault(plant.plant().id(), -1)).min().orElse(-1))
                .thenComparing(task -> task.subject().id()).thenComparingInt(task -> kind.order(task.rule()))
                .thenComparing(Task::id));
        List<Task> open = walked.stream().filter(task -> task.state() == Task.State.OPEN).toList();
        List<Task> finished = walked.stream().filter(task -> task.state() != Task.State.OPEN).toList();
        return new Round(id, kind, day(kind, open.isEmpty() ? finished : open, state), open, finished);
    }

    /**
     * The middle one of the days of the tasks that can be done together, on which all of these are in time. Those whose
     * time begins when there is no working day left for others wait.
     */
    private static LocalDate day(RoundKind kind, List<Task> tasks, GardenState state) {
        List<LocalDate> days = tasks.stream().map(task -> kind.day(task, state.date())).sorted().toList();
        if (kind.start() || tasks.get(0).state() != Task.State.OPEN) { return days.get(0); }
        LocalDate last = tasks.stream().map(task -> task.window().last()).min(LocalDate::compareTo).orElseThrow();
        LocalDate working = last;
        while (!state.garden().workDays().contains(working.getDayOfWeek())) {
            working = working.minusDays(1);
        }
        LocalDate end = working.isBefore(days.get(0)) ? last : working;
        LocalDate first = tasks.stream().map(task -> task.window().first()).filter(day -> !day.isAfter(end))
                .max(LocalDate::compareTo).orElse(end);
        LocalDate middle = days.get((days.size() - 1) / 2);
        LocalDate inTime = middle.isBefore(first) ? first : middle;
        return inTime.isAfter(end) ? end : inTime;
    }

    /** After what is done to its plants comes what is done to a whole bed, but for a first look, and clearing up. */
    private static boolean aroundThePlants(RoundKind kind, Task task) {
        String done = task.subject().kind();
        return kind.order(task.rule()) > 0
                && (done.equals("bed") || (done.equals("stand") && task.rule().work().contains("dispose")));
    }
}

package org.oldwood.sheet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.oldwood.facts.Amount;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Task;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;

/** The jobs by month: this month's and the next one's in full, later ones in a line each. */
final class JobMonths {
    private JobMonths() {}

    static List<JobMonth> of(List<Task> tasks, LocalDate today) {
        Map<YearMonth, List<Task>> byMonth = new TreeMap<>();
        for (Task task : tasks) {
            if (task.state() == Task.State.OPEN) {
                byMonth.computeIfAbsent(YearMonth.from(task.day()), month -> new ArrayList<>())
                        .add(task);
            }
        }
        YearMonth now = YearMonth.from(today);
        byMonth.putIfAbsent(now, List.of());
        byMonth.putIfAbsent(now.plusMonths(1), List.of());
        List<JobMonth> months = new ArrayList<>();
        byMonth.forEach((month, jobs) ->
                months.add(month(Dates.month(month.atDay(1)), !month.isAfter(now.plusMonths(1)), jobs)));
        return months;
    }

    /** What is done or was left out, by day; empty where there is nothing. */
    static List<JobMonth> finished(List<Task> tasks) {
        List<Task> finished =
                tasks.stream().filter(task -> task.state() != Task.State.OPEN).toList();
        return finished.isEmpty() ? List.of() : List.of(month("Done so far", false, finished));
    }

    private static JobMonth month(String title, boolean full, List<Task> tasks) {
        List<String> cautions = new ArrayList<>();
        List<JobMonth.Job> jobs = new ArrayList<>();
        for (TaskGroup group : TaskGroup.of(tasks)) {
            Set<Integer> numbers = new LinkedHashSet<>();
            if (full) {
                group.tasks().forEach(task -> number(task, cautions, numbers));
            }
            jobs.add(new JobMonth.Job(
                    group.title(),
                    group.rule().craft(),
                    full ? group.rule().text() : "",
                    full ? common(group) : List.of(),
                    numbers.stream().sorted().toList(),
                    lines(group, full)));
        }
        return new JobMonth(title, full, jobs, List.copyOf(cautions));
    }

    private static void number(Task task, List<String> cautions, Set<Integer> numbers) {
        for (String caution : Cautions.lines(task.cautions())) {
            if (!cautions.contains(caution)) {
                cautions.add(caution);
            }
            numbers.add(cautions.indexOf(caution) + 1);
        }
    }

    /** The notes that stand with each of several tasks; they are told once. */
    private static List<String> common(TaskGroup group) {
        List<String> common = new ArrayList<>();
        if (group.tasks().size() > 1) {
            common.addAll(notes(group.tasks().get(0)));
            group.tasks().forEach(task -> common.retainAll(notes(task)));
        }
        return common;
    }

    private static List<String> own(TaskGroup group, Task task) {
        List<String> own = new ArrayList<>(notes(task));
        own.removeAll(common(group));
        return own;
    }

    private static List<String> notes(Task task) {
        return task.amount().map(Amount::lines).orElse(List.of());
    }

    /** Tasks alike in all but their subject share a line. */
    private static List<JobMonth.Line> lines(TaskGroup group, boolean full) {
        Map<JobMonth.Line, List<JobMonth.Who>> alike = new LinkedHashMap<>();
        for (Task task : group.tasks()) {
            boolean said = task.title().equals(group.title());
            alike.computeIfAbsent(line(group, task, full), any -> new ArrayList<>())
                    .add(new JobMonth.Who(task.id(), said ? "" : task.subject().words()));
        }
        List<JobMonth.Line> lines = new ArrayList<>();
        alike.forEach((line, tasks) -> lines.add(line.of(tasks)));
        return lines;
    }

    private static JobMonth.Line line(TaskGroup group, Task task, boolean full) {
        return new JobMonth.Line(
                List.of(),
                task.day(),
                task.window().first(),
                task.window().last(),
                task.amount().map(TaskWords::inWords).orElse(""),
                full ? own(group, task) : List.of(),
                task.state().name().toLowerCase(Locale.ROOT));
    }
}

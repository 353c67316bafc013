package org.oldwood.sheet.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.settle.Share;
import org.oldwood.report.TaskWords;
import org.oldwood.sheet.round.RoundPage.Box;
import org.oldwood.sheet.round.RoundPage.Job;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/**
 * The jobs of a round as the page lists them, one for each rule: in full with a box for each plant or bed, in brief
 * with one box.
 *
 * @param drawn the tasks that have a card on the page
 * @param said the jobs that the page has told of so far; it grows
 * @param hows how they are done; it grows up to a few, so that the start stays short
 */
record RoundJobs(Set<String> drawn, Set<String> said, Set<String> hows) {
    private static final int MOST_BOXES = 16;
    private static final int MOST_HOWS = 5;

    /** What is done on the round's day, then what is not due yet, with the day from which it is. */
    List<Job> of(Round round, boolean brief) {
        List<Task> now = round.toDo();
        Map<String, List<Task>> byRule = round.tasks().stream()
                .sorted(Comparator.comparing((Task task) -> !now.contains(task))
                        .thenComparingInt(task -> round.kind().order(task.rule())))
                .collect(Collectors.groupingBy(task -> task.rule().id() + now.contains(task), LinkedHashMap::new,
                        Collectors.toList()));
        return byRule.values().stream().map(alike -> {
            String from = now.contains(alike.get(0)) ? ""
                    : ", from " + Dates.dayMonth(
                            alike.stream().map(task -> task.window().first()).min(LocalDate::compareTo).orElseThrow());
            return brief ? brief(round, alike, from) : full(alike, from);
        }).toList();
    }

    private Job full(List<Task> alike, String from) {
        Rule rule = alike.get(0).rule();
        String how = sentence(rule);
        String each = each(alike);
        boolean again = rule.repeatDays() > 0 && !said.add(words(alike) + each);
        boolean told = hows.size() >= MOST_HOWS || !hows.add(how);
        return new Job(words(alike) + from, told ? "" : how, boxes(alike), again ? "" : each);
    }

    /** A job in one line: how much each gets where that is the same, else how much all take. */
    private Job brief(Round round, List<Task> alike, String from) {
        String each = each(alike);
        Box all = new Box(alike.stream().map(Task::id).toList(), "", "");
        return new Job(words(alike) + from, "", List.of(all), each.isEmpty() ? inAll(round, alike) : each);
    }

    private static String inAll(Round round, List<Task> alike) {
        List<Purchase> materials = new Round(round.id(), round.kind(), round.day(), alike, List.of()).materials();
        if (!materials.isEmpty()) { return Words.list(materials.stream().map(Purchase::told).toList()); }
        List<Amount> amounts = alike.stream().flatMap(task -> task.amount().stream()).toList();
        List<String> units = amounts.stream().map(Amount::unit).distinct().toList();
        long sum = Math.round(amounts.stream().mapToDouble(Amount::value).sum());
        return units.size() == 1 && !units.contains("plants") && sum > 0 && amounts.size() == alike.size()
                ? "%s %s in all".formatted(sum, units.get(0))
                : "";
    }

    /** Of one task its own title; of several the rule's, with their crops in place of their names. */
    private static String words(List<Task> tasks) {
        Task first = tasks.get(0);
        if (tasks.size() == 1) { return first.title(); }
        String crops = tasks.stream()
                .map(task -> task.subject().crop().map(crop -> crop.plural()).orElse(task.subject().words())).distinct()
                .collect(Collectors.joining(", "));
        List<String> beds = tasks.stream().flatMap(task -> bed(task).stream()).distinct().toList();
        String bed = beds.size() == 1 ? beds.get(0) : Words.count(beds.size(), "bed", "beds");
        return TaskWords.title(tasks, crops, bed);
    }

    private static Optional<String> bed(Task task) { return task.subject().bed().map(in -> in.bed().name()); }

    private static String sentence(Rule rule) {
        int end = rule.text().indexOf(". ");
        return end < 0 ? rule.text() : rule.text().substring(0, end + 1);
    }

    /** A box for each task, or for each bed where they are many; for one task of few plants one for each of them. */
    private List<Box> boxes(List<Task> tasks) {
        if (tasks.size() > MOST_BOXES) {
            return tasks.stream()
                    .collect(Collectors.groupingBy(task -> bed(task).orElse(""), LinkedHashMap::new,
                            Collectors.toList()))
                    .entrySet().stream().map(each -> new Box(each.getValue().stream().map(Task::id).toList(),
                            "%s: %s".formatted(each.getKey(), each.getValue().size()), ""))
                    .toList();
        }
        boolean said = !each(tasks).isEmpty();
        int all = tasks.stream().mapToInt(task -> open(task).size()).sum();
        List<Box> boxes = new ArrayList<>();
        for (Task task : tasks) {
            List<String> open = open(task);
            List<String> id = List.of(task.id());
            if (!open.isEmpty() && all <= MOST_BOXES) {
                open.forEach(plant -> boxes.add(new Box(id, plant, "")));
            } else {
                boxes.add(new Box(id, tasks.size() == 1 ? "" : task.subject().label(), said ? "" : inWords(task)));
            }
        }
        return boxes;
    }

    /** The plants that it is still to be done to; none where it is about one alone. */
    private static List<String> open(Task task) {
        Set<String> plants = task.subject().plants().stream().map(plant -> plant.plant().id())
                .collect(Collectors.toSet());
        return plants.size() < 2 ? List.of()
                : task.shares().stream().filter(Share::open).map(Share::id).filter(plants::contains).toList();
    }

    /** The amount of each, where it is the same for all. */
    private String each(List<Task> tasks) {
        String first = inWords(tasks.get(0));
        boolean same = tasks.stream().allMatch(task -> inWords(task).equals(first));
        boolean many = tasks.size() > 1 && !first.isEmpty() && Character.isDigit(first.charAt(0));
        return same ? many ? first + " each" : first : "";
    }

    /** The amount, but for a cut that has its card on the page. */
    private String inWords(Task task) {
        return drawn.contains(task.id()) ? "as on the card" : task.amount().map(TaskWords::inWords).orElse("");
    }
}

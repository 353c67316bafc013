package org.oldwood.sheet.round;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.settle.Share;
import org.oldwood.report.TaskWords;
import org.oldwood.sheet.round.RoundPage.Box;
import org.oldwood.sheet.round.RoundPage.Job;
import org.oldwood.words.Words;

/**
 * The jobs of a round as the page lists them: one for each rule, with a box for each plant or bed.
 *
 * @param drawn the tasks that have a card on the page
 * @param said what the page has said so far; it grows
 */
record RoundJobs(Set<String> drawn, Set<String> said) {
    private static final int MOST_BOXES = 16;

    List<Job> of(Round round) {
        List<Job> jobs = new ArrayList<>();
        List<Task> left = new ArrayList<>(round.tasks());
        left.sort(Comparator.comparingInt(task -> round.kind().order(task.rule())));
        while (!left.isEmpty()) {
            Task first = left.get(0);
            List<Task> alike =
                    left.stream().filter(task -> isAlike(task, first)).toList();
            left.removeAll(alike);
            String how = sentence(first.rule());
            boolean again = first.rule().repeatDays() > 0 && !said.add(words(alike) + amount(alike, drawn));
            jobs.add(new Job(
                    words(alike), said.add(how) ? how : "", boxes(alike, drawn), again ? "" : amount(alike, drawn)));
        }
        return jobs;
    }

    private static boolean isAlike(Task task, Task other) {
        return task.rule().id().equals(other.rule().id());
    }

    /** Of one task its own title; of several the rule's, with their crops in place of their names. */
    private static String words(List<Task> tasks) {
        Task first = tasks.get(0);
        if (tasks.size() == 1) {
            return first.title();
        }
        String crops = tasks.stream()
                .map(task -> task.subject()
                        .crop()
                        .map(crop -> crop.plural())
                        .orElse(task.subject().words()))
                .distinct()
                .collect(Collectors.joining(", "));
        List<String> beds = tasks.stream()
                .flatMap(task -> task.subject().bed().stream())
                .map(in -> in.bed().name())
                .distinct()
                .toList();
        String bed = beds.size() == 1 ? beds.get(0) : Words.count(beds.size(), "bed", "beds");
        return first.rule()
                .title()
                .replace("{subject}", crops)
                .replace("{crops}", crops)
                .replace("{crop}", crops)
                .replace("{bed}", bed)
                .replace("{count}", Integer.toString(tasks.size()))
                .replace("{season}", first.season().label());
    }

    private static String sentence(Rule rule) {
        int end = rule.text().indexOf(". ");
        return end < 0 ? rule.text() : rule.text().substring(0, end + 1);
    }

    /** A box for each task; for one task of several plants a box for each of them, where they are few. */
    private static List<Box> boxes(List<Task> tasks, Set<String> drawn) {
        List<Box> boxes = new ArrayList<>();
        boolean said = !amount(tasks, drawn).isEmpty();
        for (Task task : tasks) {
            Set<String> plants = task.subject().plants().stream()
                    .map(plant -> plant.plant().id())
                    .collect(Collectors.toSet());
            List<Share> open = task.shares().stream()
                    .filter(share -> share.open() && plants.contains(share.id()))
                    .toList();
            if (plants.size() > 1 && !open.isEmpty() && open.size() <= MOST_BOXES) {
                open.forEach(share -> boxes.add(new Box(task.id(), share.id(), "")));
            } else {
                boxes.add(new Box(task.id(), tasks.size() == 1 ? "" : whom(task), said ? "" : inWords(task, drawn)));
            }
        }
        return boxes;
    }

    /** The amount of all, where each has the same, or where there is but one task. */
    private static String amount(List<Task> tasks, Set<String> drawn) {
        String first = inWords(tasks.get(0), drawn);
        return tasks.stream().allMatch(task -> inWords(task, drawn).equals(first)) ? first : "";
    }

    /** The amount, but for a cut that has its card on the page. */
    private static String inWords(Task task, Set<String> drawn) {
        return drawn.contains(task.id())
                ? "as on the card"
                : task.amount().map(TaskWords::inWords).orElse("");
    }

    private static String whom(Task task) {
        return task.subject().kind().equals("plant")
                ? task.subject().id()
                : task.subject().words();
    }
}

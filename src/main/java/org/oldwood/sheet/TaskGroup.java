package org.oldwood.sheet;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.crop.Crop;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.report.TaskWords;

/**
 * Tasks of one rule in one bed: one job to the reader, even where it is done to forty bushes.
 *
 * @param bed the bed's id; empty for the whole garden
 * @param tasks by day, at least one
 */
record TaskGroup(Rule rule, String bed, List<Task> tasks) {

    /** Tasks gathered by rule and bed, in the order of the first day. */
    static List<TaskGroup> of(List<Task> tasks) {
        Map<String, List<Task>> byKey = tasks.stream().collect(Collectors
                .groupingBy(task -> task.rule().id() + "@" + bed(task), LinkedHashMap::new, Collectors.toList()));
        return byKey.values().stream().map(each -> new TaskGroup(each.get(0).rule(), bed(each.get(0)), each))
                .sorted(Comparator.comparing((TaskGroup group) -> group.tasks.get(0).day())
                        .thenComparing(group -> group.rule.id()))
                .toList();
    }

    static String bed(Task task) { return task.subject().bed().map(bed -> bed.bed().id()).orElse(""); }

    /** The job's name: of one task its own, of several with their crops in place of their names. */
    String title() {
        String own = tasks.get(0).title();
        boolean alike = tasks.stream().allMatch(task -> task.title().equals(own));
        String crops = tasks.stream().map(TaskGroup::plural).distinct().sorted().collect(Collectors.joining(", "));
        return alike ? own : TaskWords.title(tasks, crops, bed);
    }

    private static String plural(Task task) {
        Optional<Crop> crop = task.subject().crop();
        return task.subject().kind().equals("lot") ? crop.map(Crop::name).orElse("") + " cuttings"
                : crop.map(Crop::plural).orElse(task.subject().words());
    }
}

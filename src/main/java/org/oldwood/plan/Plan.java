package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A year of tasks.
 *
 * @param from the day it was made for
 * @param until the last day on which a window may open, included
 * @param tasks by day, then by id
 * @param notices what could not be placed or is past, for people
 */
public record Plan(LocalDate from, LocalDate until, List<Task> tasks, List<String> notices) {
    public Plan {
        tasks = List.copyOf(tasks);
        notices = List.copyOf(notices);
    }

    public Optional<Task> find(String id) {
        return tasks.stream().filter(task -> task.id().equals(id)).findFirst();
    }
}

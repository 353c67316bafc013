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
 * @param notices what could not be placed, for people
 * @param missed what was not done in its time, most harmful first
 */
public record Plan(LocalDate from, LocalDate until, List<Task> tasks, List<String> notices, List<Missed> missed) {
    public Plan {
        tasks = List.copyOf(tasks);
        notices = List.copyOf(notices);
        missed = List.copyOf(missed);
    }

    public Optional<Task> find(String id) { return tasks.stream().filter(task -> task.id().equals(id)).findFirst(); }
}

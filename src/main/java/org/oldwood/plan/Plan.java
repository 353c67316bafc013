package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A year of tasks.
 *
 * @param from the day it was made for
 * @param until the last day on which a window may open, included
 * @param tasks by day, then by id
 * @param notices what could not be placed, for people
 * @param missed what was not done in its time, most harmful first
 * @param unplaced due, but left no day by what must be kept apart from it
 */
public record Plan(LocalDate from, LocalDate until, List<Task> tasks, List<String> notices, List<Missed> missed,
        List<Task> unplaced) {
    public Plan {
        tasks = List.copyOf(tasks);
        notices = List.copyOf(notices);
        missed = List.copyOf(missed);
        unplaced = List.copyOf(unplaced);
    }

    /** The same of some tasks. */
    public Plan part(List<Task> some, List<Missed> missedOfThem) {
        return new Plan(from, until, some, notices, missedOfThem, unplaced);
    }

    /** What an unplaced task gives way to, in words. */
    public Optional<String> whyUnplaced(Task task) {
        return notices.stream().filter(notice -> notice.startsWith(task.title())).findFirst();
    }

    /** A task, though it has no day: it may be done all the same. */
    public Optional<Task> find(String id) {
        return Stream.concat(tasks.stream(), unplaced.stream()).filter(task -> task.id().equals(id)).findFirst();
    }
}

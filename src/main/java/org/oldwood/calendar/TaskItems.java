package org.oldwood.calendar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.care.Task;

/** Tasks as calendar items. */
public final class TaskItems {
    private TaskItems() {}

    /**
     * The item of a task.
     *
     * @param headline the line people see first
     * @param lines the text beneath it
     */
    public static Item of(Task task, String headline, List<String> lines) {
        return of(task, headline, String.join("\n", lines));
    }

    private static Item of(Task task, String headline, String text) {
        String bed = task.subject().bed().map(in -> in.bed().id()).orElse("");
        String place = task.subject().bed().map(in -> in.bed().name()).orElse("");
        return new Item(
                task.id(),
                new Item.Words(headline, text, task.rule().craft(), place),
                bed,
                new Item.Days(task.window().first(), task.window().last(), within(task)),
                progress(task));
    }

    /** The items of a plan, in its order; texts that come again are kept once. */
    public static List<Item> of(
            List<Task> tasks, Function<Task, String> headline, Function<Task, List<String>> lines) {
        Map<String, String> texts = new HashMap<>();
        List<Item> items = new ArrayList<>(tasks.size());
        for (Task task : tasks) {
            String text = String.join("\n", lines.apply(task));
            String known = texts.putIfAbsent(text, text);
            items.add(of(task, headline.apply(task), known == null ? text : known));
        }
        return items;
    }

    /** The chosen day; a task noted as done outside its window keeps the window's nearest day. */
    private static java.time.LocalDate within(Task task) {
        if (task.day().isBefore(task.window().first())) {
            return task.window().first();
        }
        return task.day().isAfter(task.window().last()) ? task.window().last() : task.day();
    }

    private static Item.Progress progress(Task task) {
        return switch (task.state()) {
            case OPEN -> Item.Progress.OPEN;
            case SKIPPED -> Item.Progress.SKIPPED;
            case DONE ->
                    Optional.of(task.finished().orElse(task.day()))
                            .map(Item.Progress::done)
                            .orElseThrow();
        };
    }
}

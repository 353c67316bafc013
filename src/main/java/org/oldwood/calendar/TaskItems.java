package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.format.Text;
import org.oldwood.garden.BedState;
import org.oldwood.plan.Task;

/** A plan's tasks as calendar items. */
public final class TaskItems implements Items {
    private final List<Task> tasks;
    private final Map<String, Integer> begun;
    private final Set<String> done;
    private final Words words;
    private final Text.Maker texts = new Text.Maker();

    /** What people read of a task. */
    public interface Words {
        /** The line that they see first. */
        String headline(Task task);

        /** The text beneath it. */
        List<String> lines(Task task);
    }

    /**
     * The items of tasks, in their order.
     *
     * @param begun by id, how much of a task is done, in per cent; 0 where that is not said
     * @param done the ids of all that the journal has as done, also of those that the plan no longer has
     */
    public TaskItems(List<Task> tasks, Map<String, Integer> begun, Set<String> done, Words words) {
        this.done = done;
        this.tasks = tasks;
        this.begun = begun;
        this.words = words;
    }

    @Override
    public int count() {
        return tasks.size();
    }

    @Override
    public String identity(int number) {
        return tasks.get(number).id();
    }

    @Override
    public Item.Days days(int number) {
        Task task = tasks.get(number);
        return new Item.Days(task.window().first(), task.window().last(), within(task));
    }

    /** The chosen day; a task noted as done outside its window keeps the window's nearest day. */
    private static LocalDate within(Task task) {
        if (task.day().isBefore(task.window().first())) {
            return task.window().first();
        }
        return task.day().isAfter(task.window().last()) ? task.window().last() : task.day();
    }

    @Override
    public int plusMinusDays(int number) {
        return tasks.get(number).window().plusMinusDays();
    }

    @Override
    public boolean isDone(String identity) {
        return done.contains(identity);
    }

    @Override
    public Item.Progress progress(int number) {
        Task task = tasks.get(number);
        return switch (task.state()) {
            case OPEN -> open(task.id());
            case SKIPPED -> Item.Progress.SKIPPED;
            case DONE -> Item.Progress.done(task.finished().orElse(task.day()));
        };
    }

    private Item.Progress open(String id) {
        Integer percent = begun.isEmpty() ? null : begun.get(id);
        return percent == null ? Item.Progress.OPEN : Item.Progress.begun(percent);
    }

    @Override
    public Item item(int number) {
        Task task = tasks.get(number);
        String bed = "";
        String place = "";
        Optional<BedState> in = task.subject().bed();
        if (in.isPresent()) {
            bed = in.get().bed().id();
            place = in.get().bed().name();
        }
        return new Item(
                task.id(),
                new Item.Words(words.headline(task), "", task.rule().craft(), place),
                bed,
                days(number),
                progress(number));
    }

    @Override
    public Text text(int number) {
        return texts.of(words.lines(tasks.get(number)));
    }
}

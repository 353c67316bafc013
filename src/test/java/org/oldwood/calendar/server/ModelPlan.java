package org.oldwood.calendar.server;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Plans;

/** The model's plan, which changes: titles, amounts, days, progress; tasks are withdrawn, and plants grubbed. */
final class ModelPlan {
    static final int PLUS_MINUS = 5;

    private final Map<String, Item> items = new TreeMap<>();
    private final Map<String, Item.Progress> done = new HashMap<>();
    /** Withdrawn, and nobody remembers that they were published. */
    private final Set<String> forgotten = new HashSet<>();

    private final Random random;
    private boolean isForgotten;

    ModelPlan(List<String> tasks, Random random) {
        this.random = random;
        tasks.forEach(task -> items.put(task, fresh(task)));
        // so that a plan is never empty
        items.put("stay", fresh("stay"));
    }

    private Item fresh(String task) {
        LocalDate first = LocalDate.of(2027, 2, 1).plusDays(random.nextInt(40));
        return with(Plans.item(task, new Item.Words("Do " + task + random.nextInt(9), "", "feeding", "Row A"),
                new Item.Days(first, first.plusDays(10), first)), 10 + random.nextInt(90));
    }

    private static Item with(Item item, int grams) {
        Item.Words words = item.words();
        return changed(item, new Item.Words(words.title(),
                "Take " + grams + " g, " + item.identity() + "; at the base.", "feeding", "Row A"), item.days());
    }

    private static Item changed(Item item, Item.Words words, Item.Days days) {
        return new Item(item.identity(), "", List.of(), words, item.bed(), days, PLUS_MINUS, item.progress());
    }

    Optional<Item> item(String task) { return Optional.ofNullable(items.get(task)); }

    /** Whether it is not to be done, by the plan or the journal. */
    boolean isAway(String task) {
        return item(task).filter(item -> !item.progress().state().isCancelled()).isEmpty();
    }

    /** Whether an object of a task that the plan does not have may stay on the server though nobody wrote in it. */
    boolean mayStay(String task) {
        return done.containsKey(task) || forgotten.contains(task);
    }

    void wasForgotten() {
        isForgotten = true;
        for (String task : List.of("cut", "feed", "net")) {
            if (!items.containsKey(task)) { forgotten.add(task); }
        }
    }

    /** What came back is known again only then: withdrawn once more before, it may stay. */
    void wasPublished() {
        isForgotten = false;
        forgotten.removeAll(items.keySet());
    }

    void done(String task, LocalDate day) {
        done.put(task, Item.Progress.done(day));
        items.computeIfPresent(task, (name, item) -> item.with(Item.Progress.done(day)));
    }

    /** The plant of a task is gone. */
    void grub(String task) { items.remove(task); }

    void move(String task, int by) {
        items.computeIfPresent(task, (name, item) -> {
            Item.Days days = item.days();
            return changed(item, item.words(),
                    new Item.Days(days.first().plusDays(by), days.last().plusDays(by), days.best().plusDays(by)));
        });
    }

    /** A day's weather, a grubbed plant, a change of mind. */
    String change(String task) {
        Item item = items.get(task);
        if (item == null) {
            if (!done.containsKey(task)) { items.put(task, fresh(task)); }
            return task + " back";
        }
        switch (random.nextInt(6)) {
            case 0 -> {
                items.remove(task);
                if (isForgotten) { forgotten.add(task); }
            }
            case 1 -> items.put(task, with(item, 40 + random.nextInt(4)));
            case 2 -> move(task, random.nextInt(PLUS_MINUS) - 2);
            case 3 -> {
                if (!done.containsKey(task)) {
                    items.put(task, item.with(random.nextBoolean() ? Item.Progress.SKIPPED : Item.Progress.OPEN));
                }
            }
            default -> items.put(task, fresh(task).with(item.progress()));
        }
        Item now = items.get(task);
        return now == null ? task + " withdrawn"
                : now.words().title() + " " + now.progress().state() + " " + now.days().first();
    }

    List<Item> all() { return List.copyOf(items.values()); }

    Map<String, Item.Progress> came() { return Map.copyOf(done); }
}

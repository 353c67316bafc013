package org.oldwood.calendar;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.oldwood.calendar.format.Text;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/**
 * A plan held against what was written before, and what is to be remembered of it. Of each task only what tells whether
 * it changed is kept; its words are made anew when they are asked for.
 */
public final class Memory {
    private static final Comparator<Outgoing> BY_IDENTITY = (one, other) -> one.identity.compareTo(other.identity);
    private static final Comparator<Outgoing> BY_FIRST_DAY =
            (one, other) -> one.days.first().compareTo(other.days.first());

    private final Export.Garden garden;
    private final Layout layout;
    private final Items plan;
    private final Revision revision;
    private final Outgoing[] planned;
    private final List<Outgoing> byIdentity;
    private final List<Outgoing> written;
    private final List<Remembered> history = new ArrayList<>();
    private final Map<String, String> adopted = new HashMap<>();
    private final Uids uids;
    private final List<String> notices = new ArrayList<>();

    /** @throws RecordException for a plan without tasks: a good file is worth more than an empty one */
    public Memory(Export.Garden garden, Layout layout, LocalDate today, Items plan) throws IOException {
        if (plan.count() == 0) {
            throw new RecordException(emptyPlan(garden));
        }
        this.garden = garden;
        this.layout = layout;
        this.plan = plan;
        revision = new Revision(today);
        planned = planned(plan);
        Before before = new Before();
        Problems problems = new Problems();
        CalendarState.each(garden.folder(), problems, before, adopted);
        problems.list().forEach(problem -> notices.add(problem.inWords()));
        uids = new Uids(garden.id(), adopted);
        byIdentity = new ArrayList<>(Arrays.asList(planned));
        before.vanished.values().forEach(this::vanished);
        // few tasks vanish, and what is in order already costs little to order
        byIdentity.sort(BY_IDENTITY);
        written = new ArrayList<>(byIdentity);
        written.sort(BY_FIRST_DAY);
    }

    private static Outgoing[] planned(Items plan) {
        Outgoing[] planned = new Outgoing[plan.count()];
        for (int i = 0; i < planned.length; i++) {
            planned[i] = Outgoing.planned(plan, i);
        }
        Arrays.sort(planned, BY_IDENTITY);
        for (int i = 1; i < planned.length; i++) {
            if (planned[i].identity.equals(planned[i - 1].identity)) {
                throw new IllegalArgumentException("two tasks are called " + planned[i].identity);
            }
        }
        return planned;
    }

    private void vanished(Remembered old) {
        // a plant may be grubbed after its task was done and before that was written
        if (plan.isDone(old.item().identity())) {
            history.add(old);
            return;
        }
        switch (revision.fate(old)) {
            case WITHDRAWN -> byIdentity.add(Outgoing.withdrawn(old, layout));
            case HISTORY -> history.add(old);
            case FORGOTTEN -> {}
        }
    }

    /** Everything to write, by first day, then identity. */
    public List<Outgoing> written() {
        return written;
    }

    /** A task's item; whether with its text is not said. */
    Item item(Outgoing task) {
        if (task.gone != null) {
            return task.gone;
        }
        Item item = plan.item(task.number);
        return item.days().equals(task.days) ? item : item.on(task.days);
    }

    /** Whether a task goes out as one that is not to be done. */
    public boolean isCancelled(Outgoing task) {
        return task.gone != null || plan.progress(task.number).state().isCancelled();
    }

    /** All that a task says; from now on its revision is known. */
    public Content content(Outgoing task) {
        Text text = task.gone == null ? plan.text(task.number) : Text.NONE;
        Content content = Content.of(item(task), text);
        if (task.stamp == null) {
            task.hash = Remembered.hash(content, layout);
            task.stamp = revision.stamp(task);
        }
        return content;
    }

    public Uids uids() {
        return uids;
    }

    public List<String> notices() {
        return notices;
    }

    /** Remembers the plan as written. */
    public void keep() throws IOException {
        history.sort(
                (one, other) -> one.item().identity().compareTo(other.item().identity()));
        Output.write(garden.folder().resolve(CalendarState.FILE), out -> {
            StateWriter writer = new StateWriter(out, adopted);
            int old = 0;
            for (Outgoing task : byIdentity) {
                while (old < history.size()
                        && history.get(old).item().identity().compareTo(task.identity) < 0) {
                    writer.line(history.get(old++));
                }
                if (task.stamp == null) {
                    content(task);
                }
                Item item = item(task);
                writer.line(item, task.stamp(), task.hash, Shown.of(item.days(), layout));
            }
            while (old < history.size()) {
                writer.line(history.get(old++));
            }
            writer.end();
        });
    }

    private static Problem emptyPlan(Export.Garden garden) {
        return new Problem(
                "empty-plan",
                Place.of(garden.name()),
                "has no task to write, so the calendars were left as they are",
                "See what the record lacks with: oldwood check");
    }

    /** What was written before, task by task, held against the plan. */
    private final class Before implements CalendarState.Sink {
        final Map<String, Remembered> vanished = new LinkedHashMap<>();
        private int next;

        @Override
        public boolean takes(StateLine line) {
            Outgoing task = find(line.identity());
            if (task == null) {
                return false;
            }
            Item.Days days = days(task, line.days(), line.state());
            know(task, line.stamp(), line.hash());
            task.isMoved = !line.shown().equals(Shown.of(days, layout)) || line.state() != state(task);
            return true;
        }

        @Override
        public void takes(Remembered old) {
            Item item = old.item();
            Outgoing task = find(item.identity());
            if (task == null) {
                vanished.put(item.identity(), old);
                return;
            }
            Item.Days days = days(task, item.days(), item.progress().state());
            know(task, old.stamp(), old.hash());
            task.isMoved = !old.shown().equals(Shown.of(days, layout))
                    || item.progress().state() != state(task);
        }

        private Item.State state(Outgoing task) {
            return plan.progress(task.number).state();
        }

        private Item.Days days(Outgoing task, Item.Days was, Item.State then) {
            Item.Days is = plan.days(task.number);
            boolean isDue = then.isDue() && state(task).isDue();
            task.days = isDue ? revision.steady(is, was, () -> plan.plusMinusDays(task.number)) : is;
            return task.days;
        }

        private void know(Outgoing task, Stamp stamp, long hash) {
            task.stampBefore = stamp;
            task.hashBefore = hash;
        }

        /** The lines come by identity, so the next one is nearly always meant. */
        private @Nullable Outgoing find(String identity) {
            if (next < planned.length && planned[next].identity.equals(identity)) {
                return planned[next++];
            }
            int low = 0;
            int high = planned.length - 1;
            while (low <= high) {
                int middle = (low + high) >>> 1;
                int order = planned[middle].identity.compareTo(identity);
                if (order == 0) {
                    next = middle + 1;
                    return planned[middle];
                }
                low = order < 0 ? middle + 1 : low;
                high = order < 0 ? high : middle - 1;
            }
            return null;
        }
    }
}

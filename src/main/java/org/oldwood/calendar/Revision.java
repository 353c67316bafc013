package org.oldwood.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which revision of each task a plan makes, given what was written before: unchanged tasks keep
 * their stamp, changed ones get a new one, vanished ones are withdrawn for as long as somebody may
 * still see them.
 */
final class Revision {
    /** A month's page shows up to six days of each neighbour; two months on, nobody sees it. */
    static final int SEEN_FOR_DAYS = 62;

    /** Long after every copy is gone, a task is forgotten. */
    static final int REMEMBERED_FOR_DAYS = 800;

    private final Layout layout;
    private final LocalDate today;
    private final Map<String, Remembered> before;
    private final Map<String, Remembered> after = new LinkedHashMap<>();
    private final List<Written> written = new ArrayList<>();

    /** An item and the revision with which it goes out. */
    record Written(Item item, Stamp stamp) {}

    private Revision(Layout layout, LocalDate today, Map<String, Remembered> before) {
        this.layout = layout;
        this.today = today;
        this.before = before;
    }

    static Revision of(
            List<Item> plan, Map<String, Remembered> before, Layout layout, LocalDate today) {
        Revision revision = new Revision(layout, today, before);
        Set<String> planned = new HashSet<>();
        for (Item item : plan) {
            if (!planned.add(item.identity())) {
                throw new IllegalArgumentException("two tasks are called " + item.identity());
            }
            revision.write(revision.steady(item));
        }
        for (Remembered old : before.values()) {
            if (!planned.contains(old.item().identity())) {
                revision.vanished(old);
            }
        }
        revision.written.sort(
                Comparator.comparing((Written w) -> w.item().days().first())
                        .thenComparing(w -> w.item().identity()));
        return revision;
    }

    /** Everything to write, by first day, then identity. */
    List<Written> written() {
        return written;
    }

    /** What to remember for the next time. */
    Map<String, Remembered> after() {
        return after;
    }

    /**
     * A task left undone on its best day is planned for a later one every day anew. What was shown
     * stays, or every calendar would change daily.
     */
    private Item steady(Item item) {
        Remembered old = before.get(item.identity());
        if (old == null
                || !old.item().progress().state().isDue()
                || !item.progress().state().isDue()) {
            return item;
        }
        Item.Days was = old.item().days();
        Item.Days is = item.days();
        boolean isPutOff =
                was.first().equals(is.first())
                        && was.last().equals(is.last())
                        && !was.best().isAfter(today)
                        && !is.best().isBefore(today);
        return isPutOff ? item.on(was) : item;
    }

    private void write(Item item) {
        Remembered now = Remembered.of(item, new Stamp(0, startOf(today)), layout);
        Remembered old = before.get(item.identity());
        Stamp stamp = old == null ? now.stamp() : stamp(old, now);
        written.add(new Written(item, stamp));
        after.put(item.identity(), now.with(stamp));
    }

    private Stamp stamp(Remembered old, Remembered now) {
        if (old.hash() == now.hash()) {
            return old.stamp();
        }
        boolean isSignificant =
                !old.shown().equals(now.shown())
                        || old.item().progress().state() != now.item().progress().state();
        return new Stamp(old.stamp().sequence() + (isSignificant ? 1 : 0), later(old.stamp()));
    }

    /** The plan of one day is always the same bytes, and a second change is still the later one. */
    private Instant later(Stamp old) {
        Instant now = startOf(today);
        return now.isAfter(old.changed()) ? now : old.changed().plusSeconds(1);
    }

    private static Instant startOf(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /**
     * A task that the plan no longer has. One that was open, with days still to come, is withdrawn;
     * one that was done or whose days are over is history and is left as it is.
     */
    private void vanished(Remembered old) {
        LocalDate last = old.item().days().last();
        if (last.plusDays(REMEMBERED_FOR_DAYS).isBefore(today)) {
            return;
        }
        Optional<Item> withdrawn = withdrawn(old, last);
        if (withdrawn.isPresent()) {
            write(withdrawn.get());
        } else {
            after.put(old.item().identity(), old);
        }
    }

    private Optional<Item> withdrawn(Remembered old, LocalDate last) {
        boolean isDue =
                switch (old.item().progress().state()) {
                    case OPEN, BEGUN -> !last.isBefore(today);
                    case WITHDRAWN -> !last.plusDays(SEEN_FOR_DAYS).isBefore(today);
                    case DONE, SKIPPED -> false;
                };
        return isDue ? Optional.of(old.item().with(Item.Progress.WITHDRAWN)) : Optional.empty();
    }
}

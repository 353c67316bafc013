package org.oldwood.calendar;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/** A plan held against what was written before, and what is to be remembered of it. */
final class Memory {
    private final Export.Garden garden;
    private final CalendarState before;
    private final Revision revision;
    private final Uids uids;
    private final List<String> notices = new ArrayList<>();

    /**
     * @throws RecordException for a plan without tasks: a good file is worth more than an empty one
     */
    Memory(Export.Garden garden, Layout layout, LocalDate today, List<Item> plan)
            throws IOException {
        if (plan.isEmpty()) {
            throw new RecordException(emptyPlan(garden));
        }
        this.garden = garden;
        Problems problems = new Problems();
        before = CalendarState.of(garden.folder(), problems);
        problems.list().forEach(problem -> notices.add(problem.inWords()));
        revision = Revision.of(plan, before.tasks(), layout, today);
        uids = new Uids(garden.id(), before.adopted());
    }

    List<Revision.Written> written() {
        return revision.written();
    }

    Uids uids() {
        return uids;
    }

    List<String> notices() {
        return notices;
    }

    /** The content of an item as a short name: equal as long as nothing of ours changes. */
    String contentOf(Item item) {
        Remembered now = revision.after().get(item.identity());
        if (now == null) {
            throw new IllegalStateException(item.identity() + " is written but not remembered");
        }
        return Long.toHexString(now.hash());
    }

    /** Remembers the plan as written. */
    void keep() throws IOException {
        if (!revision.after().equals(before.tasks())) {
            new CalendarState(revision.after(), before.adopted())
                    .write(garden.folder().resolve(CalendarState.FILE));
        }
    }

    private static Problem emptyPlan(Export.Garden garden) {
        return new Problem(
                "empty-plan",
                Place.of(garden.name()),
                "has no task to write, so the calendars were left as they are",
                "See what the record lacks with: oldwood check");
    }
}

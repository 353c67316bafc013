package org.oldwood.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.function.IntSupplier;

/**
 * Which revision of each task a plan makes, given what was written before: unchanged tasks keep their stamp, changed
 * ones get a new one, vanished ones are withdrawn for as long as somebody may still see them.
 */
final class Revision {
    /** A month's page shows up to six days of each neighbour; two months on, nobody sees it. */
    static final int SEEN_FOR_DAYS = 62;

    /** Long after every copy is gone, a task is forgotten. */
    static final int REMEMBERED_FOR_DAYS = 800;

    private final LocalDate today;
    private final Stamp first;

    /** What becomes of a task that the plan no longer has. */
    enum Fate {
        WITHDRAWN,
        /** It is left as it is in every calendar. */
        HISTORY,
        FORGOTTEN
    }

    private static final int WEEK = 7;

    Revision(LocalDate today) {
        this.today = today;
        this.first = new Stamp(0, startOf(today));
    }

    /**
     * A task left undone on its best day is planned for a later one every day anew, and the weather moves a window by
     * less than it is sure. What was shown stays, or every calendar would change daily; but a week is news, however
     * unsure the day: it is what a stage seen early comes to.
     */
    Item.Days steady(Item.Days is, Item.Days was, IntSupplier plusMinusDays) {
        if (is.equals(was)) {
            return is;
        }
        boolean isPutOff = was.first().equals(is.first())
                && was.last().equals(is.last())
                && !was.best().isAfter(today)
                && !is.best().isBefore(today);
        return isPutOff || (!was.best().isBefore(today) && isWithin(is, was, Math.min(WEEK, plusMinusDays.getAsInt())))
                ? was
                : is;
    }

    private static boolean isWithin(Item.Days is, Item.Days was, int days) {
        return apart(is.first(), was.first()) < days
                && apart(is.last(), was.last()) < days
                && apart(is.best(), was.best()) < days;
    }

    private static long apart(LocalDate one, LocalDate other) {
        return Math.abs(one.toEpochDay() - other.toEpochDay());
    }

    /** The revision of a task whose hash is known. */
    Stamp stamp(Outgoing task) {
        Stamp before = task.stampBefore;
        if (before == null) {
            return first;
        }
        return task.hashBefore == task.hash
                ? before
                : new Stamp(before.sequence() + (task.isMoved ? 1 : 0), later(before));
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
     * A task that the plan no longer has. One that was open, with days still to come, is withdrawn; one that was done
     * or whose days are over is history.
     */
    Fate fate(Remembered old) {
        LocalDate last = old.item().days().last();
        if (last.plusDays(REMEMBERED_FOR_DAYS).isBefore(today)) {
            return Fate.FORGOTTEN;
        }
        boolean isDue =
                switch (old.item().progress().state()) {
                    case OPEN, BEGUN -> !last.isBefore(today);
                    case WITHDRAWN -> !last.plusDays(SEEN_FOR_DAYS).isBefore(today);
                    case DONE, SKIPPED -> false;
                };
        return isDue ? Fate.WITHDRAWN : Fate.HISTORY;
    }
}

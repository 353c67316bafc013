package org.oldwood.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * Which revision of each item a plan makes, given what was written before: unchanged items keep their stamp, changed
 * ones get a new one, vanished ones are withdrawn for as long as somebody may still see them.
 */
final class Revision {
    /** A month's page shows up to six days of each neighbour; two months on, nobody sees it. */
    static final int SEEN_FOR_DAYS = 62;

    /** Long after every copy is gone, an item is forgotten. */
    static final int REMEMBERED_FOR_DAYS = 800;

    private static final int WEEK = 7;

    private final LocalDate today;

    /** What becomes of an item that the plan no longer has. */
    enum Fate {
        WITHDRAWN,
        /** It is left as it is in every calendar. */
        HISTORY,
        FORGOTTEN
    }

    Revision(LocalDate today) { this.today = today; }

    /**
     * A window that the weather moves by less than it is sure stays as it was shown, or every calendar would change
     * daily; but a week is news. One that is over stays as it was.
     */
    Item steady(Item is, Remembered was) {
        Item.Days then = was.item().days();
        if (!is.isDue()) { return is.on(then); }
        int sure = Math.min(WEEK, is.plusMinusDays());
        boolean isSmall = apart(is.days().first(), then.first()) < sure && apart(is.days().last(), then.last()) < sure;
        return isSmall && then.hold(is.days().best()) ? is.on(then.at(is.days().best())) : is;
    }

    /** Whether its days are over, and not for so long that nobody looks at it. */
    boolean isJustOver(Item.Days days) {
        return days.last().isBefore(today) && !days.last().plusDays(SEEN_FOR_DAYS).isBefore(today);
    }

    private static long apart(LocalDate one, LocalDate other) {
        return Math.abs(one.toEpochDay() - other.toEpochDay());
    }

    /** The revision of an item with this content; dates and states as they were shown tell whether it moved. */
    Stamp stamp(Outgoing out, String hash, String shown) {
        if (out.before.isEmpty()) { return new Stamp(0, startOf(today)); }
        Remembered was = out.before.get();
        if (was.hash().equals(hash)) { return was.stamp(); }
        boolean isMoved = !was.shown().equals(shown) || was.event() != out.event
                || was.item().progress().state() != out.item.progress().state();
        return new Stamp(was.stamp().sequence() + (isMoved ? 1 : 0), later(was.stamp()));
    }

    /** The plan of one day is always the same bytes, and a second change is still the later one. */
    private Instant later(Stamp old) {
        Instant now = startOf(today);
        return now.isAfter(old.changed()) ? now : old.changed().plusSeconds(1);
    }

    private static Instant startOf(LocalDate day) { return day.atStartOfDay().toInstant(ZoneOffset.UTC); }

    /**
     * An item that the plan no longer has. One that was open, with days still to come, is withdrawn; one that was done
     * or whose days are over is history.
     */
    Fate fate(Remembered old) {
        LocalDate last = old.item().days().last();
        if (last.plusDays(REMEMBERED_FOR_DAYS).isBefore(today)) { return Fate.FORGOTTEN; }
        boolean isSeen = switch (old.item().progress().state()) {
            case OPEN, BEGUN -> !last.isBefore(today);
            case WITHDRAWN -> !last.plusDays(SEEN_FOR_DAYS).isBefore(today);
            case DONE, SKIPPED -> false;
        };
        return isSeen ? Fate.WITHDRAWN : Fate.HISTORY;
    }
}

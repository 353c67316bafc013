package org.oldwood.calendar;

import org.jspecify.annotations.Nullable;

/** One task on its way into the calendars, and what was written for it before. */
public final class Outgoing {
    public final String identity;

    /** Its number in the plan; below 0 for one that the plan no longer has. */
    final int number;

    /** What is left of one that the plan no longer has. */
    final @Nullable Item gone;

    Item.Days days;

    @Nullable
    Stamp stampBefore;

    long hashBefore;

    /** Whether dates or status are other than before. */
    boolean isMoved;

    /** Known once its content was asked for. */
    @Nullable
    Stamp stamp;

    public long hash;

    private Outgoing(String identity, int number, @Nullable Item gone, Item.Days days) {
        this.identity = identity;
        this.number = number;
        this.gone = gone;
        this.days = days;
    }

    static Outgoing planned(Items plan, int number) {
        return new Outgoing(plan.identity(number), number, null, plan.days(number));
    }

    static Outgoing withdrawn(Remembered old, Layout layout) {
        Item item = old.item().with(Item.Progress.WITHDRAWN);
        Outgoing outgoing = new Outgoing(item.identity(), -1, item, item.days());
        outgoing.stampBefore = old.stamp();
        outgoing.hashBefore = old.hash();
        outgoing.isMoved = old.item().progress().state() != Item.State.WITHDRAWN
                || !old.shown().equals(Shown.of(item.days(), layout));
        return outgoing;
    }

    /** The revision with which it goes out. */
    public Stamp stamp() {
        if (stamp == null) {
            throw new IllegalStateException(identity + " was not asked for its content yet");
        }
        return stamp;
    }
}

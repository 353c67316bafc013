package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One item on its way into the calendars, and what was written for it before. */
public final class Outgoing {
    final Optional<Remembered> before;

    /**
     * The day that the plan would have, be it free or not; of one that keeps its day, what the plan had when it was
     * chosen.
     */
    LocalDate planned;

    /** The titles of rounds that found no day of their own, and are told in this one's event. */
    final List<String> guests = new ArrayList<>();

    Item item;
    Event event = Event.OWN;
    boolean rings;
    private boolean past;
    private String hash = "";
    private @Nullable Stamp stamp;

    /** Whether an item has an event of its own. */
    enum Event {
        OWN,
        /** It had one, which was called off. */
        OFF,
        NONE
    }

    Outgoing(Item item, Optional<Remembered> before) {
        this.item = item;
        this.planned = item.days().best();
        this.before = before;
        this.past = before.isEmpty() && !item.isDue();
    }

    /** Whether it was over before it stood in a calendar, as far as is remembered, and is no news in one. */
    public boolean isPast() {
        return past;
    }

    /** It stands in a calendar after all. */
    public void isThere() { past = false; }

    public String identity() { return item.identity(); }

    public String title() { return item.words().title(); }

    /** Without an event of its own from now on. */
    void callOffEvent() {
        event = before.isEmpty() || before.get().event() == Event.NONE ? Event.NONE : Event.OFF;
    }

    /** Whether there is, or was, anything of this kind to write: a round without a day of its own has no event. */
    public boolean has(String component) {
        return component.equals("VTODO") || event != Event.NONE;
    }

    /** Whether it goes out as something that is not to be done. */
    public boolean isCancelled(String component) {
        return item.progress().state().isCancelled() || (component.equals("VEVENT") && event == Event.OFF);
    }

    /** The revision with which it goes out, once its content is known. */
    void stamp(String itsHash, Stamp itsStamp) {
        hash = itsHash;
        stamp = itsStamp;
    }

    Stamp stamp() {
        if (stamp == null) { throw new IllegalStateException(identity() + " has no revision yet"); }
        return stamp;
    }

    /** Tells contents apart. */
    public String hash() { return hash; }

    Remembered remembered(Layout layout) {
        return new Remembered(item, stamp(), layout.shown(item.days()), hash, planned, event, rings);
    }
}

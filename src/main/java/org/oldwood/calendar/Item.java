package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.calendar.format.Hygiene;

/**
 * One round of work as a calendar shows it, or a task of one as a to-do of its own.
 *
 * @param identity what makes it the same for ever, as a round's or a task's id; never dates, titles or names
 * @param parent the round of a task that has a to-do of its own, which has no event; empty otherwise
 * @param tasks the ids of the tasks that are settled when it is ticked off; empty where it is one itself
 * @param bed the bed's id, by which calendars can be split; empty where it goes to none or several
 * @param plusMinusDays how sure the window is, in days to either side
 * @param progress how far it has come
 */
public record Item(String identity, String parent, List<String> tasks, Words words, String bed, Days days,
        int plusMinusDays, Progress progress) {
    public Item {
        if (identity.isBlank()) { throw new IllegalArgumentException("an item needs an identity"); }
    }

    /**
     * What people read.
     *
     * @param title a line; must not be blank
     * @param text some lines: how much, how, cautions, then bush by bush
     * @param category the craft, one plain word
     * @param place where in the garden; may be empty
     */
    public record Words(String title, String text, String category, String place) {
        public Words {
            title = Hygiene.line(title);
            text = Hygiene.text(text);
            category = Hygiene.word(category);
            place = Hygiene.line(place);
            if (title.isEmpty()) { throw new IllegalArgumentException("an item needs a title"); }
        }
    }

    /** The window from {@code first} to {@code last}, both included, and the day chosen in it. */
    public record Days(LocalDate first, LocalDate last, LocalDate best) {
        public Days {
            if (best.isBefore(first) || best.isAfter(last)) {
                throw new IllegalArgumentException("the best day " + best + " is not from " + first + " to " + last);
            }
        }

        boolean hold(LocalDate day) { return !day.isBefore(first) && !day.isAfter(last); }

        Days at(LocalDate day) { return new Days(first, last, day); }
    }

    /** What has become of it. */
    public enum State {
        OPEN,
        /** Some of it is done; the rest is still to do. */
        BEGUN,
        DONE,
        /** The gardener chose to leave it out. */
        SKIPPED,
        /** It no longer applies. */
        WITHDRAWN;

        /** Whether something is left to do. */
        public boolean isDue() { return this == OPEN || this == BEGUN; }

        /** RFC 5545 knows both as CANCELLED. */
        public boolean isCancelled() {
            return this == SKIPPED || this == WITHDRAWN;
        }
    }

    /**
     * How far it has come.
     *
     * @param state where it stands
     * @param day where it is done, the day on which it was
     * @param percent how much of one that is begun is done; 0 where that is not said
     */
    public record Progress(State state, Optional<LocalDate> day, int percent) {
        public static final Progress OPEN = new Progress(State.OPEN, Optional.empty(), 0);
        public static final Progress SKIPPED = new Progress(State.SKIPPED, Optional.empty(), 0);
        public static final Progress WITHDRAWN = new Progress(State.WITHDRAWN, Optional.empty(), 0);

        public static Progress done(LocalDate day) { return new Progress(State.DONE, Optional.of(day), 0); }

        public static Progress begun(int percent) { return new Progress(State.BEGUN, Optional.empty(), percent); }
    }

    boolean isDue() { return progress.state().isDue(); }

    public Item with(Progress other) {
        return new Item(identity, parent, tasks, words, bed, days, plusMinusDays, other);
    }

    Item on(Days other) { return new Item(identity, parent, tasks, words, bed, other, plusMinusDays, progress); }
}

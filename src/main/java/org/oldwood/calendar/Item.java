package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.calendar.format.Hygiene;

/**
 * One task as a calendar shows it.
 *
 * @param identity what makes the task the same task for ever: rule, subject, season, ordinal; never dates, titles or
 *     names
 * @param words what people read
 * @param bed the bed's id, by which calendars can be split; empty for the whole garden
 * @param days its window
 * @param progress how far it has come
 */
public record Item(String identity, Words words, String bed, Days days, Progress progress) {
    public Item {
        if (identity.isBlank()) {
            throw new IllegalArgumentException("an item needs an identity");
        }
    }

    /**
     * What people read.
     *
     * @param title a line; must not be blank
     * @param text some lines: what, how much, why, cautions
     * @param category the craft, one plain word
     * @param place where in the garden; may be empty
     */
    public record Words(String title, String text, String category, String place) {
        public Words {
            title = Hygiene.line(title);
            text = Hygiene.text(text);
            category = Hygiene.word(category);
            place = Hygiene.line(place);
            if (title.isEmpty()) {
                throw new IllegalArgumentException("an item needs a title");
            }
        }
    }

    /** The window from {@code first} to {@code last}, both included, and the best day in it. */
    public record Days(LocalDate first, LocalDate last, LocalDate best) {
        public Days {
            if (best.isBefore(first) || best.isAfter(last)) {
                throw new IllegalArgumentException("the best day " + best + " is not from " + first + " to " + last);
            }
        }

        /** How many days, both ends counted. */
        public long count() {
            return last.toEpochDay() - first.toEpochDay() + 1;
        }
    }

    /** What has become of a task. */
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
        public boolean isDue() {
            return this == OPEN || this == BEGUN;
        }

        /** RFC 5545 knows both as CANCELLED. */
        public boolean isCancelled() {
            return this == SKIPPED || this == WITHDRAWN;
        }
    }

    /**
     * How far a task has come.
     *
     * @param state where it stands
     * @param day of a task that is done, the day on which it was
     * @param percent how much of a task that is begun is done; 0 where that is not said
     */
    public record Progress(State state, Optional<LocalDate> day, int percent) {
        public static final Progress OPEN = new Progress(State.OPEN, Optional.empty(), 0);
        public static final Progress SKIPPED = new Progress(State.SKIPPED, Optional.empty(), 0);
        public static final Progress WITHDRAWN = new Progress(State.WITHDRAWN, Optional.empty(), 0);

        public static Progress done(LocalDate day) {
            return new Progress(State.DONE, Optional.of(day), 0);
        }

        public static Progress begun(int percent) {
            return new Progress(State.BEGUN, Optional.empty(), percent);
        }
    }

    /** The same task, with other progress. */
    public Item with(Progress other) {
        return new Item(identity, words, bed, days, other);
    }

    /** The same task, shown on other days. */
    Item on(Days other) {
        return new Item(identity, words, bed, other, progress);
    }
}

package org.oldwood.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * From the first to the last good day, both included. How its ends were found is put in words when somebody asks: most
 * windows that a plan looks at are shown to nobody.
 */
public final class Window {
    private final LocalDate first;
    private final LocalDate last;
    private final Supplier<How> how;
    private @Nullable How known;

    /**
     * How a day, or the ends of a window, were found.
     *
     * @param plusMinusDays how sure it is, days to either side
     */
    record How(int plusMinusDays, String words) {}

    /**
     * A window.
     *
     * @param first the first good day
     * @param last the last good day, not before the first
     * @param plusMinusDays how sure the ends are, days to either side
     * @param words how the two ends were found
     */
    public Window(LocalDate first, LocalDate last, int plusMinusDays, String words) {
        this(first, last, () -> new How(plusMinusDays, words));
    }

    /** A window that says how its ends were found when it is asked. */
    Window(LocalDate first, LocalDate last, Supplier<How> how) {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the window ends on " + last + " before it opens on " + first);
        }
        this.first = first;
        this.last = last;
        this.how = how;
    }

    public LocalDate first() { return first; }

    public LocalDate last() { return last; }

    /** How sure the ends are, days to either side. */
    public int plusMinusDays() { return how().plusMinusDays(); }

    /** How the two ends were found. */
    public String words() { return how().words(); }

    private How how() {
        How found = known;
        if (found == null) {
            found = how.get();
            known = found;
        }
        return found;
    }

    /** A part of it, found as the whole was. */
    Window part(LocalDate from, LocalDate to) {
        return new Window(from, to, this::how);
    }

    /** The days from first to last, both counted. */
    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Window window && first.equals(window.first) && last.equals(window.last)
                && how().equals(window.how());
    }

    @Override
    public int hashCode() { return Objects.hash(first, last); }

    @Override
    public String toString() { return first + " to " + last + " ± " + plusMinusDays() + ": " + words(); }
}

package org.oldwood.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * From the first to the last good day, both included.
 *
 * @param first the first good day
 * @param last the last good day, not before the first
 * @param plusMinusDays how sure the ends are, days to either side
 * @param words how the two ends were found
 */
public record Window(LocalDate first, LocalDate last, int plusMinusDays, String words) {
    public Window {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException(
                    "the window ends on " + last + " before it opens on " + first);
        }
    }

    /** The days from first to last, both counted. */
    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }
}

package org.oldwood.calendar;

import java.time.LocalDate;
import java.util.List;

/**
 * What a calendar's user said of an item, to be recorded once they agree.
 *
 * @param tasks the ids of the tasks that it stood for when it was written
 * @param day when, in the garden's zone
 * @param percent how much of it is done, from 0 to 100
 * @param basis how the day is known
 */
public record Answer(String identity, List<String> tasks, String title, What what, LocalDate day, int percent,
        String basis) {

    /** What a to-do can say. */
    public enum What {
        DONE,
        /** Some of it is done; the rest stays open. */
        UNDER_WAY,
        SKIPPED,
        /** It says that nothing is done; news where the journal has a tick of an earlier reading. */
        NOT_DONE
    }
}

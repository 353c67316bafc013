package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.List;
import org.oldwood.words.Dates;

/**
 * The jobs of one month.
 *
 * @param title the month
 * @param full whether amounts, ways and cautions are told; else the day and the window alone
 * @param jobs by their first day
 * @param cautions the warnings that the jobs point to by number, the first being 1
 */
record JobMonth(String title, boolean full, List<Job> jobs, List<String> cautions) {

    /**
     * One job, done to one or more subjects.
     *
     * @param title what is done
     * @param sign the craft's sign
     * @param how how it is done; may be empty
     * @param notes what to know of the amounts of all its tasks
     * @param cautions numbers of warnings
     * @param lines the tasks
     */
    record Job(String title, String sign, String how, List<String> notes, List<Integer> cautions, List<Line> lines) {}

    /**
     * One task's id, and what it is done to; empty where the title says it.
     *
     * @param id the task's id
     * @param words what it is done to
     */
    record Who(String id, String words) {}

    /**
     * One task, or several on the same day, in the same window, with the same amount.
     *
     * @param tasks the tasks
     * @param day the chosen day, or the day it was done
     * @param first the first good day
     * @param last the last good day
     * @param amount how much of each; may be empty
     * @param notes what to know of this amount alone
     * @param state {@code open}, {@code done} or {@code skipped}
     */
    record Line(
            List<Who> tasks,
            LocalDate day,
            LocalDate first,
            LocalDate last,
            String amount,
            List<String> notes,
            String state) {
        private static final int WEEKDAY = 3;

        /** The same line for these tasks. */
        Line of(List<Who> these) {
            return new Line(List.copyOf(these), day, first, last, amount, notes, state);
        }

        /** {@code Sat 28 Nov}. */
        String dayWords() {
            return Dates.weekday(day).substring(0, WEEKDAY) + " " + Days.day(day);
        }
    }
}

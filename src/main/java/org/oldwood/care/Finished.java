package org.oldwood.care;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenState;

/**
 * Finds what says that a task was done.
 *
 * @param state the garden today
 */
record Finished(GardenState state) {
    private static final int EARLY = 30;

    /**
     * An entry that says this task was done or skipped, by its id or by an entry of a kind that
     * counts as doing it.
     */
    Optional<Entry> of(Rule rule, Situation situation, Window window, String id) {
        Entry byId = state.finished().get(id);
        if (byId != null) {
            return Optional.of(byId);
        }
        LocalDate from = from(rule, situation, window);
        LocalDate to =
                rule.repeatDays() > 0 || !Planner.bySeason(rule)
                        ? latest(window.last(), state.date())
                        : situation.season().end();
        for (String key : rule.doneBy()) {
            for (Entry entry : situation.subject().entries()) {
                if (entry.kind().key().equals(key)
                        && !entry.date().isBefore(from)
                        && !entry.date().isAfter(to)
                        && fits(rule, entry)) {
                    return Optional.of(entry);
                }
            }
        }
        return Optional.empty();
    }

    /**
     * A stand's window that a craft works out comes anew each year, and may open in one season and
     * close in the next; so what was done counts from shortly before it opens.
     */
    private static LocalDate from(Rule rule, Situation situation, Window window) {
        if (rule.repeatDays() > 0) {
            return window.first();
        }
        return situation.subject() instanceof Subject.Stand && !Planner.bySeason(rule)
                ? window.first().minusDays(EARLY)
                : earliest(situation.season().start(), window.first());
    }

    private static LocalDate earliest(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static LocalDate latest(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static boolean fits(Rule rule, Entry entry) {
        return rule.doneFields().entrySet().stream()
                .allMatch(
                        wanted ->
                                entry.text(wanted.getKey())
                                        .map(wanted.getValue()::equals)
                                        .orElse(true));
    }
}

package org.oldwood.care;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
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
    Optional<Entry> of(Rule rule, Situation situation, Window window, int ordinal) {
        Optional<Entry> byId = byId(rule, situation, ordinal);
        if (byId.isPresent()) {
            return byId;
        }
        for (String key : rule.doneBy()) {
            Optional<EntryKind> kind = EntryKind.find(key);
            if (kind.isPresent()) {
                Optional<Entry> done = ofKind(kind.get(), rule, situation, window);
                if (done.isPresent()) {
                    return done;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Entry> ofKind(EntryKind kind, Rule rule, Situation situation, Window window) {
        @Nullable LocalDate from = null;
        @Nullable LocalDate to = null;
        for (Entry entry : situation.subject().entries()) {
            if (entry.kind() == kind && fits(rule, entry)) {
                if (from == null || to == null) {
                    from = from(rule, situation, window);
                    to = to(rule, situation, window);
                }
                if (!entry.date().isBefore(from) && !entry.date().isAfter(to)) {
                    return Optional.of(entry);
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Entry> byId(Rule rule, Situation situation, int ordinal) {
        if (state.finished().isEmpty()) {
            return Optional.empty();
        }
        String id =
                Task.id(
                        rule,
                        situation.subject(),
                        situation.season(),
                        ordinal,
                        rule.repeatDays() > 0);
        return Optional.ofNullable(state.finished().get(id));
    }

    private LocalDate to(Rule rule, Situation situation, Window window) {
        return rule.repeatDays() > 0 || !Planner.bySeason(rule)
                ? latest(window.last(), state.date())
                : situation.season().end();
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
        for (Map.Entry<String, String> wanted : rule.doneFields().entrySet()) {
            Optional<String> noted = entry.text(wanted.getKey());
            if (noted.isPresent() && !noted.get().equals(wanted.getValue())) {
                return false;
            }
        }
        return true;
    }
}

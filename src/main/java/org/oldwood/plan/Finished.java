package org.oldwood.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Season;

/** Finds what says that a task was done. */
final class Finished {
    private static final int EARLY = 30;

    private final GardenState state;
    private final IdentityHashMap<Rule, List<EntryKind>> kinds = new IdentityHashMap<>();
    private final Map<Season, Bounds> seasons = new HashMap<>();

    /** A season's first and last day. */
    private record Bounds(LocalDate start, LocalDate end) {
        Bounds(Season season) {
            this(season.start(), season.end());
        }
    }

    /**
     * Looks in the record.
     *
     * @param state the garden today
     */
    Finished(GardenState state) {
        this.state = state;
    }

    /** An entry that says this task was done or skipped, by its id or by an entry of a kind that counts as doing it. */
    Optional<Entry> of(Rule rule, Situation situation, Window window, int ordinal) {
        Optional<Entry> byId = byId(rule, situation, ordinal);
        if (byId.isPresent()) {
            return byId;
        }
        for (EntryKind kind : kinds(rule)) {
            Optional<Entry> done = ofKind(kind, rule, situation, window);
            if (done.isPresent()) {
                return done;
            }
        }
        return Optional.empty();
    }

    /** The kinds of entry that say it was done, in the rule's order. */
    private List<EntryKind> kinds(Rule rule) {
        List<EntryKind> known = kinds.get(rule);
        if (known == null) {
            known = rule.doneBy().stream()
                    .flatMap(key -> EntryKind.find(key).stream())
                    .toList();
            kinds.put(rule, known);
        }
        return known;
    }

    private Optional<Entry> ofKind(EntryKind kind, Rule rule, Situation situation, Window window) {
        @Nullable LocalDate from = null;
        @Nullable LocalDate to = null;
        for (Entry entry : situation.subject().entries()) {
            if (entry.kind() == kind) {
                if (from == null || to == null) {
                    from = from(rule, situation, window);
                    to = to(rule, situation, window);
                }
                if (!entry.date().isBefore(from) && !entry.date().isAfter(to) && fits(rule, entry)) {
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
        String id = Task.id(rule, situation, ordinal);
        return Optional.ofNullable(state.finished().get(id));
    }

    private LocalDate to(Rule rule, Situation situation, Window window) {
        return rule.repeatDays() > 0 || !Planner.bySeason(rule)
                ? latest(window.last(), state.date())
                : bounds(situation.season()).end();
    }

    /**
     * A stand's window that a craft works out comes anew each year, and may open in one season and close in the next;
     * so what was done counts from shortly before it opens.
     */
    private LocalDate from(Rule rule, Situation situation, Window window) {
        if (rule.repeatDays() > 0) {
            return window.first();
        }
        return situation.subject() instanceof Subject.Stand && !Planner.bySeason(rule)
                ? window.first().minusDays(EARLY)
                : earliest(bounds(situation.season()).start(), window.first());
    }

    private Bounds bounds(Season season) {
        Bounds known = seasons.get(season);
        if (known == null) {
            known = new Bounds(season);
            seasons.put(season, known);
        }
        return known;
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

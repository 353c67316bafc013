package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.plan.settle.Settled;
import org.oldwood.season.Season;

/**
 * Makes a task of an answer that is due. What many tasks of a plan have alike (the rule's own reason, warnings, source
 * keys) they share: a plantation's plan holds hundreds of thousands.
 */
final class TaskMaker {
    private final Situation.World world;
    private final Cautions cautions;
    private final IdentityHashMap<Rule, Reason> ownReasons = new IdentityHashMap<>();
    private final Map<Warned, List<String>> warnings = new HashMap<>();
    private final Map<List<String>, List<String>> sources = new HashMap<>();

    /** What a task's warnings hang on, beside those that an amount brings. */
    private record Warned(String rule, String crop, Season season, LocalDate first, LocalDate last) {}

    TaskMaker(Situation.World world) {
        this.world = world;
        this.cautions = Cautions.read(world.documents());
    }

    /**
     * The task of a part of the answer's window.
     *
     * @param window that part
     * @param ordinal 1, or its place among the repeats
     * @param settled how far it has come
     */
    Task task(Verdict verdict, Window window, int ordinal, Optional<Amount> amount, Settled settled) {
        Rule rule = verdict.rule();
        Situation situation = verdict.situation();
        String id = Task.id(rule, situation, ordinal);
        return new Task(
                id,
                rule,
                situation.subject(),
                situation.season(),
                ordinal,
                title(rule, situation, settled),
                window,
                settled.open() ? bestDay(rule, window) : settled.lastDay().orElse(window.first()),
                amount,
                reasons(verdict, id, settled),
                warnings(rule, amount, situation, window),
                sources(rule, verdict.reasons(), amount),
                settled);
    }

    private static String title(Rule rule, Situation situation, Settled settled) {
        String title = Titles.of(rule, situation);
        return settled.partly() ? title + ": " + Left.inWords(settled) : title;
    }

    private static LocalDate bestDay(Rule rule, Window window) {
        return window.first().plusDays(Math.round((window.days() - 1) * rule.best()));
    }

    private List<Reason> reasons(Verdict verdict, String id, Settled settled) {
        List<Reason> reasons = new ArrayList<>(verdict.reasons().size() + 1);
        reasons.add(ownReason(verdict.rule()));
        reasons.addAll(verdict.reasons());
        if (settled.open()) {
            Begun.of(id, world.state()).ifPresent(reasons::add);
        }
        if (settled.partly()) {
            reasons.add(Left.sofar(settled));
        }
        return reasons;
    }

    private Reason ownReason(Rule rule) {
        Reason known = ownReasons.get(rule);
        if (known == null) {
            known = new Reason(true, rule.reason(), rule.sources());
            ownReasons.put(rule, known);
        }
        return known;
    }

    /** Each key once: the rule's own, those of the reasons, those of the amount. */
    private List<String> sources(Rule rule, List<Reason> reasons, Optional<Amount> amount) {
        List<String> keys = new ArrayList<>();
        addNew(rule.sources(), keys);
        for (Reason reason : reasons) {
            addNew(reason.sources(), keys);
        }
        if (amount.isPresent()) {
            addNew(amount.get().sources(), keys);
        }
        List<String> known = sources.get(keys);
        if (known == null) {
            known = List.copyOf(keys);
            sources.put(known, known);
        }
        return known;
    }

    private static void addNew(List<String> more, List<String> keys) {
        for (String key : more) {
            if (!keys.contains(key)) {
                keys.add(key);
            }
        }
    }

    private List<String> warnings(Rule rule, Optional<Amount> amount, Situation situation, Window window) {
        if (amount.isPresent() && !amount.get().cautions().isEmpty()) {
            Set<String> ids = new LinkedHashSet<>(rule.cautions());
            ids.addAll(amount.get().cautions());
            return lines(ids, situation, window);
        }
        if (rule.cautions().isEmpty()) {
            return List.of();
        }
        Warned warned = new Warned(
                rule.id(),
                situation.subject().crop().map(Crop::id).orElse(""),
                situation.season(),
                window.first(),
                window.last());
        List<String> known = warnings.get(warned);
        if (known == null) {
            known = lines(new LinkedHashSet<>(rule.cautions()), situation, window);
            warnings.put(warned, known);
        }
        return known;
    }

    private List<String> lines(Set<String> ids, Situation situation, Window window) {
        return cautions.lines(
                ids, situation.subject().crop(), window, situation.season().hemisphere());
    }
}

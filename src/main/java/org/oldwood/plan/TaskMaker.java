package org.oldwood.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.plan.settle.Settled;

/**
 * Makes a task of an answer that is due. What many tasks of a plan have alike (the rule's own reason, warnings, source
 * keys, sums) they share: a plantation's plan holds hundreds of thousands.
 */
final class TaskMaker {
    private final Situation.World world;
    private final Cautions cautions;
    private final IdentityHashMap<Rule, Reason> ownReasons = new IdentityHashMap<>();
    private final Map<Warned, List<Cautions.Caution>> warnings = new HashMap<>();
    private final Map<List<String>, List<String>> texts = new HashMap<>();
    private final Map<List<Reason>, List<Reason>> reasons = new HashMap<>();

    /** What a task's warnings hang on. */
    private record Warned(String rule, List<String> crops, Set<String> tags, Set<String> named, LocalDate first,
            LocalDate last) {}

    TaskMaker(Situation.World world) {
        this.world = world;
        this.cautions = Cautions.read(world.documents());
    }

    /**
     * The task of a part of the answer's window.
     *
     * @param ordinal 1, or its place among the repeats
     * @param settled how far it has come
     */
    Task task(Verdict verdict, Window window, int ordinal, Optional<Amount> amount, Settled settled) {
        Rule rule = verdict.rule();
        Situation situation = verdict.situation();
        String id = Task.id(rule, situation, ordinal);
        return new Task(id, rule, situation.subject(), situation.season(), ordinal, Titles.of(rule, situation, settled),
                window, window.first(),
                settled.open() ? window.first().plusDays(Math.round((window.days() - 1) * rule.best()))
                        : settled.lastDay().orElse(window.first()),
                amount.map(it -> it.withArithmetic(alike(it.arithmetic(), texts))), reasons(verdict, id, settled),
                warnings(rule, amount, situation, window), sources(rule, verdict.reasons(), amount), settled);
    }

    /** Each once: two conditions may ask for the same. */
    private List<Reason> reasons(Verdict verdict, String id, Settled settled) {
        Set<Reason> reasons = new LinkedHashSet<>();
        reasons.add(
                ownReasons.computeIfAbsent(verdict.rule(), rule -> new Reason(true, rule.reason(), rule.sources())));
        reasons.addAll(verdict.reasons());
        Optional.ofNullable(world.state().begun().get(id)).filter(any -> settled.open()).map(TaskMaker::begun)
                .ifPresent(reasons::add);
        if (settled.partly()) { reasons.add(Left.sofar(settled)); }
        return alike(List.copyOf(reasons), this.reasons);
    }

    /** A task that was begun stays open, and says how far it has come. */
    private static Reason begun(Entry entry) {
        String how = entry.count("percent").isPresent() ? "; " + entry.count("percent").getAsInt() + " % of it is done"
                : "";
        return new Reason(true, "it was begun on " + entry.date() + how, List.of());
    }

    /** Each key once: the rule's own, those of the reasons, those of the amount. */
    private List<String> sources(Rule rule, List<Reason> reasons, Optional<Amount> amount) {
        Set<String> keys = new LinkedHashSet<>(rule.sources());
        reasons.forEach(reason -> keys.addAll(reason.sources()));
        amount.ifPresent(it -> keys.addAll(it.sources()));
        return alike(List.copyOf(keys), texts);
    }

    private static <T> List<T> alike(List<T> made, Map<List<T>, List<T>> known) {
        return known.computeIfAbsent(made, one -> one);
    }

    private List<Cautions.Caution> warnings(Rule rule, Optional<Amount> amount, Situation situation, Window window) {
        Set<String> tags = new LinkedHashSet<>(rule.tools());
        tags.addAll(rule.tags());
        Set<String> named = new LinkedHashSet<>(rule.cautions());
        amount.ifPresent(it -> {
            tags.addAll(it.tags());
            named.addAll(it.cautions());
        });
        List<String> crops = crops(situation.subject());
        return warnings
                .computeIfAbsent(new Warned(rule.id(), crops, tags, named, window.first(), window.last()),
                        any -> cautions.of(new Cautions.Job(rule.work(), tags, named,
                                crops.stream().map(world.crops()::get).toList(),
                                Optional.of(world.state().garden().site()), Optional.of(window))));
    }

    private static List<String> crops(Subject subject) {
        return subject.crop().map(crop -> List.of(crop.id()))
                .orElseGet(() -> subject.plants().stream().map(state -> state.plant().crop()).distinct().toList());
    }
}

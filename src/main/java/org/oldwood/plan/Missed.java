package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job whose time is past, and that was neither noted as done nor skipped.
 *
 * @param task its id
 * @param rule the job's rule
 * @param title for people
 * @param subject what it was to be done to
 * @param bed the bed it lies in
 * @param last the last day on which it was good
 * @param then what is to be done about it; a sentence
 */
public record Missed(
        String task, Rule rule, String title, String subject, Optional<String> bed, LocalDate last, String then) {
    /** So many lines are told at most. */
    private static final int LINES = 10;

    private static final Comparator<Missed> MOST_HARMFUL_FIRST = Comparator.<Missed>comparingInt(
                    missed -> -missed.rule.ifMissed().harm())
            .thenComparing(Missed::last, Comparator.reverseOrder())
            .thenComparing(Missed::task);

    /** Says what to do instead where that is still to be done; else that it is too late. */
    Missed against(List<Task> tasks) {
        IfMissed missed = rule.ifMissed();
        if (missed.then() == IfMissed.Then.LAPSED) {
            return this;
        }
        String words = missed.instead()
                .flatMap(other -> tasks.stream()
                        .filter(task -> task.rule().id().equals(other) && task.state() == Task.State.OPEN)
                        .filter(task -> bed.equals(
                                task.subject().bed().map(in -> in.bed().id())))
                        .findFirst())
                .map(task -> "Too late; instead: %s. %s".formatted(task.title(), then))
                .orElse("Too late now.");
        return new Missed(task, rule, title, subject, bed, last, words.strip());
    }

    /** Most harmful first; of those as harmful, the latest. */
    static List<Missed> inOrder(List<Missed> all) {
        return all.stream().sorted(MOST_HARMFUL_FIRST).toList();
    }

    /** A line for each kind of work, ten at most; the last one then says how many more there are. */
    public static List<String> lines(List<Missed> inOrder) {
        Map<String, List<Missed>> byRule = new LinkedHashMap<>();
        inOrder.forEach(missed -> byRule.computeIfAbsent(missed.rule.id(), rule -> new ArrayList<>())
                .add(missed));
        List<String> lines = new ArrayList<>();
        byRule.values().forEach(alike -> lines.add(line(alike)));
        int shown = lines.size() <= LINES ? lines.size() : LINES - 1;
        List<String> told = new ArrayList<>(lines.subList(0, shown));
        if (shown < lines.size()) {
            told.add("and %s more kinds of work (--json has them all)".formatted(lines.size() - shown));
        }
        return told;
    }

    private static String line(List<Missed> alike) {
        Missed first = alike.get(0);
        String more = alike.size() == 1 ? "" : " and %s more".formatted(alike.size() - 1);
        return "%s%s, until %s. %s"
                .formatted(first.title, more, first.last, first.then)
                .strip();
    }
}

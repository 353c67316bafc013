package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.words.Dates;

/**
 * A job whose time is past, and that was neither noted as done nor skipped.
 *
 * @param rule the job's rule
 * @param last the last day on which it was good
 * @param then what is to be done about it; a sentence
 */
public record Missed(String task, Rule rule, String title, String subject, Optional<String> bed, LocalDate last,
        String then) {
    private static final Comparator<Missed> MOST_HARMFUL_FIRST = Comparator
            .<Missed>comparingInt(missed -> -missed.rule.ifMissed().harm())
            .thenComparing(Missed::last, Comparator.reverseOrder()).thenComparing(Missed::task);

    /** A kind of work on a subject or in a bed: what may be done instead of a missed job is looked for among these. */
    private record Work(String rule, String where) {}

    /**
     * All with what to do instead where that is still to be done within a year, else that it is too late; most harmful
     * first.
     */
    static List<Missed> against(List<Task> tasks, List<Missed> all) {
        Map<Work, Task> open = new HashMap<>();
        for (Task task : tasks) {
            if (task.state() == Task.State.OPEN) {
                open.putIfAbsent(new Work(task.rule().id(), task.subject().id()), task);
                task.rule().after()
                        .forEach(rule -> open.putIfAbsent(new Work("after " + rule, task.subject().id()), task));
                task.subject().bed()
                        .ifPresent(in -> open.putIfAbsent(new Work(task.rule().id(), "in " + in.bed().id()), task));
            }
        }
        return all.stream().map(missed -> missed.against(open)).sorted(MOST_HARMFUL_FIRST).toList();
    }

    /** On the same plant if that may be, by the work named or what follows on the missed one; else in its bed. */
    private Missed against(Map<Work, Task> open) {
        IfMissed missed = rule.ifMissed();
        if (missed.then() == IfMissed.Then.LAPSED) { return this; }
        String words = missed.instead()
                .flatMap(other -> Stream
                        .of(new Work(other, subject), new Work("after " + rule.id(), subject),
                                new Work(other, "in " + bed.orElse("")))
                        .flatMap(work -> Optional.ofNullable(open.get(work)).stream()).findFirst())
                .filter(task -> task.window().first().isBefore(last.plusYears(1)))
                .map(task -> "Too late; instead: %s. %s".formatted(task.title(), then)).orElse("Too late now.");
        return new Missed(task, rule, title, subject, bed, last, words.strip());
    }

    /** The jobs of each kind of work together. */
    public static List<List<Missed>> byKind(List<Missed> inOrder) {
        return List.copyOf(inOrder.stream()
                .collect(Collectors.groupingBy(missed -> missed.rule.id(), LinkedHashMap::new, Collectors.toList()))
                .values());
    }

    /** A line for each kind of work, so many at most; the last one then says how many more there are. */
    public static List<String> lines(List<Missed> inOrder, int most) {
        List<List<Missed>> kinds = byKind(inOrder);
        int shown = kinds.size() <= most ? kinds.size() : most - 1;
        List<String> told = new ArrayList<>();
        kinds.subList(0, shown).forEach(alike -> told.add(line(alike)));
        if (shown < kinds.size()) {
            told.add("and %s more kinds of work (oldwood tasks missed --each has them all)"
                    .formatted(kinds.size() - shown));
        }
        return told;
    }

    private static String line(List<Missed> alike) {
        Missed first = alike.get(0);
        String more = alike.size() == 1 ? "" : " and %s more".formatted(alike.size() - 1);
        return "%s%s, until %s. %s".formatted(first.title, more, Dates.shortDay(first.last), first.then).strip();
    }
}

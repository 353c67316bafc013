package org.oldwood.cli.year;

import java.util.List;
import java.util.Optional;
import org.oldwood.facts.Subject;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.Reason;
import org.oldwood.plan.Task;
import org.oldwood.plan.Verdict;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;

/** When a plan does something to a subject next, or why it does not. */
public record NextTask(Planner planner, Plan plan, Subject subject, List<String> amounts) {

    /** The open task that gives one of the amounts. */
    public Optional<Task> task() { return first(plan.tasks()); }

    private Optional<Task> first(List<Task> tasks) {
        return tasks.stream().filter(task -> task.state() == Task.State.OPEN)
                .filter(task -> task.subject().id().equals(subject.id()))
                .filter(task -> task.rule().amount().filter(amounts::contains).isPresent()).findFirst();
    }

    /** {@code on 27 Mar 2027, from 10 Mar 2027 …}, or why nothing is planned. */
    public String words() {
        return task().map(task -> "on " + Dates.shortDay(task.day()) + ", " + TaskWords.window(task))
                .orElseGet(() -> "nothing is planned" + first(plan.unplaced()).flatMap(plan::whyUnplaced).or(this::why)
                        .map(it -> ": " + it).orElse("."));
    }

    private Optional<String> why() {
        return planner.rules().all().stream()
                .filter(rule -> rule.amount().filter(amounts::contains).isPresent() && rule.concerns(subject))
                .flatMap(rule -> planner.explain(rule, subject).stream().filter(this::isToCome).limit(1))
                .flatMap(verdict -> because(verdict).stream()).findFirst();
    }

    /** A window that is over tells nothing of what comes next. */
    private boolean isToCome(Verdict verdict) {
        return verdict.window().filter(window -> window.last().isBefore(plan.from())).isEmpty();
    }

    private static Optional<String> because(Verdict verdict) {
        return verdict.reasons().stream().filter(reason -> !reason.holds()).map(Reason::words).findFirst()
                .or(() -> Optional.of(verdict.because()).filter(words -> !words.isEmpty()))
                .map(words -> words.endsWith(".") ? words : words + ".");
    }
}

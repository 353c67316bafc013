package org.oldwood.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.facts.Situation;

/**
 * What came of holding a rule against a subject in a season: a window or none, and every reason for or against.
 *
 * @param situation the subject and season
 * @param window the window, where its ends could be found
 * @param reasons the conditions' answers, in the rule's order; all of them must hold. A plan, which only asks whether
 *     they do, has {@link #NOT} alone where one does not
 * @param because why there is no task although all conditions hold; empty otherwise
 */
public record Verdict(Rule rule, Situation situation, Optional<Window> window, List<Reason> reasons, String because) {
    /** In a plan: one condition does not hold, never mind which. */
    static final List<Reason> NOT = List.of(new Reason(false, "", List.of()));

    /** The same, with a reason more. */
    Verdict with(Reason more) {
        return new Verdict(rule, situation, window, Stream.concat(reasons.stream(), Stream.of(more)).toList(), because);
    }

    /** Whether it gives a task. */
    public boolean due() { return window.isPresent() && because.isEmpty() && holds(); }

    private boolean holds() {
        for (Reason reason : reasons) {
            if (!reason.holds()) { return false; }
        }
        return true;
    }
}

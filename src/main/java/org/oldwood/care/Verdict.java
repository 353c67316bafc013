package org.oldwood.care;

import java.util.List;
import java.util.Optional;

/**
 * What came of holding a rule against a subject in a season: a window or none, and every reason for
 * or against.
 *
 * @param rule the rule
 * @param situation the subject and season
 * @param window the window, where its ends could be found
 * @param reasons every condition's answer, in the rule's order; all of them must hold
 * @param because why there is no task although all conditions hold; empty otherwise
 */
public record Verdict(
        Rule rule,
        Situation situation,
        Optional<Window> window,
        List<Reason> reasons,
        String because) {
    public Verdict {
        reasons = List.copyOf(reasons);
    }

    /** Whether it gives a task. */
    public boolean due() {
        return window.isPresent() && because.isEmpty() && reasons.stream().allMatch(Reason::holds);
    }
}

package org.oldwood.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Subject;

/**
 * Which rules concern a subject. The same for all plants, and for all stands, of one crop and form: found once for
 * them.
 */
final class RulesBySubject {
    private final List<Rule> rules;
    private final Map<Alike, List<Rule>> known = new HashMap<>();

    /** What plants, or stands, have in common that the same rules concern. */
    private record Alike(String kind, String crop, String form) {}

    RulesBySubject(List<Rule> rules) { this.rules = rules; }

    /** In their own order. */
    List<Rule> rules(Subject subject) {
        if (!(subject instanceof Subject.OnePlant || subject instanceof Subject.Stand)) { return concerning(subject); }
        Alike alike = new Alike(subject.kind(), subject.crop().map(Crop::id).orElse(""),
                subject.plants().get(0).plant().form());
        return known.computeIfAbsent(alike, any -> concerning(subject));
    }

    private List<Rule> concerning(Subject subject) {
        return rules.stream().filter(rule -> rule.concerns(subject)).toList();
    }
}

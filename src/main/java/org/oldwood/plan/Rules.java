package org.oldwood.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Subject;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Nearest;

/** All rules, in the order of their files. */
public final class Rules {
    /** What no rule takes from another: whom it is for. */
    private static final Set<String> OWN = Set.of("crops", "groups", "forms", "note");

    private final Map<String, Rule> byId = new LinkedHashMap<>();
    private final Map<Alike, List<Rule>> known = new HashMap<>();

    /** What plants, or stands, have in common that the same rules concern. */
    private record Alike(String kind, String crop, String form) {}

    public static Rules read(Documents documents) {
        Rules rules = new Rules();
        Map<String, Fields> written = new LinkedHashMap<>();
        for (Fields file : documents.all("rules")) {
            for (Fields fields : file.objects("rules")) {
                String id = fields.optionalText("id").orElse("");
                fields.tellIf(written.put(id, fields) != null, "id", "duplicate-rule", id);
            }
        }
        written.forEach((id, fields) -> rules.byId.put(id, Rule.read(whole(fields, written))));
        return rules;
    }

    /** A rule that is like another, with all that it does not say itself. */
    private static Fields whole(Fields rule, Map<String, Fields> written) {
        Optional<String> like = rule.optionalText("like");
        if (like.isEmpty()) { return rule; }
        Fields other = written.get(like.get());
        if (other == null || other.has("like")) {
            rule.tell("like", "unknown-rule like", like.get(), Nearest.hint(like.get(), written.entrySet().stream()
                    .filter(one -> !one.getValue().has("like")).map(Map.Entry::getKey).toList()));
            return rule;
        }
        return rule.orOf(other, OWN);
    }

    /**
     * Those that concern a subject, in their own order. The same for all plants, and for all stands, of one crop and
     * form: found once for them.
     */
    List<Rule> concerning(Subject subject) {
        if (!(subject instanceof Subject.OnePlant || subject instanceof Subject.Stand)) { return found(subject); }
        return known.computeIfAbsent(new Alike(subject.kind(), subject.crop().map(Crop::id).orElse(""),
                subject.plants().get(0).plant().form()), any -> found(subject));
    }

    private List<Rule> found(Subject subject) {
        return byId.values().stream().filter(rule -> rule.concerns(subject)).toList();
    }

    public List<Rule> all() { return new ArrayList<>(byId.values()); }

    public Optional<Rule> find(String id) { return Optional.ofNullable(byId.get(id)); }

    public List<String> ids() { return List.copyOf(byId.keySet()); }
}

package org.oldwood.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** All rules, in the order of their files. */
public final class Rules {
    private final Map<String, Rule> byId = new LinkedHashMap<>();

    public static Rules read(Documents documents) {
        Rules rules = new Rules();
        for (String file : documents.names("rules")) {
            for (Fields fields : documents.fields("rules/" + file + ".json").objects("rules")) {
                Rule rule = Rule.read(fields);
                if (rules.byId.put(rule.id(), rule) != null) {
                    fields.wrong(
                            "id", "duplicate-rule", "is used by two rules: " + rule.id(), "Give each rule its own id.");
                }
            }
        }
        return rules;
    }

    public List<Rule> all() {
        return new ArrayList<>(byId.values());
    }

    public Optional<Rule> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }
}

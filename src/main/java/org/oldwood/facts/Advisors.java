package org.oldwood.facts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** All crafts' facts and amounts by name. A name belongs to one craft only. */
public final class Advisors {
    private final Map<String, Advisor> facts = new HashMap<>();
    private final Map<String, Advisor> amounts = new HashMap<>();

    public Advisors(List<Advisor> advisors) {
        for (Advisor advisor : advisors) {
            advisor.facts().forEach(name -> claim(facts, name, advisor));
            advisor.amounts().forEach(name -> claim(amounts, name, advisor));
        }
    }

    private static void claim(Map<String, Advisor> among, String name, Advisor advisor) {
        if (among.put(name, advisor) != null) {
            throw new IllegalStateException("two crafts claim the name " + name);
        }
    }

    public Set<String> factNames() {
        return new TreeSet<>(facts.keySet());
    }

    public Set<String> amountNames() {
        return new TreeSet<>(amounts.keySet());
    }

    /** Whether any craft works out an amount of that name. */
    public boolean knowsAmount(String name) {
        return amounts.containsKey(name);
    }

    public Fact fact(String name, Optional<String> of, Situation situation) {
        Advisor advisor = facts.get(name);
        return advisor == null
                ? Fact.unknown(name, "nothing here tells \"" + name + "\"")
                : advisor.fact(name, of, situation);
    }

    public Optional<Amount> amount(String name, Situation situation) {
        Advisor advisor = amounts.get(name);
        return advisor == null ? Optional.empty() : advisor.amount(name, situation);
    }
}

package org.oldwood.facts;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What a craft tells the rules: facts by name, and amounts by name. Stateless, or built anew for each plan. */
public abstract class Advisor {
    private final Map<String, BiFunction<Optional<String>, Situation, Fact>> facts = new TreeMap<>();
    private final Map<String, Function<Situation, Optional<Amount>>> amounts = new TreeMap<>();

    /** Names a fact that this craft knows; it may turn out to be unknown. */
    protected final void knows(String name, Function<Situation, Fact> fact) {
        knows(name, (of, situation) -> fact.apply(situation));
    }

    /** The same of a fact to which a rule gives an argument. */
    protected final void knows(String name, BiFunction<Optional<String>, Situation, Fact> fact) {
        if (facts.put(name, fact) != null) { throw new IllegalStateException("two crafts claim the name " + name); }
    }

    /** Names an amount that this craft works out; empty where there is nothing to do after all. */
    protected final void measures(String name, Function<Situation, Optional<Amount>> amount) {
        if (amounts.put(name, amount) != null) { throw new IllegalStateException("two crafts claim the name " + name); }
    }

    /** Takes over all that another knows. */
    protected final void learn(Advisor other) {
        other.facts.forEach(this::knows);
        other.amounts.forEach(this::measures);
    }

    /** A fact by its name, known or unknown. {@code of} is the argument that a rule gives it. */
    public final Fact fact(String name, Optional<String> of, Situation situation) {
        var fact = facts.get(name);
        return fact == null ? Fact.unknown("nothing here tells \"" + name + "\"") : fact.apply(of, situation);
    }

    /** An amount by its name; empty where there is nothing to do, and where no craft works it out. */
    public final Optional<Amount> amount(String name, Situation situation) {
        var amount = amounts.get(name);
        return amount == null ? Optional.empty() : amount.apply(situation);
    }

    public final Set<String> factNames() { return facts.keySet(); }

    public final Set<String> amountNames() { return amounts.keySet(); }
}

package org.oldwood.facts;

import java.util.List;
import java.util.Optional;

/** What a craft tells the rules: facts by name, and amounts by name. Stateless, or built anew for each plan. */
public interface Advisor {
    /** The names of the facts that this craft knows. */
    List<String> facts();

    /** The names of the amounts that this craft works out. */
    List<String> amounts();

    /** One of {@link #facts()}, known or unknown. {@code of} is the argument that a rule gives it. */
    Fact fact(String name, Optional<String> of, Situation situation);

    /** One of {@link #amounts()}; empty where there is nothing to do after all. */
    Optional<Amount> amount(String name, Situation situation);
}

package org.oldwood.plan;

import java.util.List;
import java.util.Optional;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenState;

/** Tells of a task that was begun: it stays open, and says how far it has come. */
final class Begun {
    private Begun() {}

    static Optional<Reason> of(String task, GardenState state) {
        return Optional.ofNullable(state.begun().get(task)).map(Begun::inWords);
    }

    private static Reason inWords(Entry entry) {
        String how = entry.count("percent").isPresent() ? "; " + entry.count("percent").getAsInt() + " % of it is done"
                : "";
        return new Reason(true, "it was begun on " + entry.date() + how, List.of());
    }
}

package org.oldwood.plan;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.plan.settle.Settled;
import org.oldwood.plan.settle.Share;

/** What is left of a task that is partly done: for the craft that works out the amount, and in words. */
final class Left {
    private Left() {}

    /** The situation with the plants that still wait, and no others. */
    static Situation of(Situation all, Settled settled) {
        if (!settled.partly() || !(all.subject() instanceof Subject.Stand stand) || settled.shares().size() == 1) {
            return all;
        }
        Set<String> open = settled.left().stream().map(Share::id).collect(Collectors.toSet());
        Subject left = new Subject.Stand(stand.in(), stand.of(), stand.form(), stand.beside(),
                stand.plants().stream().filter(plant -> open.contains(plant.plant().id())).toList(), stand.entries());
        return new Situation(all.world(), left, all.season(), all.day());
    }

    /** {@code 4 of 6 bushes left}; where something is left to do on all of them, {@code about 20 % done}. */
    static String inWords(Settled settled) {
        int left = bushes(settled.left());
        int all = bushes(settled.shares());
        if (left < all) { return "%s of %s bushes left".formatted(left, all); }
        double done = settled.shares().stream().mapToDouble(share -> share.done() * share.bushes() / all).reduce(0,
                Double::sum);
        return "about %s %% done".formatted(Math.round(100 * done));
    }

    /** What was noted so far. */
    static Reason sofar(Settled settled) {
        List<String> noted = settled.shares().stream().flatMap(share -> share.by().stream()).distinct()
                .map(Left::inWords).toList();
        int shown = Math.min(noted.size(), 6);
        String more = shown < noted.size() ? " and %s more".formatted(noted.size() - shown) : "";
        return new Reason(true, "noted so far: " + String.join(", ", noted.subList(0, shown)) + more, List.of());
    }

    private static String inWords(Entry entry) {
        return entry.text("plant").or(() -> entry.text("bed")).map(of -> of + " ").orElse("") + entry.kind().key()
                + " on " + entry.date() + (entry.planned() ? " as planned" : "");
    }

    private static int bushes(List<Share> shares) { return shares.stream().mapToInt(Share::bushes).sum(); }
}

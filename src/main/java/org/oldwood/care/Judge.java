package org.oldwood.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.Season;

/** Holds a rule against a subject in a season: does it apply, when, and why or why not. */
final class Judge {
    private final Situation.World world;
    private final Advisors advisors;

    Judge(Situation.World world, Advisors advisors) {
        this.world = world;
        this.advisors = advisors;
    }

    Verdict judge(Rule rule, Subject subject, Season season) {
        Situation opening = new Situation(world, subject, season, world.today());
        Optional<Anchor.Found> first = rule.opens().find(opening, advisors);
        Optional<Anchor.Found> last =
                rule.closes().find(opening, advisors).map(close -> earlier(close, rule, opening));
        if (first.isEmpty() || last.isEmpty()) {
            Anchor lacking = first.isEmpty() ? rule.opens() : rule.closes();
            return new Verdict(
                    rule,
                    opening,
                    Optional.empty(),
                    List.of(),
                    "its window hangs on "
                            + lacking.by()
                            + " "
                            + lacking.name()
                            + ", which is not known here");
        }
        if (last.get().day().isBefore(first.get().day())) {
            return new Verdict(
                    rule,
                    opening,
                    Optional.empty(),
                    List.of(),
                    "its window would close on "
                            + last.get().day()
                            + ", before it opens on "
                            + first.get().day());
        }
        Window window = window(first.get(), last.get());
        LocalDate day = within(window);
        Situation situation = new Situation(world, subject, season, day);
        return new Verdict(rule, situation, Optional.of(window), reasons(rule, situation), "");
    }

    /** A last day of its own, where the rule has one and it is known, cuts the window short. */
    private Anchor.Found earlier(Anchor.Found close, Rule rule, Situation opening) {
        return rule.noLaterThan()
                .flatMap(anchor -> anchor.find(opening, advisors))
                .filter(latest -> latest.day().isBefore(close.day()))
                .orElse(close);
    }

    /** Today, as far as it lies in the window. */
    private LocalDate within(Window window) {
        if (window.first().isAfter(world.today())) {
            return window.first();
        }
        return window.last().isBefore(world.today()) ? window.last() : world.today();
    }

    private static Window window(Anchor.Found first, Anchor.Found last) {
        String words = "opens " + first.words() + "; closes " + last.words();
        return new Window(
                first.day(),
                last.day(),
                Math.max(first.plusMinusDays(), last.plusMinusDays()),
                words);
    }

    /** Every condition is asked, so that "why not" has the whole answer. */
    private List<Reason> reasons(Rule rule, Situation situation) {
        List<Reason> reasons = new ArrayList<>();
        for (Condition condition : rule.when()) {
            reasons.add(condition.test(advisors.fact(condition.fact(), condition.of(), situation)));
        }
        return reasons;
    }
}

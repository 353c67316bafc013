package org.oldwood.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.garden.Season;

/** Holds a rule against a subject in a season: does it apply, when, and why or why not. */
final class Judge {
    private final Situation.World world;
    private final Advisors advisors;
    private final Map<SpanOf, Span> spans = new HashMap<>();

    Judge(Situation.World world, Advisors advisors) {
        this.world = world;
        this.advisors = advisors;
    }

    /** The answer up to the first condition that does not hold: all that a plan needs. */
    Verdict judge(Rule rule, Subject subject, Season season) {
        return judge(rule, new Situation(world, subject, season, world.today()), false);
    }

    /** The answer with every condition asked, so that "why not" has the whole of it. */
    Verdict explain(Rule rule, Subject subject, Season season) {
        return judge(rule, new Situation(world, subject, season, world.today()), true);
    }

    private Verdict judge(Rule rule, Situation opening, boolean whole) {
        Span span = span(rule, opening);
        if (span.window.isEmpty()) {
            return new Verdict(rule, opening, span.window, List.of(), span.because);
        }
        LocalDate day = within(span.window.get());
        Situation situation = new Situation(world, opening.subject(), opening.season(), day);
        return new Verdict(rule, situation, span.window, reasons(rule, situation, whole), "");
    }

    /** A window, or why there is none. */
    private record Span(Optional<Window> window, String because) {}

    /** What a window by stages and days of the year hangs on. */
    private record SpanOf(String rule, int season, String crop) {}

    /** Stages and days of the year are the same for all plants of a crop. */
    private Span span(Rule rule, Situation opening) {
        if (!rule.opens().isOfTheCrop() || !rule.closes().isOfTheCrop()) {
            return findSpan(rule, opening);
        }
        SpanOf key =
                new SpanOf(
                        rule.id(),
                        opening.season().year(),
                        opening.subject().crop().map(Crop::id).orElse(""));
        Span known = spans.get(key);
        if (known == null) {
            known = findSpan(rule, opening);
            spans.put(key, known);
        }
        return known;
    }

    private Span findSpan(Rule rule, Situation opening) {
        Optional<Anchor.Found> first = rule.opens().find(opening, advisors);
        Optional<Anchor.Found> last =
                rule.closes().find(opening, advisors).map(close -> earlier(close, rule, opening));
        if (first.isEmpty() || last.isEmpty()) {
            Anchor lacking = first.isEmpty() ? rule.opens() : rule.closes();
            return new Span(
                    Optional.empty(),
                    "its window hangs on "
                            + lacking.by()
                            + " "
                            + lacking.name()
                            + ", which is not known here"
                            + why(lacking, opening));
        }
        if (last.get().day().isBefore(first.get().day())) {
            return new Span(
                    Optional.empty(),
                    "its window would close on "
                            + last.get().day()
                            + ", before it opens on "
                            + first.get().day());
        }
        return new Span(Optional.of(window(first.get(), last.get())), "");
    }

    /** A last day of its own, where the rule has one and it is known, cuts the window short. */
    private Anchor.Found earlier(Anchor.Found close, Rule rule, Situation opening) {
        return rule.noLaterThan()
                .flatMap(anchor -> anchor.find(opening, advisors))
                .filter(latest -> latest.day().isBefore(close.day()))
                .orElse(close);
    }

    /** What a craft says of a day that it cannot tell. */
    private String why(Anchor lacking, Situation opening) {
        return lacking.by().equals("fact")
                ? ": " + advisors.fact(lacking.name(), Optional.empty(), opening).words()
                : "";
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

    private List<Reason> reasons(Rule rule, Situation situation, boolean whole) {
        List<Reason> reasons = new ArrayList<>();
        for (Condition condition : rule.when()) {
            Reason reason =
                    condition.test(advisors.fact(condition.fact(), condition.of(), situation));
            reasons.add(reason);
            if (!whole && !reason.holds()) {
                break;
            }
        }
        return reasons;
    }
}

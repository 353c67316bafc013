package org.oldwood.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.season.Season;

/** Holds a rule against a subject in a season: does it apply, when, and why or why not. */
public final class Judge {
    private static final String NO_WINDOW = "its window is not known";

    private final Situation.World world;
    private final Advisor advisors;

    /** By what a span hangs on: a {@link SpanOf} or a {@link SpanOfDays}. */
    private final Map<Record, Span> spans = new HashMap<>();

    public Judge(Situation.World world, Advisor advisors) {
        this.world = world;
        this.advisors = advisors;
    }

    /** Whether and when, all that a plan needs: words of a window or of conditions that fail are left out. */
    public Verdict judge(Rule rule, Subject subject, Season season) {
        return judge(rule, new Situation(world, subject, season, world.today()), false);
    }

    /** The answer with every condition asked, so that "why not" has the whole of it. */
    public Verdict explain(Rule rule, Subject subject, Season season) {
        return judge(rule, new Situation(world, subject, season, world.today()), true);
    }

    /** The rule's time in a season by its two ends alone, whether or not anything is due. */
    Optional<Window> time(Rule rule, Subject subject, Season season) {
        return span(rule, new Situation(world, subject, season, world.today())).window;
    }

    private Verdict judge(Rule rule, Situation opening, boolean whole) {
        Span span = inTime(span(rule, opening), rule, opening);
        if (span.window.isEmpty()) {
            String because = whole ? because(span, rule, opening) : NO_WINDOW;
            return new Verdict(rule, opening, span.window, List.of(), because);
        }
        LocalDate day = within(span.window.get());
        Situation situation = day.equals(opening.day()) ? opening
                : new Situation(world, opening.subject(), opening.season(), day);
        List<Reason> reasons = whole ? allReasons(rule, situation) : reasonsIfAllHold(rule, situation);
        return new Verdict(rule, situation, span.window, reasons, "");
    }

    /** A window, or the ends that were found where they do not make one. */
    private record Span(Optional<Window> window, Optional<WindowEnd.Found> first, Optional<WindowEnd.Found> last) {
        static Span of(Optional<WindowEnd.Found> first, Optional<WindowEnd.Found> last) {
            boolean opens = first.isPresent() && last.isPresent() && !last.get().day().isBefore(first.get().day());
            return new Span(
                    opens ? Optional.of(new Window(first.get().day(), last.get().day(),
                            () -> how(first.get().how().get(), last.get().how().get()))) : Optional.empty(),
                    first, last);
        }
    }

    /** What a window by stages and days of the year hangs on. */
    private record SpanOf(String rule, int season, String crop) {}

    /** What a window by entries hangs on. */
    private record SpanOfDays(String rule, LocalDate opens, LocalDate closes) {}

    /**
     * Stages and days of the year are the same for all plants of a crop, and entries of one day for all plants that
     * were seen to together.
     */
    private Span span(Rule rule, Situation opening) {
        if (rule.hangsOnEntries()) { return spanByEntries(rule, opening); }
        if (!rule.opens().isOfTheCrop() || !rule.closes().isOfTheCrop()) { return findSpan(rule, opening); }
        return span(new SpanOf(rule.id(), opening.season().year(), opening.subject().crop().map(Crop::id).orElse("")),
                rule, opening);
    }

    private Span spanByEntries(Rule rule, Situation opening) {
        Optional<LocalDate> first = rule.opens().entryDay(opening.subject());
        Optional<LocalDate> last = rule.closes().entryDay(opening.subject());
        if (first.isEmpty() || last.isEmpty()) { return findSpan(rule, opening); }
        return span(new SpanOfDays(rule.id(), first.get(), last.get()), rule, opening);
    }

    private Span span(Record key, Rule rule, Situation opening) {
        Span known = spans.get(key);
        if (known == null) {
            known = findSpan(rule, opening);
            spans.put(key, known);
        }
        return known;
    }

    private Span findSpan(Rule rule, Situation opening) {
        return Span.of(rule.opens().find(opening, advisors), rule.closes().find(opening, advisors));
    }

    /** Why there is no window. */
    private String because(Span span, Rule rule, Situation opening) {
        if (span.first.isPresent() && span.last.isPresent()) {
            return "its window would close on " + span.last.get().day() + ", before it opens on "
                    + span.first.get().day();
        }
        WindowEnd lacking = span.first.isEmpty() ? rule.opens() : rule.closes();
        String why = lacking.by().equals("fact") ? ": " + advisors.fact(lacking.name(), lacking.of(), opening).words()
                : "";
        return "its window hangs on " + lacking.by() + " " + lacking.name() + ", which is not known here" + why;
    }

    /**
     * A last day of its own, where the rule has one and it is known, cuts the window short. It is asked for each
     * subject anew: two stands of a crop may be fed with different things.
     */
    private Span inTime(Span span, Rule rule, Situation opening) {
        if (rule.noLaterThan().isEmpty() || span.last.isEmpty()) { return span; }
        Optional<WindowEnd.Found> latest = rule.noLaterThan().get().find(opening, advisors);
        return latest.isPresent() && latest.get().day().isBefore(span.last.get().day()) ? Span.of(span.first, latest)
                : span;
    }

    /** Today, as far as it lies in the window. */
    private LocalDate within(Window window) {
        if (window.first().isAfter(world.today())) { return window.first(); }
        return window.last().isBefore(world.today()) ? window.last() : world.today();
    }

    private static Window.How how(Window.How first, Window.How last) {
        return new Window.How(Math.max(first.plusMinusDays(), last.plusMinusDays()),
                "opens " + first.words() + "; closes " + last.words());
    }

    private List<Reason> allReasons(Rule rule, Situation situation) {
        return rule.when().stream()
                .map(condition -> condition.test(advisors.fact(condition.fact(), condition.of(), situation))).distinct()
                .toList();
    }

    /** {@link Verdict#NOT} at the first that does not hold. */
    private List<Reason> reasonsIfAllHold(Rule rule, Situation situation) {
        List<Condition> conditions = rule.when();
        Reason[] reasons = new Reason[conditions.size()];
        for (int i = 0; i < reasons.length; i++) {
            Condition condition = conditions.get(i);
            Fact fact = advisors.fact(condition.fact(), condition.of(), situation);
            if (!condition.holds(fact)) { return Verdict.NOT; }
            reasons[i] = condition.test(fact);
        }
        return List.of(reasons);
    }
}

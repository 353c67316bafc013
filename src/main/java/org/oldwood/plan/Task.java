package org.oldwood.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.plan.settle.Settled;
import org.oldwood.plan.settle.Share;
import org.oldwood.season.Season;

/**
 * A rule applied to a subject in a season.
 *
 * @param id {@code winter-cut@bc-1@2027}: rule, subject, season, and {@code #n} where a rule repeats. The same task has
 *     the same id for ever
 * @param ordinal 1, or the place among the repeats
 * @param title for people, without amount or date
 * @param window the first and last good day
 * @param from the window's first day; where all is frozen on that or on today, the day of thaw after it
 * @param day the chosen day, inside the window
 * @param amount how much; empty where the rule asks for none
 * @param reasons what made it fire
 * @param cautions what to beware of, the gravest first
 * @param settled how far it has come, share by share
 */
public record Task(String id, Rule rule, Subject subject, Season season, int ordinal, String title, Window window,
        LocalDate from, LocalDate day, Optional<Amount> amount, List<Reason> reasons, List<Cautions.Caution> cautions,
        List<String> sources, Settled settled) {

    /** Where a task stands. */
    public enum State {
        OPEN,
        DONE,
        SKIPPED
    }

    /** Where it stands. */
    public State state() {
        return settled.open() ? State.OPEN : settled.skipped() ? State.SKIPPED : State.DONE;
    }

    /** Work at one place in a season, which other work may come after: by rule, subject or bed, and year. */
    public record Work(String rule, String where, int season) {}

    /** The work that it is: at its subject, and in the bed that this stands in. */
    public List<Work> works() {
        return works(rule.id()).toList();
    }

    /** The work that it comes after. */
    public List<Work> comesAfter() {
        return rule.after().stream().flatMap(this::works).toList();
    }

    private Stream<Work> works(String of) {
        return Stream.concat(Stream.of(subject.id()), subject.bed().stream().map(bed -> bed.bed().id()))
                .map(where -> new Work(of, where, season.year()));
    }

    /** The day on which it was done or skipped; empty while some of it is left to do. */
    public Optional<LocalDate> finished() {
        return settled.open() ? Optional.empty() : settled.lastDay();
    }

    /** The plants it concerns, or the bed, cuttings or garden: each done, skipped or open for itself. */
    public List<Share> shares() {
        return settled.shares();
    }

    /** {@code winter-cut@bc-1@2027}; a repeat has its number behind it. */
    static String id(Rule rule, Situation situation, int ordinal) {
        return situation.task(rule.id()) + (rule.repeatDays() > 0 ? "#" + ordinal : "");
    }

    /** How long it should take, min, where the rule or the amount says. */
    public Optional<Double> minutes() {
        return amount.flatMap(Amount::minutes)
                .or(() -> rule.minutes().isPresent() ? Optional.of(rule.minutes().getAsDouble()) : Optional.empty());
    }

    /** Those of the rule and of the material, by which materials are kept apart. */
    public Set<String> tags() {
        List<String> ofAmount = amount.map(Amount::tags).orElse(List.of());
        if (ofAmount.isEmpty() && rule.tags().isEmpty()) { return Set.of(); }
        Set<String> tags = new HashSet<>(rule.tags());
        tags.addAll(ofAmount);
        return tags;
    }

    Task on(LocalDate chosen, LocalDate thaw) {
        return chosen.equals(day) && thaw.equals(from) ? this
                : new Task(id, rule, subject, season, ordinal, title, window, thaw, chosen, amount, reasons, cautions,
                        sources, settled);
    }
}

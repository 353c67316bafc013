package org.oldwood.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.season.Season;

/**
 * A rule applied to a subject in a season.
 *
 * @param id {@code winter-cut@bc-1@2027}: rule, subject, season, and {@code #n} where a rule repeats. The same task has
 *     the same id for ever
 * @param rule the rule
 * @param subject what it is done to
 * @param season the season it belongs to
 * @param ordinal 1, or the place among the repeats
 * @param title for people, without amount or date
 * @param window the first and last good day
 * @param day the chosen day, inside the window
 * @param amount how much; empty where the rule asks for none
 * @param reasons what made it fire
 * @param cautions short lines, in the order in which to show them
 * @param sources source keys, each once
 * @param state where it stands
 * @param finished the day it was done or skipped
 */
public record Task(
        String id,
        Rule rule,
        Subject subject,
        Season season,
        int ordinal,
        String title,
        Window window,
        LocalDate day,
        Optional<Amount> amount,
        List<Reason> reasons,
        List<String> cautions,
        List<String> sources,
        State state,
        Optional<LocalDate> finished) {

    /** Where a task stands. */
    public enum State {
        OPEN,
        DONE,
        SKIPPED
    }

    /** {@code winter-cut@bc-1@2027}; a repeat has its number behind it. */
    static String id(Rule rule, Situation situation, int ordinal) {
        return rule.id()
                + "@"
                + situation.subject().id()
                + "@"
                + situation.season().label()
                + (rule.repeatDays() > 0 ? "#" + ordinal : "");
    }

    /** How long it should take, min, where the rule or the amount says. */
    public Optional<Double> minutes() {
        return amount.flatMap(Amount::minutes)
                .or(() ->
                        rule.minutes().isPresent() ? Optional.of(rule.minutes().getAsDouble()) : Optional.empty());
    }

    Task on(LocalDate chosen) {
        return chosen.equals(day)
                ? this
                : new Task(
                        id, rule, subject, season, ordinal, title, window, chosen, amount, reasons, cautions, sources,
                        state, finished);
    }
}

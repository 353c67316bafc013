package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.settle.Settled;
import org.oldwood.season.Season;

/**
 * Gathers what was not done in its time: what is still good moves on, the rest is told once, until it is noted,
 * skipped, or overtaken by the same job of the next season.
 */
final class Forgotten {
    private final Situation.World world;
    private final Judge judge;
    private final Settler settler;
    private final Advisor advisors;
    private final Optional<LocalDate> since;
    private final List<Missed> all = new ArrayList<>();
    private final Map<Asked, Optional<Undone>> asked = new HashMap<>();

    Forgotten(Situation.World world, Judge judge, Settler settler, Advisor advisors) {
        this.world = world;
        this.judge = judge;
        this.settler = settler;
        this.advisors = advisors;
        // that something was planted tells what stands there, and not that anybody kept a record of work
        this.since = world.state().garden().since().or(() -> world.state().entries().stream()
                .filter(entry -> entry.kind() != EntryKind.PLANTED).map(Entry::date).findFirst());
    }

    /** All of it, with what may still be done instead, as the tasks that are open tell. */
    List<Missed> all(List<Task> tasks) {
        return Missed.against(tasks, all);
    }

    /** A window that is over, as far as the work is still good: its last day then is the latest that the rule tells. */
    Optional<Window> stillGood(Rule rule, Situation situation, Window window) {
        return rule.ifMissed().until().flatMap(until -> until.find(situation, advisors)).map(WindowEnd.Found::day)
                .filter(day -> day.isAfter(window.last()) && !day.isBefore(world.today()))
                .filter(day -> !window.last().isBefore(world.today()) || wasThere(situation.subject(), window))
                .map(day -> window.part(window.first(), day));
    }

    /** Tells of work whose time is past, where there was a record, and a plant, when it was. */
    void tell(Rule rule, Situation situation, Window window, Settled settled, int ordinal) {
        if (!isAskedFor(rule) || !wasThere(situation.subject(), window) || isNothing(rule, situation)
                || !wasDue(rule, situation.subject(), situation.season(), window)) {
            return;
        }
        all.add(new Missed(Task.id(rule, situation, ordinal), rule, Titles.of(rule, situation, settled),
                situation.subject().id(), situation.subject().bed().map(bed -> bed.bed().id()), window.last(),
                rule.ifMissed().words()));
    }

    /** Whether work of that season is not too late yet. */
    boolean reachesToday(Rule rule, Subject subject, Season season) {
        Optional<Window> time = judge.time(rule, subject, season);
        return time.isPresent() && (!time.get().last().isBefore(world.today())
                || stillGood(rule, new Situation(world, subject, season, world.today()), time.get()).isPresent());
    }

    /** What last season left undone, as long as this season's time for it has not come. */
    void lastSeason(Rule rule, Subject subject) {
        Season now = world.state().season();
        if (isTold(rule) && !hasComeAgain(rule, subject, now) && !reachesToday(rule, subject, now.plus(-1))) {
            missedIn(rule, subject, now.plus(-1))
                    .ifPresent(missed -> tell(rule, missed.situation, missed.window, missed.settled, 1));
        }
    }

    /** What a task says where the same one of the season before was not done. */
    Optional<Reason> before(Rule rule, Subject subject, Season season) {
        return isTold(rule) && rule.ifMissed().harm() > 1 ? missedIn(rule, subject, season.plus(-1))
                .map(missed -> new Reason(true, notNoted(missed, rule), List.of())) : Optional.empty();
    }

    private static String notNoted(Undone missed, Rule rule) {
        String part = missed.settled.partly() ? " (%s)".formatted(Left.inWords(missed.settled)) : "";
        return "last season's, until %s, is not noted as done%s. %s"
                .formatted(missed.window.last(), part, rule.ifMissed().words()).strip();
    }

    private record Asked(String rule, String subject, int season) {}

    private record Undone(Situation situation, Window window, Settled settled) {}

    private boolean isTold(Rule rule) {
        return isAskedFor(rule) && rule.repeatDays() == 0 && rule.isBySeason() && since.isPresent();
    }

    /** Optional work is not told, nor what no entry of its own tells of, unless it is grave: it lapses. */
    private static boolean isAskedFor(Rule rule) {
        int harm = rule.ifMissed().harm();
        return harm == 3 || (harm > 0 && !rule.doneBy().kinds().isEmpty());
    }

    private boolean hasComeAgain(Rule rule, Subject subject, Season season) {
        return judge.time(rule, subject, season).filter(window -> !window.first().isAfter(world.today())).isPresent();
    }

    /** Always of the subject as it is, and asked again by each pass of a plan. */
    private Optional<Undone> missedIn(Rule rule, Subject subject, Season season) {
        return asked.computeIfAbsent(new Asked(rule.id(), subject.id(), season.year()),
                any -> findMissedIn(rule, subject, season));
    }

    private Optional<Undone> findMissedIn(Rule rule, Subject subject, Season season) {
        Optional<Window> time = judge.time(rule, subject, season).filter(window -> wasThere(subject, window));
        if (time.isEmpty() || !time.get().last().isBefore(world.today())) { return Optional.empty(); }
        Verdict verdict = judge.judge(rule, subject, season);
        if (!verdict.due()) { return Optional.empty(); }
        Settled settled = settler.of(rule, verdict.situation(), time.get(), 1);
        return settled.open() && !isNothing(rule, verdict.situation()) && wasDue(rule, subject, season, time.get())
                ? Optional.of(new Undone(verdict.situation(), time.get(), settled))
                : Optional.empty();
    }

    /** Whether the record asked for it in its time: what was found later asks for nothing before. */
    private boolean wasDue(Rule rule, Subject subject, Season season, Window window) {
        Subject then = SubjectHistory.on(subject, window.last(), world.state().leafFalls());
        return judge.judge(rule, then, season).due();
    }

    private boolean isNothing(Rule rule, Situation situation) {
        return rule.amount().filter(advisors.amountNames()::contains)
                .filter(name -> advisors.amount(name, situation).isEmpty()).isPresent();
    }

    private boolean wasThere(Subject subject, Window window) {
        return since.filter(day -> !day.isAfter(window.last())).isPresent() && stood(subject, window.last());
    }

    private static boolean stood(Subject subject, LocalDate day) {
        if (subject instanceof Subject.Lot lot) { return !lot.state().struckOn().isAfter(day); }
        return subject.plants().isEmpty()
                || subject.plants().stream().anyMatch(plant -> !plant.plant().planted().isAfter(day));
    }
}

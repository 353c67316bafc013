package org.oldwood.plan;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.Entry;
import org.oldwood.plan.settle.DoneBy;
import org.oldwood.plan.settle.Settled;
import org.oldwood.plan.settle.Settling;
import org.oldwood.plan.settle.Span;
import org.oldwood.plan.settle.Times;
import org.oldwood.season.Season;

/**
 * Finds how far tasks have come: tells {@link Settling} a task's times in three seasons, and which other rules an entry
 * may have been for.
 */
final class Settler {
    private final Situation.World world;
    private final Judge judge;
    private final Advisor advisors;
    private final List<Rule> rules;
    private final Settling settling = new Settling();
    private final Map<Alike, List<Rule>> rivals = new HashMap<>();

    /** What tasks have in common that the same other rules may be meant instead of. */
    private record Alike(String rule, String crop, String form) {}

    Settler(Situation.World world, Judge judge, Advisor advisors, List<Rule> rules) {
        this.world = world;
        this.judge = judge;
        this.advisors = advisors;
        this.rules = rules;
    }

    /** How far the task of a part of the rule's window has come. */
    Settled of(Rule rule, Situation all, Window window, int ordinal) {
        Situation situation = rule.onThoseOldEnough(all);
        return settling.of(situation.subject(), job(rule, situation, window, named(rule, situation, ordinal)));
    }

    /** Those that name the task; of a planting, those of an old journal too that name its bed instead. */
    private List<Entry> named(Rule rule, Situation situation, int ordinal) {
        Map<String, List<Entry>> all = world.state().finished();
        if (all.isEmpty()) { return List.of(); }
        String id = Task.id(rule, situation, ordinal);
        List<Entry> own = all.getOrDefault(id, List.of());
        return !own.isEmpty() || !(situation.subject() instanceof Subject.Stand stand) ? own
                : all.getOrDefault(id.replace(stand.id(), stand.in().bed().id()), own);
    }

    /** The first entry that may have done some of it, by what it says; not one that names the task. */
    Optional<Entry> first(Rule rule, Situation all, Window window) {
        Situation situation = rule.onThoseOldEnough(all);
        return settling.first(situation.subject(), job(rule, situation, window, List.of()));
    }

    private Settling.Job job(Rule rule, Situation situation, Window window, List<Entry> named) {
        Belongs belongs = new Belongs(rule, situation, new Span(window.first(), window.last()));
        boolean over = window.last().isBefore(world.today());
        return new Settling.Job(rule.doneBy(), belongs::test, named, over, asked(rule, situation));
    }

    /** Whether an entry could have been the work of one window. Its times are found once an entry asks for them. */
    private final class Belongs {
        private final Rule rule;
        private final Situation situation;
        private final Span own;
        private Optional<Times> known = Optional.empty();

        Belongs(Rule rule, Situation situation, Span own) {
            this.rule = rule;
            this.situation = situation;
            this.own = own;
        }

        boolean test(Entry entry) {
            DoneBy.Says says = rule.doneBy().of(entry);
            if (says == DoneBy.Says.NO) { return false; }
            if (known.isEmpty()) { known = Optional.of(times(rule, situation.subject(), situation.season(), own)); }
            return known.get().has(entry.date()) && (says == DoneBy.Says.YES || !isForAnother(entry));
        }

        /** Where an entry does not say which work it was, it was the one whose time is nearest. */
        private boolean isForAnother(Entry entry) {
            long off = own.daysTo(entry.date());
            for (Rule rival : rivals(rule, situation.subject())) {
                Season season = Season.containing(entry.date(), situation.season().hemisphere());
                Optional<Span> time = time(rival, situation.subject(), season);
                if (rival.doneBy().of(entry) != DoneBy.Says.NO && time.isPresent()
                        && times(rival, situation.subject(), season, time.get()).daysTo(entry.date()) < off) {
                    return true;
                }
            }
            return false;
        }
    }

    private Times times(Rule rule, Subject subject, Season season, Span own) {
        if (rule.repeatDays() > 0) { return Times.within(own); }
        LocalDate notBefore = rule.opens().by().equals("entry") ? own.first().minusDays(rule.opens().plusDays())
                : LocalDate.MIN;
        int early = rule.doneBy().earlyDays();
        boolean yearly = !rule.isBySeason();
        return new Times(yearly ? own.plusYears(-1) : time(rule, subject, season.plus(-1)).orElse(own.plusYears(-1)),
                own, yearly ? own.plusYears(1) : time(rule, subject, season.plus(1)).orElse(own.plusYears(1)),
                early > 0 ? own.first().minusDays(early) : notBefore);
    }

    private Optional<Span> time(Rule rule, Subject subject, Season season) {
        return judge.time(rule, subject, season).map(window -> new Span(window.first(), window.last()));
    }

    /** Other rules of the same crop and form that an entry of the same kind settles. */
    private List<Rule> rivals(Rule rule, Subject subject) {
        if (subject.plants().isEmpty() || !(subject instanceof Subject.OnePlant || subject instanceof Subject.Stand)) {
            return List.of();
        }
        Alike alike = new Alike(rule.id(), subject.crop().map(Crop::id).orElse(""),
                subject.plants().get(0).plant().form());
        return rivals
                .computeIfAbsent(alike,
                        any -> rules.stream()
                                .filter(other -> other.concernsPlantsOf(subject) && !other.id().equals(rule.id())
                                        && !Collections.disjoint(rule.doneBy().kinds(), other.doneBy().kinds()))
                                .toList());
    }

    /** Asks the craft how much of the rule's work a part wants, now or before an entry. */
    private Settling.Amounts asked(Rule rule, Situation situation) {
        return new Settling.Amounts() {

            @Override
            public Settling.Wanted now(Subject part) {
                Verdict verdict = judge.judge(rule, part, situation.season());
                return verdict.due() ? amount(part) : Settling.Wanted.NOTHING;
            }

            @Override
            public Settling.Wanted before(Subject part, Entry entry) {
                return amount(SubjectHistory.before(part, entry, world.state().leafFalls()));
            }

            @Override
            public Settling.Wanted after(Subject part, List<Entry> work) {
                return amount(SubjectHistory.after(part, work, world.state().leafFalls()));
            }

            /** Where a craft cannot put a figure to it, it is one piece of work. */
            private Settling.Wanted amount(Subject part) {
                Situation asked = new Situation(world, part, situation.season(), situation.day());
                if (rule.amount().filter(advisors.amountNames()::contains).isEmpty()) { return Settling.Wanted.ONE; }
                return rule.amount().flatMap(name -> advisors.amount(name, asked))
                        .map(amount -> amount.worth() > 0 ? new Settling.Wanted(amount.worth(), amount.due())
                                : Settling.Wanted.ONE)
                        .orElse(Settling.Wanted.NOTHING);
            }
        };
    }
}

package org.oldwood.plan.round;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.oldwood.facts.KeepApart;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Task;

/**
 * Gives rounds their days among those on which one works: three a day and four a week where their time allows, no more
 * minutes than a day has, none before what it comes after, and materials as far apart as they must be. The one whose
 * time ends first chooses first, but after those that it waits for.
 */
final class Diary {
    private static final int MOST_A_DAY = 3;
    private static final int MOST_A_WEEK = 4;
    private static final int FORTNIGHT = 14;

    /** Fewer limits each time that no day is found: without a fortnight, the week's, the day's, keeping apart. */
    private static final int ALL_LIMITS = 4;

    private final GardenState state;
    private final Garden garden;
    private final KeepApart apart;
    private final Map<LocalDate, Integer> onDay = new HashMap<>();
    private final Map<LocalDate, Integer> inWeek = new HashMap<>();
    private final Map<LocalDate, Double> minutes = new HashMap<>();

    /** The days given so far to looks for which once in two weeks is enough. */
    private final TreeSet<LocalDate> looks = new TreeSet<>();

    /** The rules that some other rule comes after. */
    private final Set<String> firsts = new HashSet<>();

    /** The days given so far to work that other work comes after. */
    private final Map<Task.Work, LocalDate> done = new HashMap<>();

    /** The days given so far to work that comes after some other. */
    private final Map<Task.Work, LocalDate> waiting = new HashMap<>();

    /** The rounds of work that other work comes after. */
    private final Map<Task.Work, Map<String, Round>> byWork = new HashMap<>();

    private final Map<String, LocalDate> days = new HashMap<>();
    private final Set<String> asked = new HashSet<>();

    Diary(GardenState state, KeepApart apart) {
        this.state = state;
        this.garden = state.garden();
        this.apart = apart;
    }

    /** The rounds in their order, those with something to do on the day that they are given. */
    List<Round> spread(List<Round> rounds) {
        rounds.forEach(round -> round.tasks().forEach(task -> firsts.addAll(task.rule().after())));
        List<Round> open = rounds.stream().filter(Round::open)
                .sorted(Comparator.comparing(Round::lastGoodDay).thenComparing(Round::id)).toList();
        open.forEach(round -> round.due().stream().filter(task -> firsts.contains(task.rule().id()))
                .forEach(task -> task.works().forEach(
                        work -> byWork.computeIfAbsent(work, any -> new LinkedHashMap<>()).put(round.id(), round))));
        open.forEach(this::place);
        List<Round> spread = new ArrayList<>();
        rounds.forEach(round -> spread.add(round.on(days.getOrDefault(round.id(), round.day()))));
        return spread;
    }

    /** After those of another kind that it waits for: what is fed is not mulched before, whosever time ends first. */
    private void place(Round round) {
        if (!asked.add(round.id())) { return; }
        round.due().stream().flatMap(task -> task.comesAfter().stream())
                .flatMap(work -> byWork.getOrDefault(work, Map.of()).values().stream())
                .filter(other -> !other.kind().id().equals(round.kind().id())).forEach(this::place);
        days.put(round.id(), dayFor(round));
    }

    private LocalDate dayFor(Round round) {
        List<Task> due = round.due();
        LocalDate first = latest(state.date(), round.firstGoodDay());
        LocalDate last = round.lastGoodDay();
        if (round.kind().by() == RoundKind.By.WEEK) {
            first = latest(first, week(round.day()));
            last = earliest(last, week(round.day()).plusDays(6));
        }
        for (Task task : due) {
            first = latest(first, earliest(from(task), last));
        }
        for (Task task : due) {
            LocalDate until = until(task, last);
            last = until.isBefore(first) ? last : until;
        }
        List<Task> tagged = due.stream().filter(task -> !task.tags().isEmpty()).toList();
        LocalDate day = free(round, tagged, first, last);
        if (isLook(round)) { looks.add(day); }
        take(round, due, day);
        return day;
    }

    private LocalDate free(Round round, List<Task> tagged, LocalDate first, LocalDate last) {
        LocalDate wanted = earliest(latest(round.day(), first), last);
        double takes = round.minutes();
        LocalDate looked = isLook(round) ? looks.lower(week(round.day())) : null;
        LocalDate apart = looked == null ? first : looked.plusDays(FORTNIGHT);
        List<LocalDate> days = Stream
                .concat(wanted.datesUntil(last.plusDays(1)),
                        Stream.iterate(wanted.minusDays(1), day -> !day.isBefore(first), day -> day.minusDays(1)))
                .toList();
        for (int limits = ALL_LIMITS; limits >= 0; limits--) {
            for (LocalDate day : days) {
                if ((limits < ALL_LIMITS || !day.isBefore(apart)) && fits(takes, tagged, day, limits)) { return day; }
            }
        }
        return wanted;
    }

    /** Whether once in two weeks is enough for some of it. */
    private static boolean isLook(Round round) {
        return round.due().stream().anyMatch(round.kind()::isEveryOtherWeek);
    }

    private boolean fits(double takes, List<Task> tagged, LocalDate day, int limits) {
        double taken = minutes.getOrDefault(day, 0.0);
        boolean room = garden.minutesPerDay() == 0 || taken == 0 || taken + takes <= garden.minutesPerDay();
        return garden.workDays().contains(day.getDayOfWeek())
                && (limits < 3 || inWeek.getOrDefault(week(day), 0) < MOST_A_WEEK)
                && (limits < 2 || (onDay.getOrDefault(day, 0) < MOST_A_DAY && room))
                && (limits < 1 || tagged.stream().noneMatch(task -> clashes(task, day)));
    }

    private boolean clashes(Task task, LocalDate day) {
        return task.subject().bed().flatMap(bed -> apart.clash(bed.bed().id(), day, task.tags())).isPresent();
    }

    private void take(Round round, List<Task> due, LocalDate day) {
        onDay.merge(day, 1, Integer::sum);
        inWeek.merge(week(day), 1, Integer::sum);
        minutes.merge(day, round.minutes(), Double::sum);
        for (Task task : due) {
            task.subject().bed().filter(bed -> !task.tags().isEmpty())
                    .ifPresent(bed -> apart.given(bed.bed().id(), day, task.tags(), task.title()));
            if (firsts.contains(task.rule().id())) {
                task.works().forEach(work -> done.merge(work, day, Diary::latest));
            }
            task.comesAfter().forEach(work -> waiting.merge(work, day, Diary::earliest));
        }
    }

    /** Not before the day it was put off to, nor before what comes first on the same subject or bed. */
    private LocalDate from(Task task) {
        LocalDate from = state.later().getOrDefault(task.id(), task.window().first());
        for (Task.Work before : task.comesAfter()) {
            from = latest(from, done.getOrDefault(before, from));
        }
        return from;
    }

    /** Not after what it must be before, as far as that is done to the very same plant, bed or cuttings. */
    private LocalDate until(Task task, LocalDate last) {
        Task.Work own = new Task.Work(task.rule().id(), task.subject().id(), task.season().year());
        return earliest(last, waiting.getOrDefault(own, last));
    }

    private LocalDate week(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(garden.wishes().weekStarts()));
    }

    private static LocalDate latest(LocalDate a, LocalDate b) { return a.isAfter(b) ? a : b; }

    private static LocalDate earliest(LocalDate a, LocalDate b) { return a.isBefore(b) ? a : b; }
}

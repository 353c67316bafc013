package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.oldwood.facts.KeepApart;
import org.oldwood.facts.Situation;
import org.oldwood.garden.Garden;

/**
 * Gives each task its day: inside its window, not before today, after the tasks that come first, far enough from what
 * must be kept apart, on a day one works, and where the day still has time. Where one task leaves no day to another,
 * the other order is tried: what does less harm to leave gives way. What cannot be placed becomes a notice.
 */
final class Placement {
    private final Situation.World world;
    private final Garden garden;
    private final KeepApart apart;
    private final Map<LocalDate, Double> minutes = new HashMap<>();

    /** The days of work that other work waits for. */
    private final Map<Task.Work, LocalDate> placed = new HashMap<>();

    /** Those of them that are skipped wherever they were asked for. */
    private final Set<Task.Work> skipped = new HashSet<>();

    /** The rules that some other rule comes after. */
    private final Set<String> first = new HashSet<>();

    /** Tasks that come last, since they left no day to another. */
    private final Set<String> yielding;

    /** What was planned, by the words that a clash tells of it. */
    private final Map<String, Task> byWords = new HashMap<>();

    private final List<String> notices = new ArrayList<>();
    private final List<Task> unplaced = new ArrayList<>();

    private Placement(Situation.World world, KeepApart apart, Set<String> yielding) {
        this.world = world;
        this.garden = world.state().garden();
        this.apart = apart;
        this.yielding = yielding;
    }

    /** @param apart what was given where, read anew for each order that is tried */
    static Plan place(Situation.World world, Supplier<KeepApart> apart, List<Task> tasks, LocalDate until,
            List<Missed> missed) {
        Set<String> yielding = new HashSet<>();
        while (true) {
            int before = yielding.size();
            Plan plan = new Placement(world, apart.get(), yielding).place(tasks, until, missed);
            if (yielding.size() == before) { return plan; }
        }
    }

    private Plan place(List<Task> tasks, LocalDate until, List<Missed> missed) {
        Set<String> last = Set.copyOf(yielding);
        Map<String, Integer> depth = depths(tasks);
        List<Task> done = new ArrayList<>(tasks.size());
        List<Task> ordered = new ArrayList<>(tasks);
        ordered.sort(Comparator.comparing((Task task) -> last.contains(task.id()))
                .thenComparing(task -> depth.getOrDefault(task.rule().id(), 0)).thenComparing(BY_WINDOW));
        for (Task task : ordered) {
            if (isNothingToClear(task)) { continue; }
            if (task.state() == Task.State.OPEN) {
                one(task).ifPresent(done::add);
            } else {
                remember(task, task.day());
                done.add(task);
            }
        }
        done.sort(BY_DAY);
        return new Plan(world.today(), until, done, notices, missed, unplaced);
    }

    private static final Comparator<Task> BY_WINDOW = Comparator.comparing((Task task) -> task.window().first())
            .thenComparing(Task::id);

    private static final Comparator<Task> BY_DAY = Comparator.comparing(Task::day).thenComparing(Task::id);

    /** How many rules come before each, along {@code after}. A ring of rules ends at ten. */
    private Map<String, Integer> depths(List<Task> tasks) {
        Map<String, Rule> rules = new HashMap<>();
        tasks.forEach(task -> rules.put(task.rule().id(), task.rule()));
        rules.values().forEach(rule -> first.addAll(rule.after()));
        Map<String, Integer> depth = new HashMap<>();
        for (int round = 0; round < 10; round++) {
            boolean deeper = false;
            for (Rule rule : rules.values()) {
                int most = depth.getOrDefault(rule.id(), 0);
                for (String id : rule.after()) {
                    most = Math.max(most, depth.getOrDefault(id, -1) + 1);
                }
                Integer before = depth.put(rule.id(), most);
                deeper |= before == null || before < most;
            }
            if (!deeper) { break; }
        }
        return depth;
    }

    private Optional<Task> one(Task task) {
        LocalDate earliest = earliest(task);
        LocalDate wanted = latest(task.day(), earliest);
        LocalDate day = earliest.isAfter(task.window().last()) ? task.window().last() : dayFor(task, wanted, earliest);
        Optional<LocalDate> apartDay = awayFromOthers(task, day).or(() -> awayFromOthers(task, earliest));
        if (apartDay.isEmpty()) {
            notices.add(clashNotice(task, day));
            unplaced.add(task);
            return Optional.empty();
        }
        if (!garden.workDays().contains(apartDay.get().getDayOfWeek()) && !earliest.isAfter(task.window().last())) {
            notices.add("%s: no day that you work lies between %s and %s; it is put on %s.".formatted(task.title(),
                    earliest, task.window().last(), apartDay.get()));
        }
        if (isFrozen(world, task.rule(), apartDay.get())) {
            notices.add(
                    "%s: by the climate's means frost holds until its time ends on %s; do it on the first day of thaw."
                            .formatted(task.title(), task.window().last()));
        }
        remember(task, apartDay.get());
        return Optional.of(task.on(apartDay.get(), from(task)));
    }

    private LocalDate from(Task task) {
        LocalDate now = latest(task.window().first(), world.today());
        return thaw(world, task.rule(), now, task.window().last()).filter(now::isBefore).orElse(task.window().first());
    }

    /**
     * Not before the window, today, the day it was put off to, or the tasks that come first on the same subject or bed.
     */
    private LocalDate earliest(Task task) {
        LocalDate earliest = latest(task.window().first(), world.today());
        earliest = latest(earliest, world.state().later().getOrDefault(task.id(), earliest));
        for (Task.Work before : task.comesAfter()) {
            earliest = latest(earliest, placed.getOrDefault(before, earliest));
        }
        return earliest;
    }

    /** Whether all work there that it clears up after was skipped. */
    private boolean isNothingToClear(Task task) {
        if (!task.rule().clears() || task.state() != Task.State.OPEN) { return false; }
        List<Task.Work> before = task.comesAfter().stream().filter(placed::containsKey).toList();
        return !before.isEmpty() && skipped.containsAll(before);
    }

    private void remember(Task task, LocalDate day) {
        if (first.contains(task.rule().id())) {
            task.works().forEach(work -> {
                boolean isFirst = placed.put(work, latest(day, placed.getOrDefault(work, day))) == null;
                if (task.state() != Task.State.SKIPPED) {
                    skipped.remove(work);
                } else if (isFirst) { skipped.add(work); }
            });
        }
        if (garden.minutesPerDay() != 0) { minutes.merge(day, task.minutes().orElse(0.0), Double::sum); }
        Set<String> tags = task.tags();
        if (!tags.isEmpty() && task.state() != Task.State.SKIPPED) {
            String words = task.title() + (task.state() == Task.State.OPEN ? ", planned for " : ", done on ") + day;
            task.subject().bed().ifPresent(bed -> apart.given(bed.bed().id(), day, tags, words));
            if (task.state() == Task.State.OPEN) { byWords.put(words, task); }
        }
    }

    private static LocalDate latest(LocalDate a, LocalDate b) { return a.isAfter(b) ? a : b; }

    /**
     * The first fitting day from the wanted one on; else the last fitting one before it; on frozen ground only where
     * there is no other; else the wanted one.
     */
    private LocalDate dayFor(Task task, LocalDate wanted, LocalDate earliest) {
        return days(task, wanted, earliest).filter(day -> !isFrozen(world, task.rule(), day)).findFirst()
                .or(() -> days(task, wanted, earliest).findFirst())
                .orElse(wanted.isAfter(task.window().last()) ? task.window().last() : wanted);
    }

    private Stream<LocalDate> days(Task task, LocalDate wanted, LocalDate earliest) {
        Stream<LocalDate> on = Stream.iterate(wanted, day -> !day.isAfter(task.window().last()),
                day -> day.plusDays(1));
        Stream<LocalDate> back = Stream.iterate(wanted.minusDays(1), day -> !day.isBefore(earliest),
                day -> day.minusDays(1));
        return Stream.concat(on, back).filter(day -> fits(task, day));
    }

    private boolean fits(Task task, LocalDate day) {
        if (!garden.workDays().contains(day.getDayOfWeek())) { return false; }
        double taken = minutes.getOrDefault(day, 0.0);
        return taken == 0 || taken + task.minutes().orElse(0.0) <= garden.minutesPerDay();
    }

    /** The first of the days, if there are any, on which a rule's work as a rule finds no hard frost. */
    static Optional<LocalDate> thaw(Situation.World world, Rule rule, LocalDate from, LocalDate last) {
        return Stream.iterate(from, day -> !day.isAfter(last), day -> day.plusDays(1))
                .filter(day -> !isFrozen(world, rule, day)).findFirst();
    }

    private static boolean isFrozen(Situation.World world, Rule rule, LocalDate day) {
        return world.stages().climate().filter(climate -> (rule.openGround() && climate.freezesGround(day))
                || (rule.notInFrost() && climate.freezes(day))).isPresent();
    }

    private Optional<LocalDate> awayFromOthers(Task task, LocalDate wanted) {
        Set<String> tags = task.tags();
        if (tags.isEmpty() || task.subject().bed().isEmpty()) { return Optional.of(wanted); }
        String bed = task.subject().bed().get().bed().id();
        LocalDate day = wanted;
        while (!day.isAfter(task.window().last())) {
            Optional<KeepApart.Clash> clash = apart.clash(bed, day, tags);
            if (clash.isEmpty()) { return Optional.of(day); }
            LocalDate next = latest(clash.get().from(), day.plusDays(1));
            day = next.isAfter(task.window().last()) ? next : dayFor(task, next, next);
        }
        return Optional.empty();
    }

    /** What gives way to what, and why; where the other is planned and may better wait, it will be placed last. */
    private String clashNotice(Task task, LocalDate day) {
        String bed = task.subject().bed().map(in -> in.bed().id()).orElse("");
        Optional<KeepApart.Clash> clash = apart.clash(bed, day, task.tags());
        clash.map(KeepApart.Clash::other).map(byWords::get)
                .filter(other -> other.rule().ifMissed().harm() <= task.rule().ifMissed().harm())
                .filter(other -> !yielding.contains(task.id())).ifPresent(other -> yielding.add(other.id()));
        return clash.map(
                found -> "%s gives way to \"%s\": keep %s between. %s From %s it could be done, but its time ends on %s. %s"
                        .formatted(task.title(), found.other(), found.pair().days().inWords(), found.pair().reason(),
                                found.from(), task.window().last(), task.rule().ifMissed().words())
                        .strip())
                .orElseGet(() -> "%s: no day was found between %s and %s.".formatted(task.title(),
                        task.window().first(), task.window().last()));
    }
}

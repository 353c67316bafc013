package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.facts.Amount;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;

/**
 * A year and a half lived month by month by a grower who does all of the work, seven tenths or three, ticks some of it
 * off and notes some of it by entry, half of it late in the month.
 */
class GrowersYearTest {
    private static final int MONTHS = 18;
    private static final Set<EntryKind> GIVING = Set.of(EntryKind.FED, EntryKind.LIMED, EntryKind.ACIDIFIED);

    private final Map<String, Double> plannedGrams = new HashMap<>();
    private final Map<String, LocalDate> open = new LinkedHashMap<>();
    private final Set<String> answered = new HashSet<>();

    private static SmallGarden garden(String hemisphere) {
        boolean north = hemisphere.equals("north");
        SmallGarden garden = north ? SmallGarden.north(",'materials':['ammonium-sulphate','sulphate-of-potash']")
                : SmallGarden.south();
        String planted = north ? "2018-11-15" : "2018-05-15";
        garden.note(planted, "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'")
                .note(planted, "'planted','plant':'bc-2','crop':'blackcurrant','bed':'a'")
                .note(planted, "'planted','plant':'g-1','crop':'gooseberry','bed':'a'")
                .note(planted, "'planted','plant':'g-2','crop':'gooseberry','bed':'a'")
                .note(planted, "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':4")
                .note(north ? "2024-06-01" : "2024-12-01", "'vigour','bed':'a','growth':'normal'");
        return garden;
    }

    private static LocalDate begin(String hemisphere) {
        return LocalDate.parse(hemisphere.equals("north") ? "2026-11-05" : "2026-05-05");
    }

    /** Growers in turn north and south, from the one with number {@code first} on; more of them in the long run. */
    static Stream<Arguments> growers() {
        int first = Integer.getInteger("first", 0);
        return IntStream.range(first, first + Integer.getInteger("growers", 10)).mapToObj(seed -> Arguments
                .of(seed % 2 == 0 ? "north" : "south", List.of(100, 70, 30, 70, 0).get(seed / 2 % 5), seed));
    }

    /** A fifth of them. */
    static Stream<Arguments> few() {
        return growers().limit(Integer.getInteger("growers", 10) / 5);
    }

    @ParameterizedTest(name = "{0}, {1} % done, seed {2}")
    @MethodSource("growers")
    void no_job_vanishes(String hemisphere, int percent, int seed) {
        Random random = new Random(seed);
        SmallGarden garden = garden(hemisphere);
        LocalDate day = begin(hemisphere);
        for (int month = 0; month < MONTHS; month++) {
            Plan plan = garden.plan(day.toString());
            everyOpenJobIsStillThere(plan, garden.on(day.toString()), day);
            for (Task task : plan.tasks()) {
                if (task.state() == Task.State.OPEN && isDue(task, day)) {
                    if (random.nextInt(100) < percent) {
                        work(garden, task, day, random.nextBoolean());
                    } else if (random.nextInt(100) < 5) {
                        garden.note(day.toString(), "'skipped','task':'%s'".formatted(task.id()));
                        answered.add(task.id());
                    }
                }
            }
            day = day.plusMonths(1);
        }
        if (percent == 100) { assertThat(garden.plan(day.toString()).missed()).extracting(Missed::task).isEmpty(); }
        bookedIsPlanned(garden.on(day.toString()));
    }

    private static boolean isDue(Task task, LocalDate day) {
        return task.window().first().isBefore(day.plusMonths(1)) && task.rule().repeatDays() == 0;
    }

    /** Each job seen before is open still, was answered, is told as missed, or its time has come again. */
    private void everyOpenJobIsStillThere(Plan plan, GardenState state, LocalDate day) {
        Map<String, Task> byId = plan.tasks().stream().collect(Collectors.toMap(Task::id, task -> task));
        Set<String> missed = plan.missed().stream().map(Missed::task).collect(Collectors.toSet());
        for (Map.Entry<String, LocalDate> before : open.entrySet()) {
            String id = before.getKey();
            boolean inTime = !before.getValue().isBefore(day);
            Rule rule = RULES.find(id.split("@", 2)[0]).orElseThrow();
            boolean lapses = rule.ifMissed().harm() == 0
                    || (rule.ifMissed().harm() < 3 && rule.doneBy().kinds().isEmpty());
            boolean overtaken = before.getValue().plusMonths(10).isBefore(day) || hasComeAgain(id, plan, day);
            assertThat(byId.containsKey(id) || answered.contains(id) || missed.contains(id)
                    || (!inTime && (lapses || overtaken || isMadeUpFor(id, rule)))).as("%s on %s", id, day).isTrue();
        }
        open.clear();
        plan.tasks().stream().filter(task -> task.state() == Task.State.OPEN && !task.window().first().isAfter(day))
                .filter(task -> task.rule().repeatDays() == 0)
                .forEach(task -> open.put(task.id(), task.window().last()));
        missed.forEach(id -> open.putIfAbsent(id,
                plan.missed().stream().filter(one -> one.task().equals(id)).findFirst().orElseThrow().last()));
    }

    private static final Rules RULES = Rules.read(org.oldwood.store.Documents.bundled());

    /** What the rule names to do instead was answered. */
    private boolean isMadeUpFor(String id, Rule rule) {
        return rule.ifMissed().instead().filter(other -> answered.contains(other + id.substring(id.indexOf('@'))))
                .isPresent();
    }

    /** The same job's time in the next season has begun. */
    private static boolean hasComeAgain(String id, Plan plan, LocalDate day) {
        String job = id.substring(0, id.lastIndexOf('@') + 1);
        return plan.tasks().stream().anyMatch(
                task -> task.id().startsWith(job) && !task.id().equals(id) && !task.window().first().isAfter(day));
    }

    /** Half is ticked off, half noted by the entries that it comes to; what only a look can tell is ticked off. */
    private void work(SmallGarden garden, Task task, LocalDate day, boolean byEntry) {
        note(garden, task, day, byEntry);
        if (GIVING.containsAll(task.rule().doneBy().kinds())) {
            task.amount().ifPresent(amount -> amount.buys()
                    .forEach(buy -> plannedGrams.merge(buy.material(), buy.amount(), Double::sum)));
        }
        answered.add(task.id());
    }

    private static void note(SmallGarden garden, Task task, LocalDate day, boolean byEntry) {
        LocalDate from = task.window().first().isAfter(day) ? task.window().first() : day;
        List<Amount.Noted> booked = Booking.of(task);
        if (!byEntry || booked.isEmpty()) { garden.note(from.toString(), "'done','task':'%s'".formatted(task.id())); }
        booked.forEach(noted -> garden.note(from.toString(), line(noted)));
    }

    /**
     * A year lived twice, once by entries and once by ticks, which book the same: all that is open afterwards is alike.
     */
    @ParameterizedTest(name = "{0}, seed {2}")
    @MethodSource("few")
    void the_same_work_by_entry_and_by_tick_gives_the_same_plan(String hemisphere, int percent, int seed) {
        SmallGarden byEntry = garden(hemisphere);
        SmallGarden byTick = garden(hemisphere);
        LocalDate day = begin(hemisphere);
        Random random = new Random(seed);
        for (int month = 0; month < 12; month++) {
            assertThat(open(byEntry, day)).as("on %s", day).containsExactlyElementsOf(open(byTick, day));
            for (Task task : byEntry.plan(day.toString()).tasks()) {
                if (task.state() == Task.State.OPEN && isDue(task, day)
                        && random.nextInt(100) < Math.max(20, percent)) {
                    note(byEntry, task, day, true);
                    note(byTick, task, day, false);
                }
            }
            day = day.plusMonths(1);
        }
    }

    private static List<String> open(SmallGarden garden, LocalDate day) {
        Plan plan = garden.plan(day.toString());
        return Stream
                .concat(plan.missed().stream().map(Missed::task),
                        plan.tasks().stream().filter(task -> task.state() == Task.State.OPEN).map(task -> "%s %s %s %s"
                                .formatted(task.id(), task.title(), task.day(), task.amount().map(Amount::words))))
                .toList();
    }

    static String line(Amount.Noted noted) {
        StringBuilder line = new StringBuilder("'" + noted.kind().key() + "'");
        for (EntryField field : noted.kind().fields()) {
            String value = noted.says().get(field.key());
            if (value != null) { line.append(",'").append(field.key()).append("':").append(json(field, value)); }
        }
        return line.toString();
    }

    private static String json(EntryField field, String value) {
        return switch (field.type()) {
            case NUMBER, COUNT -> value;
            case STEMS -> "{" + value.replaceAll("([0-9]+\\+?)=([0-9]+)", "'$1':$2") + "}";
            default -> "'" + value + "'";
        };
    }

    private void bookedIsPlanned(GardenState state) {
        Map<String, Double> booked = new HashMap<>();
        for (Entry entry : state.entries()) {
            if (GIVING.contains(entry.kind())) {
                booked.merge(entry.needed("material"), entry.number("grams").orElse(0), Double::sum);
            }
        }
        assertThat(booked.keySet()).isEqualTo(plannedGrams.keySet());
        booked.forEach((material, grams) -> assertThat(grams).as(material).isCloseTo(plannedGrams.get(material),
                within(0.01)));
    }
}

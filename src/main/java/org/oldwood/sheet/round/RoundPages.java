package org.oldwood.sheet.round;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.oldwood.facts.Situation;
import org.oldwood.garden.Bed;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.ShoppingList;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.sheet.round.RoundPage.Bar;
import org.oldwood.sheet.round.RoundPage.Group;
import org.oldwood.sheet.round.RoundPage.Line;
import org.oldwood.sheet.round.RoundPage.Tick;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Makes pages of rounds: that of now, and that of a month. */
public final class RoundPages {
    private static final int SOON_DAYS = 30;
    private static final int STRIP_MONTHS = 4;
    private static final int MOST_JOBS_IN_FULL = 5;
    private static final int MOST_MISSED = 4;
    private static final int MOST_CARES = 4;
    private static final int MOST_BEDS = 4;
    private static final int MOST_CARDS_IN_A_MONTH = 8;
    private static final int MONTHS = 12;

    /** On the strip the name of a month of which less is to come would run into the next. */
    private static final int FIRST_DAYS = 6;

    private static final double PERCENT = 100;

    private final Situation.World world;
    private final Plan plan;
    private final List<Round> rounds;
    private final LocalDate today;
    private final CutCards cuts;

    public RoundPages(Situation.World world, Plan plan) {
        this.world = world;
        this.plan = plan;
        this.today = world.state().date();
        this.rounds = Rounds.read(world.documents()).of(plan, world.state()).stream()
                .filter(round -> round.open() && round.wanted(world.state().wishes())).toList();
        this.cuts = new CutCards(world, plan);
    }

    /** What is urgent, what is next, what comes within the month; then a card for each next cut. */
    public RoundPage now() {
        LocalDate soon = today.plusDays(world.state().wishes().aheadDays() - 1L);
        LocalDate later = today.plusDays(SOON_DAYS);
        List<Round> first = between(LocalDate.MIN, soon).stream()
                .sorted(Comparator.comparingDouble((Round round) -> -round.urgency(today))).toList();
        List<Round> then = between(soon.plusDays(1), later);
        CutCards.Drawn cards = cuts.until(stripEnd(today));
        Maker maker = new Maker(today, cards);
        List<Group> groups = Group.filled(List.of(
                maker.group("Until %s, most urgent first".formatted(Dates.dayMonth(soon)), MOST_JOBS_IN_FULL, first),
                maker.group("Then, until %s".formatted(Dates.dayMonth(later)), 0, then)));
        List<Round> all = Stream.concat(first.stream(), then.stream()).toList();
        String next = titles(between(later.plusDays(1), later.plusDays(SOON_DAYS)));
        return page("What to do now", false, today, groups, all, cards, next);
    }

    /** One month on one page; today's month from today on. */
    public RoundPage month(YearMonth month) {
        LocalDate from = month.atDay(1).isBefore(today) ? today : month.atDay(1);
        boolean thisMonth = YearMonth.from(today).equals(month);
        List<Round> those = between(thisMonth ? LocalDate.MIN : from, month.atEndOfMonth());
        Set<String> tasks = those.stream().flatMap(round -> round.tasks().stream()).map(Task::id)
                .collect(Collectors.toSet());
        CutCards.Drawn cards = cuts.drawn(tasks, MOST_CARDS_IN_A_MONTH);
        YearMonth after = month.plusMonths(1);
        return page(Dates.month(month.atDay(1)), true, from,
                Group.filled(List.of(new Maker(from, cards).group("", 0, those))), those, cards,
                titles(between(after.atDay(1), after.atEndOfMonth())));
    }

    /** This month and the eleven after it. */
    public List<RoundPage> year() {
        return IntStream.range(0, MONTHS).mapToObj(i -> month(YearMonth.from(today).plusMonths(i))).toList();
    }

    private List<Round> between(LocalDate first, LocalDate last) {
        return rounds.stream().filter(round -> !round.day().isBefore(first) && !round.day().isAfter(last)).toList();
    }

    /** A page from a day on; on that of today what was missed stands too. */
    private RoundPage page(String title, boolean month, LocalDate from, List<Group> groups, List<Round> those,
            CutCards.Drawn cards, String next) {
        return new RoundPage(title, month,
                List.of("as on " + Dates.dayMonth(today), Words.count(those.size(), "round", "rounds")),
                from.equals(today) ? Missed.lines(plan.missed(), MOST_MISSED) : List.of(), ticks(from), groups,
                cards.looks(), cards.cards(), cards.undrawn(), month ? List.of() : BedPlan.of(world.state(), those),
                buy(those), next);
    }

    private static LocalDate stripEnd(LocalDate from) { return YearMonth.from(from).plusMonths(STRIP_MONTHS).atDay(1); }

    private static List<Tick> ticks(LocalDate from) {
        List<Tick> ticks = new ArrayList<>();
        if (from.getDayOfMonth() <= FIRST_DAYS) { ticks.add(new Tick(Dates.monthName(from).substring(0, 3), "0%")); }
        for (int i = 1; i < STRIP_MONTHS; i++) {
            LocalDate first = YearMonth.from(from).plusMonths(i).atDay(1);
            ticks.add(new Tick(Dates.monthName(first).substring(0, 3), percent(share(from, first))));
        }
        return ticks;
    }

    private static double share(LocalDate from, LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(from, day) / ChronoUnit.DAYS.between(from, stripEnd(from));
        return Math.max(0, Math.min(1, share));
    }

    private static String percent(double share) { return String.format(Locale.ROOT, "%.2f%%", PERCENT * share); }

    private List<String> buy(List<Round> those) {
        List<Task> tasks = those.stream().flatMap(round -> round.tasks().stream())
                .sorted(Comparator.comparing(Task::day)).toList();
        return ShoppingList
                .of(plan.part(tasks, List.of()), world.state().garden()).items().stream().map(item -> "%s, %s, by %s"
                        .formatted(item.total().name(), item.total().inWords(), Dates.dayMonth(item.neededBy())))
                .toList();
    }

    private static String titles(List<Round> those) {
        return those.stream().map(Round::title).distinct().collect(Collectors.joining("; "));
    }

    /**
     * Makes the lines of one page: on it how a thing is done, and each caution, is said once; four cautions at most.
     */
    private final class Maker {
        private final List<String> inOrder = world.state().garden().beds().stream().map(Bed::name).toList();
        private final LocalDate from;
        private final Set<String> cares = new HashSet<>();
        private final RoundJobs jobs;

        Maker(LocalDate from, CutCards.Drawn cards) {
            this.from = from;
            Set<String> drawn = cards.cards().stream().flatMap(card -> card.tasks().stream())
                    .collect(Collectors.toSet());
            this.jobs = new RoundJobs(drawn, new HashSet<>(), new HashSet<>());
        }

        /** Rounds under a heading, in full as long as they come to no more than {@code most} jobs. */
        Group group(String heading, int most, List<Round> those) {
            List<Line> lines = new ArrayList<>();
            int left = most;
            for (Round round : those) {
                int rules = (int) round.tasks().stream().map(task -> task.rule().id()).distinct().count();
                boolean brief = rules > left;
                left -= brief ? 0 : rules;
                lines.add(line(round, brief));
            }
            return new Group(heading, lines);
        }

        private Line line(Round round, boolean brief) {
            double begin = share(from, round.firstGoodDay());
            double end = share(from, round.lastGoodDay().plusDays(1));
            return new Line(round.id(), round.tasks().get(0).rule().craft(),
                    "%s %s".formatted(Dates.weekday(round.day()).substring(0, 3), Dates.dayMonth(round.day())),
                    "till " + Dates.dayMonth(round.lastGoodDay()),
                    round.minutes() > 0 ? "about " + Math.round(round.minutes()) + " min" : "", round.kind().optional(),
                    round.title(), beds(round), jobs.of(round, brief), care(round),
                    new Bar(percent(begin), percent(Math.max(0.01, end - begin))), brief);
        }

        /** In the order of the garden. */
        private String beds(Round round) {
            List<String> beds = inOrder.stream().filter(round.beds()::contains).distinct().toList();
            return beds.size() > 1 && beds.size() <= MOST_BEDS ? String.join(", ", beds) : "";
        }

        private String care(Round round) {
            return round.cautions().stream().limit(1)
                    .filter(caution -> cares.size() < MOST_CARES && cares.add(caution.id()))
                    .map(caution -> caution.line()).findFirst().orElse("");
        }
    }
}

package org.oldwood.cli.year;

import java.io.IOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.ShownList;
import org.oldwood.cli.command.TableOptions;
import org.oldwood.facts.Purchase;
import org.oldwood.garden.Wishes;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.report.TaskJson;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the year's rounds of work, or tells all of one. */
@Command(name = "tasks")
public final class TasksCommand extends GardenCommand {
    private static final int MOST = 20;
    private static final int MOST_MISSED = 10;
    private static final int MOST_CAUTIONS = 2;
    private static final String MISSED = "missed";
    private static final String GAP = "{}";

    @Parameters(arity = "0..1", paramLabel = "WHICH")
    Optional<String> which = Optional.empty();

    @Option(names = "--each")
    boolean each;

    @Option(names = "--bed", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Option(names = "--craft", paramLabel = "CRAFT")
    Optional<String> craft = Optional.empty();

    @Option(names = "--finished")
    boolean finished;

    @Mixin
    TableOptions table = new TableOptions();

    @Override
    public int run() throws IOException {
        mustKnow("bed", bed, state().beds().keySet());
        GardenPlan planned = GardenPlan.of(this, folder());
        Set<String> crafts = planned.planner().rules().all().stream().map(Rule::craft)
                .collect(Collectors.toCollection(TreeSet::new));
        mustKnow("craft", craft, crafts);
        Plan whole = planned.plan();
        List<Task> chosen = whole.tasks().stream().filter(this::chosen).toList();
        Plan plan = whole.part(chosen, missed(whole));
        Rounds kinds = Rounds.read(folder().documents());
        List<Round> rounds = kinds.of(plan, planned.state());
        return answer(() -> TaskJson.of(plan, rounds), () -> {
            if (which.filter(MISSED::equals).isPresent()) {
                tellMissed(plan);
            } else if (each) {
                list(plan);
                tellMissed(plan);
            } else {
                rounds(rounds, kinds.kinds(), planned.state().wishes(), plan);
            }
            if (which.isEmpty()) {
                planned.state().questions().forEach(question -> tell("Question: " + question));
                Planning.tellNotices(this, plan.notices());
            }
        });
    }

    private void rounds(List<Round> rounds, Set<String> kinds, Wishes wishes, Plan plan) {
        Optional<Round> one = which
                .flatMap(asked -> ShownList.find(this, rounds, asked).or(() -> holding(asked, rounds)));
        if (one.isPresent() && !table.asked()) {
            tell(one.get());
            return;
        }
        boolean oneKind = which.filter(kinds::contains).isPresent();
        List<Round> listed = rounds.stream().filter(round -> finished || round.open())
                .filter(round -> oneKind || round.wanted(wishes))
                .filter(one.isPresent() ? one.get()::equals : asked(kinds)).toList();
        if (table.asked()) {
            table.print(this, listed.stream().map(this::cells).toList());
            return;
        }
        RoundLines lines = new RoundLines(this);
        if (listed.isEmpty()) { lines.say("Nothing is due."); }
        lines.show("Rounds of work, by day", listed, which.isPresent() ? Integer.MAX_VALUE : MOST);
        lines.print();
        Set<String> unwanted = rounds.stream().filter(round -> round.open() && !round.wanted(wishes))
                .map(round -> round.kind().id()).collect(Collectors.toCollection(TreeSet::new));
        if (which.isEmpty()) {
            String more = unwanted.isEmpty() ? "" : "; not asked for: %s".formatted(String.join(", ", unwanted));
            out().line("More: oldwood tasks 1, oldwood tasks year%s".formatted(more));
            if (!plan.missed().isEmpty()) {
                out().line("Missed so far: %s (oldwood tasks missed)"
                        .formatted(Words.count(plan.missed().size(), "job", "jobs")));
            }
        }
    }

    private static Optional<Round> holding(String task, List<Round> rounds) {
        return rounds.stream().filter(round -> round.all().stream().anyMatch(each -> each.id().equals(task)))
                .findFirst();
    }

    private Map<String, String> cells(Round round) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("round", round.id());
        cells.put("day", round.day().toString());
        cells.put("from", round.firstGoodDay().toString());
        cells.put("to", round.lastGoodDay().toString());
        cells.put("title", wording().said(round.title()));
        cells.put("beds", String.join(", ", round.beds()));
        cells.put("bushes", round.bushes() == 0 ? "" : Integer.toString(round.bushes()));
        cells.put("minutes", round.minutes() == 0 ? "" : Long.toString(Math.round(round.minutes())));
        cells.put("materials",
                wording().said(round.materials().stream().map(Purchase::told).collect(Collectors.joining(", "))));
        cells.put("state", round.open() ? "open" : "done");
        cells.put("tasks", round.all().stream().map(Task::id).collect(Collectors.joining(" ")));
        return cells;
    }

    /** Whether a round lies in the time, or is of the kind, that was asked for. */
    private Predicate<Round> asked(Set<String> kinds) {
        String text = which.orElse("year");
        if (text.equals("year") || kinds.contains(text)) {
            return round -> text.equals("year") || round.kind().id().equals(text);
        }
        try {
            if (text.equals("week")) { return within(today(), today().plusDays(6)); }
            if (text.equals("month")) { return within(today(), today().plusMonths(1).minusDays(1)); }
            String[] days = text.split("\\.\\.", 2);
            return days.length == 2 ? within(LocalDate.parse(days[0]), LocalDate.parse(days[1]))
                    : within(YearMonth.parse(text).atDay(1), YearMonth.parse(text).atEndOfMonth());
        } catch (DateTimeParseException e) {
            List<String> known = new ArrayList<>(List.of("week", "month", "year", MISSED));
            known.addAll(kinds);
            throw noSuch("round or span of days", text, known);
        }
    }

    private static Predicate<Round> within(LocalDate first, LocalDate last) {
        return round -> !round.day().isBefore(first) && !round.day().isAfter(last);
    }

    /** All of one round: when, what to take along, what to mind, task by task. */
    private void tell(Round round) {
        out().paragraph(0, "%s (%s)".formatted(round.title(), round.id()));
        if (round.open()) {
            String time = round.minutes() == 0 ? "" : ", %s".formatted(TaskWords.minutes(round.minutes()));
            String from = Dates.shortDay(round.firstGoodDay());
            String to = Dates.shortDay(round.lastGoodDay());
            say(2, "On %s; good from %s to %s%s.", Dates.shortDay(round.day()), from, to, time);
        }
        if (!round.takeAlong().isEmpty()) {
            out().hanging("  Take along: ", 4, String.join(", ", round.takeAlong()) + ".");
        }
        List<Cautions.Caution> cautions = round.cautions();
        cautions.stream().limit(MOST_CAUTIONS).forEach(caution -> out().hanging("  Take care: ", 4, caution.line()));
        if (cautions.size() > MOST_CAUTIONS) {
            say(4, "%s more on the sheet, and by oldwood why %s.", cautions.size() - MOST_CAUTIONS, round.id());
        }
        List<Task> later = round.later();
        Map<List<String>, List<Task>> alike = new LinkedHashMap<>();
        Stream.of(round.due(), later, round.finished()).flatMap(List::stream).forEach(task -> alike
                .computeIfAbsent(said(task, later.contains(task) ? "later: " : state(task)), key -> new ArrayList<>())
                .add(task));
        alike.forEach((said, tasks) -> tell(said.get(0), tasks));
    }

    /** What is said of a task, with a gap for what it is done to, and when. */
    private static List<String> said(Task task, String state) {
        return List.of(state + TaskWords.headline(task).replace(task.subject().words(), GAP), TaskWords.window(task),
                task.rule().id());
    }

    /** Tasks that differ only in what they are done to, as one. */
    private void tell(String headline, List<Task> alike) {
        Task first = alike.get(0);
        int more = alike.size() - 1;
        String names = more == 0 ? first.subject().words()
                : Words.names(alike.stream().map(task -> task.subject().label()).toList());
        out().hanging("  - ", 4, headline.replace(GAP, names));
        out().paragraph(4, "%s  %s%s".formatted(TaskWords.window(first), first.id(),
                more == 0 ? "" : ", and %s like it".formatted(more)));
    }

    /** What was not done in its time, in a block of its own. */
    private void tellMissed(Plan plan) {
        if (!plan.missed().isEmpty()) {
            RoundLines.printMissed(this, plan.missed(), each ? Optional.empty() : Optional.of(MOST_MISSED));
        }
    }

    private List<Missed> missed(Plan plan) {
        return plan.missed().stream().filter(missed -> craft.isEmpty() || missed.rule().craft().equals(craft.get()))
                .filter(missed -> bed.isEmpty() || missed.bed().equals(bed)).toList();
    }

    private boolean chosen(Task task) {
        boolean here = bed.isEmpty() || task.subject().bed().map(in -> in.bed().id().equals(bed.get())).orElse(false);
        boolean open = finished || json || !each || task.state() == Task.State.OPEN;
        return here && open && (craft.isEmpty() || task.rule().craft().equals(craft.get()));
    }

    private void list(Plan plan) {
        if (plan.tasks().isEmpty()) {
            say(0, "Nothing is due from %s to %s.", Dates.shortDay(plan.from()), Dates.shortDay(plan.until()));
        }
        plan.tasks().stream()
                .collect(Collectors.groupingBy(task -> YearMonth.from(task.day()), TreeMap::new, Collectors.toList()))
                .forEach((month, tasks) -> {
                    out().line(Dates.month(month.atDay(1)));
                    // two lines a task: what and how much; when, and under which id
                    out().columns(2, tasks.stream()
                            .flatMap(task -> Stream.of(
                                    List.of(Dates.weekday(task.day()), state(task) + TaskWords.headline(task)),
                                    List.of("", "%s  %s".formatted(TaskWords.window(task), task.id()))))
                            .toList());
                    out().line();
                });
    }

    private static String state(Task task) {
        return switch (task.state()) {
            case OPEN -> "";
            case DONE -> "(done) ";
            case SKIPPED -> "(skipped) ";
        };
    }
}

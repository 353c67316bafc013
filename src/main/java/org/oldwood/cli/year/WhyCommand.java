package org.oldwood.cli.year;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.ShownList;
import org.oldwood.crop.Sources;
import org.oldwood.facts.GardenStages;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.Reason;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.plan.Verdict;
import org.oldwood.plan.Window;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.report.TaskJson;
import org.oldwood.report.TaskWords;
import org.oldwood.store.Nearest;
import org.oldwood.words.Dates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells why a task is on the list, or why a rule gives none. */
@Command(name = "why")
public final class WhyCommand extends GardenCommand {
    @Parameters(arity = "0..2", paramLabel = "TASK")
    List<String> named = List.of();

    private static final String NO_CLIMATE = "The stages are lowland Britain's by the month, moved by what was noted, since no climate is known here."
            + " For this garden's own: %s.";

    @Option(names = "--not")
    boolean not;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        Planner planner = Planning.planner(folder, state());
        if (not) { return notFired(planner, folder); }
        refuseIf(named.size() != 1, "name one task, or a round by its number, as oldwood tasks shows them");
        Plan plan = planner.plan();
        stopOnProblems(folder);
        List<Task> tasks = asked(plan);
        List<TaskJson.OneTask> told = tasks.stream().map(TaskJson.OneTask::of).toList();
        return answer(() -> told.size() == 1 ? told.get(0) : new Told(TaskWords.MINUTES_SEEN, told),
                () -> tasks.forEach(task -> tell(task, folder)));
    }

    private record Told(String minutesSeen, List<TaskJson.OneTask> tasks) {}

    /** The task; of a round, by its number or id, the first task of each rule, since the others are there alike. */
    private List<Task> asked(Plan plan) {
        Optional<Task> one = plan.find(named.get(0));
        if (one.isPresent()) { return List.of(one.get()); }
        List<Round> rounds = Rounds.read(folder().documents()).of(plan, state());
        Round round = ShownList.find(this, rounds, named.get(0)).orElseThrow(() -> unknown(plan));
        Map<String, Task> byRule = new LinkedHashMap<>();
        round.all().forEach(task -> byRule.putIfAbsent(task.rule().id(), task));
        return List.copyOf(byRule.values());
    }

    private RuntimeException unknown(Plan plan) {
        List<String> ids = plan.tasks().stream().map(Task::id).toList();
        String hint = Nearest.to(named.get(0), ids).map("Did you mean \"%s\"?"::formatted)
                .orElse("oldwood tasks --each lists them; oldwood why --not, with its id, tells why one is not there.");
        return usage("there is no task \"%s\" in this plan. %s".formatted(named.get(0), hint));
    }

    private void tell(Task task, GardenFolder folder) {
        out().paragraph(0, TaskWords.headline(task));
        say(2, "On %s; good %s.", Dates.shortDay(task.day()), TaskWords.window(task));
        say(2, "The window %s.", task.window().words());
        if (task.window().plusMinusDays() > 0 && Planning.climate(folder, state()).isEmpty()) {
            say(2, NO_CLIMATE, GardenStages.lackingClimate());
        }
        task.amount().ifPresent(amount -> amount.lines().forEach(line -> out().paragraph(2, line)));
        out().section("Why", task.reasons().stream().map(Reason::words).toList());
        out().section("Arithmetic", task.amount().map(amount -> amount.arithmetic()).orElse(List.of()));
        String how = task.rule().text();
        out().section("How", how.isEmpty() ? List.of() : List.of(how));
        out().section("Take care", Cautions.lines(task.cautions()));
        Sources sources = Sources.read(folder.documents());
        out().section("Sources", task
                .sources().stream().map(key -> sources.find(key)
                        .map(it -> "%s: %s (%s)".formatted(key, it.inWords(), it.seen().words())).orElse(key + ": ?"))
                .toList());
    }

    private int notFired(Planner planner, GardenFolder folder) {
        List<String> parts = named.size() == 1 ? List.of(named.get(0).split("@", -1)) : named;
        refuseIf(parts.size() < 2,
                "name a task, as oldwood tasks --each shows it, or a rule and a plant or bed: oldwood why --not winter-cut bc-1");
        Rule rule = planner.rules().find(parts.get(0))
                .orElseThrow(() -> noSuch("rule", parts.get(0), planner.rules().ids()));
        List<Subject> found = in(planner.subjects(), rule, parts.get(1));
        List<Verdict> verdicts = found.stream().flatMap(each -> planner.explain(rule, each).stream()).toList();
        Plan plan = planner.plan();
        stopOnProblems(folder);
        if (json) {
            out().json(new Answer(verdicts.stream().map(each -> Answered.of(each, plan)).toList()));
        } else if (found.stream().noneMatch(rule::concerns)) {
            say(0, "The rule %s does not concern %s: it is for %s.", rule.id(), found.get(0).words(), forWhat(rule));
        } else {
            verdicts.stream().filter(each -> rule.concerns(each.situation().subject()))
                    .forEach(each -> tell(each, plan, found.size() > 1));
        }
        return 0;
    }

    /** The subjects of a rule that an id names, or that lie in that bed or hold that plant. */
    private List<Subject> in(Subjects subjects, Rule rule, String place) {
        Optional<Subject> exact = subjects.find(place, rule.subject());
        if (exact.isPresent()) { return List.of(exact.get()); }
        List<Subject> all = subjects.ofKind(rule.subject());
        List<Subject> found = all.stream().filter(each -> each.plants().stream().map(PlantState::plant)
                .anyMatch(plant -> plant.id().equals(place) || plant.bed().equals(place))).toList();
        if (found.isEmpty()) { throw noSuch("plant or bed", place, all.stream().map(Subject::id).toList()); }
        return found;
    }

    /** What the plan has of it, an open repeat before one that is done. */
    private static Optional<Task> task(Plan plan, Verdict verdict) {
        return plan.tasks().stream().filter(task -> isOf(task, verdict)).min(Comparator.comparing(Task::state));
    }

    private static boolean isOf(Task task, Verdict verdict) {
        return task.id().split("#", 2)[0].equals(verdict.situation().task(verdict.rule().id()));
    }

    private static String forWhat(Rule rule) {
        List<String> all = new ArrayList<>(rule.crops());
        all.addAll(rule.groups());
        String crops = all.isEmpty() ? "every crop" : String.join(", ", all);
        return rule.forms().isEmpty() ? crops : crops + " grown as " + String.join(" or ", rule.forms());
    }

    private void tell(Verdict verdict, Plan plan, boolean named) {
        String when = verdict.window()
                .map(it -> ", from %s to %s".formatted(Dates.shortDay(it.first()), Dates.shortDay(it.last())))
                .orElse("");
        String season = verdict.situation().season().label();
        String what = named ? verdict.situation().subject().words() + ", season" : "Season";
        say(0, "%s %s%s: it is %s.", what, season, when, standing(verdict, plan));
        reason(verdict, plan).ifPresent(words -> out().hanging("  - ", 4, words));
        verdict.reasons().forEach(reason -> out().hanging(reason.holds() ? "  yes: " : "  no:  ", 7, reason.words()));
    }

    private static String standing(Verdict verdict, Plan plan) {
        return task(plan, verdict).map(it -> switch (it.state()) {
            case OPEN -> "due on " + Dates.shortDay(it.day());
            case DONE -> "noted as done";
            case SKIPPED -> "noted as skipped";
        }).orElseGet(() -> verdict.due() ? "due, but " + whyNot(verdict, plan) : "not due");
    }

    /** Why there is no task though every condition holds. */
    private static String whyNot(Verdict verdict, Plan plan) {
        Window window = verdict.window().orElseThrow();
        return window.last().isBefore(plan.from()) ? "its time is past"
                : window.first().isAfter(plan.until()) ? "this plan ends on %s".formatted(Dates.shortDay(plan.until()))
                        : pushedOut(verdict, plan).isPresent() ? "no day is left for it"
                                : earlier(verdict, plan).map("that of season %s comes first"::formatted)
                                        .orElse(verdict.rule().clears() ? "what it clears up after was skipped"
                                                : "nothing of it is to be done");
    }

    /** The season whose task is still to be done. */
    private static Optional<String> earlier(Verdict verdict, Plan plan) {
        String any = "%s@%s@".formatted(verdict.rule().id(), verdict.situation().subject().id());
        return Stream.concat(plan.tasks().stream(), plan.unplaced().stream())
                .filter(task -> task.state() == Task.State.OPEN && task.id().startsWith(any))
                .map(task -> task.season().label()).findFirst();
    }

    private static Optional<String> reason(Verdict verdict, Plan plan) {
        return Optional.of(verdict.because()).filter(words -> !words.isEmpty()).or(() -> pushedOut(verdict, plan));
    }

    /** What a task gives way to. */
    private static Optional<String> pushedOut(Verdict verdict, Plan plan) {
        return plan.unplaced().stream().filter(task -> isOf(task, verdict))
                .flatMap(task -> plan.whyUnplaced(task).stream()).findFirst();
    }

    /** The answer to {@code --not --json}. */
    private record Answer(List<Answered> verdicts) {}

    private record Answered(String rule, String subject, String season, boolean due, String stands, String because,
            Optional<LocalDate> first, Optional<LocalDate> last, List<Reason> reasons) {
        static Answered of(Verdict verdict, Plan plan) {
            return new Answered(verdict.rule().id(), verdict.situation().subject().id(),
                    verdict.situation().season().label(), verdict.due(), standing(verdict, plan),
                    reason(verdict, plan).orElse(""), verdict.window().map(Window::first),
                    verdict.window().map(Window::last), verdict.reasons());
        }
    }
}

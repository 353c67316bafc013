package org.oldwood.cli.year;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.ShownList;
import org.oldwood.crop.Sources;
import org.oldwood.facts.GardenStages;
import org.oldwood.facts.Subject;
import org.oldwood.garden.GardenFolder;
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

    @Option(names = "--not")
    boolean not;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        Planner planner = Planning.planner(folder, state());
        if (not) {
            return notFired(planner, folder);
        }
        if (named.size() != 1) {
            throw usage("name one task, or a round by its number, as oldwood tasks shows them");
        }
        Plan plan = planner.plan();
        stopOnProblems(folder);
        List<Task> tasks = asked(plan);
        if (json) {
            List<TaskJson.OneTask> told =
                    tasks.stream().map(TaskJson.OneTask::of).toList();
            out().json(told.size() == 1 ? told.get(0) : new Told(TaskWords.MINUTES_SEEN, told));
        } else {
            for (Task task : tasks) {
                tell(task, folder);
            }
        }
        return 0;
    }

    private record Told(String minutesSeen, List<TaskJson.OneTask> tasks) {}

    /** The task; of a round, by its number or id, the first task of each rule, since the others are there alike. */
    private List<Task> asked(Plan plan) throws IOException {
        Optional<Task> one = plan.find(named.get(0));
        if (one.isPresent()) {
            return List.of(one.get());
        }
        List<Round> rounds = Rounds.read(folder().documents()).of(plan, state());
        Round round = ShownList.find(this, rounds, named.get(0)).orElseThrow(() -> unknown(plan));
        Map<String, Task> byRule = new LinkedHashMap<>();
        round.all().forEach(task -> byRule.putIfAbsent(task.rule().id(), task));
        return List.copyOf(byRule.values());
    }

    private RuntimeException unknown(Plan plan) {
        List<String> ids = plan.tasks().stream().map(Task::id).toList();
        return usage("there is no task \""
                + named.get(0)
                + "\" in this plan. "
                + Nearest.to(named.get(0), ids)
                        .map(near -> "Did you mean \"" + near + "\"?")
                        .orElse("oldwood tasks --each lists them; oldwood why --not RULE SUBJECT tells why one is not"
                                + " there."));
    }

    private void tell(Task task, GardenFolder folder) throws IOException {
        out().paragraph(0, TaskWords.headline(task));
        out().paragraph(2, "On " + Dates.shortDay(task.day()) + "; good " + TaskWords.window(task) + ".");
        out().paragraph(2, "The window " + task.window().words() + ".");
        if (task.window().plusMinusDays() > 0
                && Planning.climate(folder, state()).isEmpty()) {
            out().paragraph(
                            2,
                            "The stages are lowland Britain's by the month, moved by what was noted,"
                                    + " since no climate is known here. For this garden's own: "
                                    + GardenStages.lackingClimate()
                                    + ".");
        }
        task.amount().ifPresent(amount -> amount.lines().forEach(line -> out().paragraph(2, line)));
        section("Why", task.reasons().stream().map(Reason::words).distinct().toList());
        section("Arithmetic", task.amount().map(amount -> amount.arithmetic()).orElse(List.of()));
        section(
                "How",
                task.rule().text().isEmpty() ? List.of() : List.of(task.rule().text()));
        section("Take care", Cautions.lines(task.cautions()));
        Sources sources = Sources.read(folder.documents());
        List<String> lines = new ArrayList<>();
        task.sources()
                .forEach(key -> lines.add(key
                        + ": "
                        + sources.find(key)
                                .map(source ->
                                        source.inWords() + " (" + source.seen().words() + ")")
                                .orElse("?")));
        section("Sources", lines);
    }

    private void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out().line(title);
            lines.forEach(line -> out().hanging("  - ", 4, line));
        }
    }

    private int notFired(Planner planner, GardenFolder folder) {
        if (named.size() != 2) {
            throw usage("name a rule and a subject: oldwood why --not winter-cut bc-1");
        }
        Rule rule = planner.rules()
                .find(named.get(0))
                .orElseThrow(() -> usage("there is no rule \""
                        + named.get(0)
                        + "\". "
                        + Nearest.hint(named.get(0), planner.rules().ids())));
        Optional<Subject> found = planner.subjects().find(named.get(1), rule.subject());
        Subject subject = found.orElseThrow(() -> usage("there is no "
                + rule.subject()
                + " \""
                + named.get(1)
                + "\". "
                + Nearest.hint(
                        named.get(1),
                        planner.subjects().ofKind(rule.subject()).stream()
                                .map(Subject::id)
                                .toList())));
        List<Verdict> verdicts = planner.explain(rule, subject);
        stopOnProblems(folder);
        if (json) {
            out().json(new Answer(verdicts.stream().map(Answered::of).toList()));
            return 0;
        }
        if (!rule.concerns(subject)) {
            out().paragraph(
                            0,
                            "The rule "
                                    + rule.id()
                                    + " does not concern "
                                    + subject.words()
                                    + ": it is for "
                                    + forWhat(rule)
                                    + ".");
            return 0;
        }
        verdicts.forEach(this::tell);
        return 0;
    }

    private static String forWhat(Rule rule) {
        List<String> all = new ArrayList<>(rule.crops());
        all.addAll(rule.groups());
        String crops = all.isEmpty() ? "every crop" : String.join(", ", all);
        return rule.forms().isEmpty() ? crops : crops + " grown as " + String.join(" or ", rule.forms());
    }

    private void tell(Verdict verdict) {
        String when = verdict.window()
                .map(window -> ", from " + Dates.shortDay(window.first()) + " to " + Dates.shortDay(window.last()))
                .orElse("");
        out().paragraph(
                        0,
                        "Season "
                                + verdict.situation().season().label()
                                + when
                                + ": "
                                + (verdict.due() ? "it fires." : "it does not fire."));
        if (!verdict.because().isEmpty()) {
            out().hanging("  - ", 4, verdict.because());
        }
        verdict.reasons().forEach(reason -> out().hanging(reason.holds() ? "  yes: " : "  no:  ", 7, reason.words()));
    }

    /** The answer to {@code --not --json}. */
    private record Answer(List<Answered> verdicts) {}

    private record Answered(
            String rule,
            String subject,
            String season,
            boolean due,
            String because,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            List<Reason> reasons) {
        static Answered of(Verdict verdict) {
            return new Answered(
                    verdict.rule().id(),
                    verdict.situation().subject().id(),
                    verdict.situation().season().label(),
                    verdict.due(),
                    verdict.because(),
                    verdict.window().map(Window::first),
                    verdict.window().map(Window::last),
                    verdict.reasons());
        }
    }
}

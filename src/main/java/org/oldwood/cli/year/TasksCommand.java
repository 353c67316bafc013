package org.oldwood.cli.year;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oldwood.cli.command.BedsAsked;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;
import org.oldwood.report.TaskJson;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the year's tasks, grouped by month. */
@Command(
        name = "tasks",
        description = "list the year's tasks by month, with amounts",
        footer = {"", "Example:", "  oldwood tasks --garden demo-data/terrace-school --today 2026-11-25"})
public final class TasksCommand extends GardenCommand {
    @Option(names = "--bed", paramLabel = "BED", description = "only tasks in this bed")
    Optional<String> bed = Optional.empty();

    @Option(names = "--craft", paramLabel = "CRAFT", description = "only tasks of this craft, pruning for example")
    Optional<String> craft = Optional.empty();

    @Option(names = "--finished", description = "list what is done or skipped too")
    boolean finished;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        BedsAsked.check(this, bed, state);
        Planner planner = Planning.planner(folder, state);
        Set<String> crafts =
                planner.rules().all().stream().map(Rule::craft).collect(Collectors.toCollection(TreeSet::new));
        if (craft.isPresent() && !crafts.contains(craft.get())) {
            throw noSuch("craft", craft.get(), List.copyOf(crafts));
        }
        Plan whole = planner.plan();
        stopOnProblems(folder);
        Plan plan = new Plan(
                whole.from(),
                whole.until(),
                whole.tasks().stream().filter(this::chosen).toList(),
                whole.notices(),
                whole.missed());
        if (json) {
            out().json(writer -> TaskJson.write(writer, plan));
            return 0;
        }
        list(plan);
        missed(plan);
        state.questions().forEach(question -> tell("Question: " + question));
        Planning.tellNotices(this, plan.notices());
        return 0;
    }

    /** What was not done in its time, in a block of its own. */
    private void missed(Plan plan) {
        List<Missed> here = plan.missed().stream()
                .filter(missed -> craft.isEmpty() || missed.rule().craft().equals(craft.get()))
                .filter(missed -> bed.isEmpty() || missed.bed().equals(bed))
                .toList();
        if (!here.isEmpty()) {
            out().line("Not noted as done, and its time is past");
            Missed.lines(here).forEach(line -> out().hanging("  ", 4, line));
            out().paragraph(2, "If it was done, note it with its date; if you left it out: oldwood note skipped TASK.");
        }
    }

    private boolean chosen(Task task) {
        boolean here = bed.isEmpty()
                || task.subject()
                        .bed()
                        .map(in -> in.bed().id().equals(bed.get()))
                        .orElse(false);
        boolean open = finished || json || task.state() == Task.State.OPEN;
        return here && open && (craft.isEmpty() || task.rule().craft().equals(craft.get()));
    }

    private void list(Plan plan) {
        if (plan.tasks().isEmpty()) {
            out().paragraph(
                            0,
                            "Nothing is due from "
                                    + Dates.shortDay(plan.from())
                                    + " to "
                                    + Dates.shortDay(plan.until())
                                    + ".");
        }
        String month = "";
        List<List<String>> rows = new ArrayList<>();
        for (Task task : plan.tasks()) {
            String now = Dates.month(task.day());
            if (!now.equals(month)) {
                flush(rows, month);
                month = now;
            }
            rows.add(List.of(Dates.weekday(task.day()), state(task) + TaskWords.headline(task)));
            rows.add(List.of("", TaskWords.window(task) + "  " + task.id()));
        }
        flush(rows, month);
    }

    private static String state(Task task) {
        return switch (task.state()) {
            case OPEN -> "";
            case DONE -> "(done) ";
            case SKIPPED -> "(skipped) ";
        };
    }

    private void flush(List<List<String>> rows, String month) {
        if (!rows.isEmpty()) {
            out().line(month);
            out().columns(2, rows);
            out().line();
            rows.clear();
        }
    }
}

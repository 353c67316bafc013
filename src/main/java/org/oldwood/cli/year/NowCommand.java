package org.oldwood.cli.year;

import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;

/** Says what to do now: the rounds until Sunday, most urgent first, on one screen. */
@Command(
        name = "now",
        description = "say what to do now, most urgent first, on one screen",
        footer = {"", "Example:", "  oldwood now --garden demo-data/terrace-school --today 2026-11-25"})
public final class NowCommand extends GardenCommand {
    private static final int MOST_DUE = 12;
    private static final int MOST_POSSIBLE = 4;

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        Plan plan = Planning.planner(folder, state).plan();
        List<Round> rounds = Rounds.read(folder.documents()).of(plan);
        stopOnProblems(folder);
        LocalDate today = plan.from();
        LocalDate sunday = today.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        List<Round> due = rounds.stream()
                .filter(round ->
                        round.open() && !round.kind().optional() && !round.day().isAfter(sunday))
                .sorted(Comparator.comparingDouble((Round round) -> -round.urgency(today)))
                .toList();
        List<Round> possible = rounds.stream()
                .filter(Round::open)
                .filter(round -> round.tasks().stream()
                        .allMatch(task -> !task.window().first().isAfter(sunday)))
                .filter(round -> !due.contains(round))
                .toList();
        if (json) {
            out().json(new Now(
                    today,
                    due.stream().map(NowCommand::line).toList(),
                    possible.stream().map(NowCommand::line).toList()));
            return 0;
        }
        if (due.isEmpty()) {
            out().line("Nothing is due until %s.".formatted(Dates.shortDay(sunday)));
        } else {
            show("To do until %s, most urgent first".formatted(Dates.shortDay(sunday)), due, MOST_DUE);
        }
        show("Also possible", possible, MOST_POSSIBLE);
        if (!plan.missed().isEmpty()) {
            out().line("Missed so far: %s; oldwood tasks tells them."
                    .formatted(Words.count(plan.missed().size(), "job", "jobs")));
        }
        return 0;
    }

    /** What there is to do, for other programs. */
    private record Now(LocalDate from, List<Line> due, List<Line> possible) {}

    private record Line(String title, LocalDate day, LocalDate lastGoodDay, long minutes, List<String> tasks) {}

    private static Line line(Round round) {
        return new Line(
                round.title(),
                round.day(),
                round.lastGoodDay(),
                Math.round(round.minutes()),
                round.tasks().stream().map(Task::id).toList());
    }

    private void show(String heading, List<Round> rounds, int most) {
        if (rounds.isEmpty()) {
            return;
        }
        out().line(heading);
        List<List<String>> rows = new ArrayList<>();
        for (Round round : rounds.subList(0, Math.min(most, rounds.size()))) {
            rows.add(List.of(
                    round.title(),
                    round.minutes() == 0 ? "" : "%d min".formatted(Math.round(round.minutes())),
                    "by %s".formatted(Dates.shortDay(round.lastGoodDay()))));
        }
        out().columns(2, rows);
        if (rounds.size() > most) {
            out().line("  and %d more: oldwood tasks".formatted(rounds.size() - most));
        }
    }
}

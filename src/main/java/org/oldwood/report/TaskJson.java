package org.oldwood.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Reason;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.words.Words;

/** Plans, rounds and tasks as JSON has them; keys are only ever added. */
public final class TaskJson {
    private record Planned(int format, LocalDate from, LocalDate until, String minutesSeen, List<OneRound> rounds,
            List<OneTask> tasks, List<String> notices, List<Forgotten> missed) {}

    private record Forgotten(String task, String title, LocalDate last, int harm, String then) {
        static Forgotten of(Missed missed) {
            return new Forgotten(missed.task(), missed.title(), missed.last(), missed.rule().ifMissed().harm(),
                    missed.then());
        }
    }

    /** A round, its tasks by their ids. */
    public record OneRound(String id, String kind, String title, boolean open, LocalDate day, LocalDate firstGoodDay,
            LocalDate lastGoodDay, long minutes, int bushes, List<String> beds, List<String> takeAlong,
            List<String> cautions, List<String> tasks) {
        private static OneRound of(Round round) {
            return new OneRound(round.id(), round.kind().id(), round.title(), round.open(), round.day(),
                    round.firstGoodDay(), round.lastGoodDay(), Math.round(round.minutes()), round.bushes(),
                    List.copyOf(round.beds()), round.takeAlong(),
                    round.cautions().stream().map(Cautions.Caution::line).toList(),
                    round.all().stream().map(Task::id).toList());
        }
    }

    private record About(String kind, String id, String words, Optional<String> crop, Optional<String> bed) {}

    private record Time(LocalDate first, LocalDate last, int plusMinusDays, String words) {}

    private record Part(String id, int bushes, double done, boolean skipped) {}

    private record Quantity(double value, String unit, String words, List<String> lines, List<String> arithmetic) {}

    public record OneTask(String id, String rule, String craft, About subject, String season, String title,
            Task.State state, Time window, LocalDate day, List<Part> shares, Optional<LocalDate> finished,
            Optional<Quantity> amount, Optional<Double> minutes, String text, List<Reason> reasons,
            List<String> cautions, List<String> sources) {
        public static OneTask of(Task task) {
            return new OneTask(task.id(), task.rule().id(), task.rule().craft(),
                    new About(task.subject().kind(), task.subject().id(), task.subject().words(),
                            task.subject().crop().map(crop -> crop.id()),
                            task.subject().bed().map(bed -> bed.bed().id())),
                    task.season().label(), task.title(), task.state(),
                    new Time(task.window().first(), task.window().last(), task.window().plusMinusDays(),
                            task.window().words()),
                    task.day(),
                    task.shares().stream()
                            .map(share -> new Part(share.id(), share.bushes(), Words.rounded(share.done(), 2),
                                    share.skipped()))
                            .toList(),
                    task.finished(),
                    task.amount()
                            .map(amount -> new Quantity(Words.rounded(amount.value(), 2), amount.unit(), amount.words(),
                                    amount.lines(), amount.arithmetic())),
                    task.minutes().map(it -> Words.rounded(it, 2)), task.rule().text(), task.reasons(),
                    Cautions.lines(task.cautions()), task.sources());
        }
    }

    private TaskJson() {}

    /** A plan, with the rounds that its tasks are gathered into. */
    public static Record of(Plan plan, List<Round> rounds) {
        return new Planned(1, plan.from(), plan.until(), TaskWords.MINUTES_SEEN, rounds(rounds),
                plan.tasks().stream().map(OneTask::of).toList(), plan.notices(),
                plan.missed().stream().map(Forgotten::of).toList());
    }

    public static List<OneRound> rounds(List<Round> rounds) { return rounds.stream().map(OneRound::of).toList(); }
}

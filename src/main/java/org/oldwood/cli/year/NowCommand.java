package org.oldwood.cli.year;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.report.TaskJson;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;

/** Says what to do now on one screen: what is due, what is possible as well, and what waits for something. */
@Command(name = "now")
public final class NowCommand extends GardenCommand {
    private static final int MOST_DUE = 8;
    private static final int MOST_POSSIBLE = 5;
    private static final int MOST_NEXT = 2;

    private record Answer(LocalDate until, List<Round> due, List<Round> possible, List<Round> next,
            Map<String, List<Round>> waiting) {
        Told told() {
            Map<String, List<String>> ids = new LinkedHashMap<>();
            waiting.forEach((what, on) -> ids.put(what, on.stream().map(Round::id).toList()));
            return new Told(until, TaskWords.MINUTES_SEEN, TaskJson.rounds(due), TaskJson.rounds(possible),
                    TaskJson.rounds(next), ids);
        }
    }

    private record Told(LocalDate until, String minutesSeen, List<TaskJson.OneRound> due,
            List<TaskJson.OneRound> possible, List<TaskJson.OneRound> next, Map<String, List<String>> waiting) {}

    @Override
    public int run() throws IOException {
        GardenPlan planned = GardenPlan.of(this, folder());
        List<Round> rounds = Rounds.read(folder().documents()).of(planned.plan(), planned.state()).stream()
                .filter(round -> round.open() && round.wanted(planned.state().wishes())).toList();
        Answer answer = answer(rounds, planned.state().wishes().aheadDays());
        return answer(answer::told, () -> {
            out().line("%s, %s".formatted(planned.state().garden().name(), Dates.shortDay(today())));
            print(answer);
            int missed = planned.plan().missed().size();
            if (missed > 0) {
                out().line("Missed so far: %s (oldwood tasks missed)".formatted(Words.count(missed, "job", "jobs")));
            }
        });
    }

    private Answer answer(List<Round> rounds, int aheadDays) {
        LocalDate until = today().plusDays(aheadDays - 1L);
        List<Round> due = rounds.stream().filter(round -> !round.day().isAfter(until))
                .sorted(Comparator.comparingDouble((Round round) -> -round.urgency(today()))).toList();
        List<Round> possible = rounds.stream()
                .filter(round -> round.day().isAfter(until) && !round.firstGoodDay().isAfter(until)).toList();
        List<Round> next = rounds.stream().filter(round -> round.firstGoodDay().isAfter(until)).toList();
        Map<String, List<Round>> waiting = new LinkedHashMap<>();
        Stream.concat(due.stream(), possible.stream()).forEach(round -> round.waiting()
                .forEach(what -> waiting.computeIfAbsent(what, none -> new ArrayList<>()).add(round)));
        return new Answer(until, due, possible, next, waiting);
    }

    private void print(Answer answer) {
        RoundLines lines = new RoundLines(this);
        String until = Dates.dayMonth(answer.until);
        if (answer.due.isEmpty()) { lines.say("Nothing has to be done until %s.".formatted(until)); }
        lines.show("To do until %s, most urgent first".formatted(until), answer.due, MOST_DUE);
        lines.show("Also possible", answer.possible, MOST_POSSIBLE);
        lines.show("Next", answer.next.subList(0, Math.min(MOST_NEXT, answer.next.size())), MOST_NEXT);
        if (!answer.waiting.isEmpty()) { lines.say("Waits for a count, a look or a test"); }
        answer.waiting.forEach((what, on) -> lines.say("     %s: %s".formatted(what, lines.numbers(on))));
        lines.print();
        if (lines.any()) { out().line("oldwood tasks 1 tells more; when it is done: oldwood note done 1"); }
    }
}

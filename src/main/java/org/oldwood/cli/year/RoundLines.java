package org.oldwood.cli.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ShownList;
import org.oldwood.plan.Missed;
import org.oldwood.plan.round.Round;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Prints rounds a line each, numbered on through all lists of one answer. */
final class RoundLines {
    private static final int MINUTES_IN_WORDS = 100;

    private final GardenCommand command;
    private final List<Round> shown = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    RoundLines(GardenCommand command) { this.command = command; }

    /** A heading and a line for each, the first so many; the rest is told by one line. */
    void show(String heading, List<Round> rounds, int most) {
        if (rounds.isEmpty()) { return; }
        rows.add(List.of(heading));
        for (Round round : rounds.subList(0, rounds.size() > most ? most - 1 : rounds.size())) {
            shown.add(round);
            LocalDate last = round.lastGoodDay();
            boolean soon = last.getYear() == round.day().getYear() || last.isBefore(round.day().plusMonths(6));
            rows.add(List.of("%3s".formatted(shown.size()),
                    "%s %s".formatted(Dates.weekday(round.day()), Dates.monthName(round.day()).substring(0, 3)),
                    round.title(), time(round), "by " + (soon ? Dates.dayMonth(last)
                            : "%s %s".formatted(Dates.monthName(last).substring(0, 3), last.getYear()))));
        }
        if (rounds.size() > most) { rows.add(List.of("     and %s more".formatted(rounds.size() - most + 1))); }
    }

    boolean any() { return !shown.isEmpty(); }

    /** The numbers under which rounds stand here, {@code see 1 and 4}; the first one's title where none does. */
    String numbers(List<Round> rounds) {
        List<String> numbers = rounds.stream().map(round -> shown.indexOf(round) + 1).filter(number -> number > 0)
                .map(number -> Integer.toString(number)).toList();
        return numbers.isEmpty() ? rounds.get(0).title() : "see %s".formatted(Words.list(numbers));
    }

    void say(String line) { rows.add(List.of(line)); }

    /** {@code 45 min}, {@code 2.5 h}; empty where nothing is known. */
    private static String time(Round round) {
        long minutes = Math.round(round.minutes());
        return minutes == 0 ? ""
                : minutes < MINUTES_IN_WORDS ? "%s min".formatted(minutes)
                        : "%s h".formatted(Words.one(minutes / 60.0));
    }

    /** Prints missed work: so many kinds of it, and remembers their numbers; or each job with its id. */
    static void printMissed(GardenCommand command, List<Missed> all, Optional<Integer> most) {
        command.out().line("Not noted as done, and its time is past");
        if (most.isPresent()) {
            numbered(command, all, most.get());
        } else {
            command.out().columns(2, all.stream()
                    .map(missed -> List.of(Dates.shortDay(missed.last()), missed.title(), missed.task())).toList());
        }
        String which = most.isPresent() ? "1" : "TASK";
        command.out().paragraph(2,
                "If it was done: oldwood note done %s --date DATE, or note what was done; if you left it out: oldwood note skipped %s."
                        .formatted(which, which));
    }

    private static void numbered(GardenCommand command, List<Missed> all, int most) {
        List<String> lines = Missed.lines(all, most);
        List<String> tasks = Missed.byKind(all).stream()
                .map(alike -> alike.stream().map(Missed::task).collect(Collectors.joining(" "))).toList();
        int numbered = tasks.size() > most ? most - 1 : tasks.size();
        for (int i = 0; i < lines.size(); i++) {
            command.out().hanging(i < numbered ? "%3s  ".formatted(i + 1) : "     ", 5, lines.get(i));
        }
        ShownList.remember(command, tasks.subList(0, numbered));
    }

    /** Prints all of it, in columns alike, and remembers the numbers. */
    void print() {
        command.out().columns(0, rows);
        if (shown.stream().anyMatch(round -> round.minutes() > 0)) {
            command.out().line("Minutes: by your notes, else assumed.");
        }
        ShownList.remember(command, shown.stream().map(Round::id).toList());
    }
}

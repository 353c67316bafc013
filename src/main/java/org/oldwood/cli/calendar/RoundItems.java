package org.oldwood.cli.calendar;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.calendar.Item;
import org.oldwood.garden.Entry;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.settle.Share;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Wording;
import org.oldwood.words.Words;

/**
 * Rounds and their tasks as calendar items.
 *
 * @param begun what was noted as begun, by task id
 */
record RoundItems(Map<String, Entry> begun, Wording wording) {
    private static final int WHOLE = 100;

    Item round(Round round) {
        Set<String> beds = round.all().stream().flatMap(task -> task.subject().bed().stream())
                .map(bed -> bed.bed().id()).collect(Collectors.toSet());
        List<Task> now = round.open() ? round.due() : round.finished();
        return new Item(round.id(), "",
                Stream.concat(now.stream(), round.finished().stream()).map(Task::id).distinct().toList(),
                words(round.title(), RoundText.of(round), craft(round), Words.list(List.copyOf(round.beds()))),
                beds.size() == 1 ? beds.iterator().next() : "",
                days(round.firstGoodDay(), round.lastGoodDay(), round.day()),
                now.stream().mapToInt(task -> task.window().plusMinusDays()).max().orElse(0), progress(round));
    }

    private Item.Words words(String title, String text, String category, String place) {
        return new Item.Words(wording.said(title), wording.said(text), category, place);
    }

    /** The chosen day; what was noted as done outside its window keeps the window's nearest day. */
    private static Item.Days days(LocalDate first, LocalDate last, LocalDate day) {
        LocalDate end = last.isBefore(first) ? first : last;
        return new Item.Days(first, end, day.isBefore(first) ? first : day.isAfter(end) ? end : day);
    }

    /** The one that most of its tasks have. */
    private static String craft(Round round) {
        Map<String, Long> crafts = round.all().stream()
                .collect(Collectors.groupingBy(task -> task.rule().craft(), Collectors.counting()));
        return crafts.keySet().stream().min(Comparator.comparing((String craft) -> -crafts.getOrDefault(craft, 0L))
                .thenComparing(Function.identity())).orElse("");
    }

    private Item.Progress progress(Round round) {
        if (!round.open()) {
            return round.finished().stream().filter(task -> task.state() == Task.State.DONE)
                    .map(task -> task.finished().orElse(task.day())).max(Comparator.naturalOrder())
                    .map(Item.Progress::done).orElse(Item.Progress.SKIPPED);
        }
        double done = round.all().stream().mapToDouble(this::done).sum();
        boolean isBegun = done > 0 || round.tasks().stream().anyMatch(task -> begun.containsKey(task.id()));
        return isBegun ? Item.Progress.begun((int) (WHOLE * done / round.all().size())) : Item.Progress.OPEN;
    }

    private double done(Task task) {
        if (task.state() != Task.State.OPEN) { return 1; }
        double shares = task.shares().stream().mapToDouble(Share::done).average().orElse(0);
        double said = begun.containsKey(task.id()) ? begun.get(task.id()).count("percent").orElse(0) / (double) WHOLE
                : 0;
        return Math.min(1, Math.max(shares, said));
    }

    /** A task of a round as a to-do of its own. */
    Item task(Task task, Round round) {
        Item.Progress progress = switch (task.state()) {
            case DONE -> Item.Progress.done(task.finished().orElse(task.day()));
            case SKIPPED -> Item.Progress.SKIPPED;
            case OPEN ->
                begun.containsKey(task.id()) || done(task) > 0 ? Item.Progress.begun((int) (WHOLE * done(task)))
                        : Item.Progress.OPEN;
        };
        return new Item(task.id(), round.id(), List.of(),
                words(TaskWords.headline(task), RoundText.of(task), task.rule().craft(),
                        task.subject().bed().map(bed -> bed.bed().name()).orElse("")),
                task.subject().bed().map(bed -> bed.bed().id()).orElse(""),
                days(task.from(), task.window().last(), task.day()), task.window().plusMinusDays(), progress);
    }
}

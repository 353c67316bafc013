package org.oldwood.cli.record;

import java.io.IOException;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.plan.TaskIds;
import org.oldwood.plan.round.Rounds;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;

/**
 * Asks a person at a terminal what they want of the program. An empty line skips a question; its default then holds.
 */
final class WishesAsked {
    private static final List<String> DAYS = Stream.of(DayOfWeek.values())
            .map(day -> day.name().toLowerCase(Locale.ROOT)).toList();

    /** What goes into {@code garden.json}; what was skipped is absent. */
    record Answers(Optional<List<String>> workDays, Optional<Integer> minutesPerDay, Optional<List<String>> materials,
            Optional<Wished> wishes) {
        static final Answers NONE = new Answers(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    record Wished(Optional<List<String>> never, Optional<String> alarm, Optional<Boolean> morePlants) {}

    private final GardenCommand command;
    private boolean gone;

    WishesAsked(GardenCommand command) { this.command = command; }

    /** Nothing where nobody is there to be asked. */
    Answers ask(Documents documents) throws IOException {
        if (!command.around().hidden().isThere()) { return Answers.NONE; }
        command.tell("A few wishes; an empty line skips one, and garden.json may be changed later.");
        Optional<List<String>> days = ask("On which days do you work in it? (saturday, sunday)", WishesAsked::days);
        Optional<Integer> minutes = ask("How many minutes at most on such a day? (180)", WishesAsked::minutes);
        Set<String> materials = new KnownNames(documents, new Problems()).materials();
        Optional<List<String>> kept = ask("Which feeds, limes and mulches are in the shed? (garden-compost)",
                text -> among(text, materials));
        Set<String> kinds = Rounds.read(documents).kinds();
        Optional<List<String>> never = ask(
                "Which kinds of work do you never want? (%s)".formatted(String.join(", ", kinds)),
                text -> among(text, kinds));
        Optional<String> alarm = ask("When shall a calendar ring on a day with work? (08:00, or none)",
                text -> Optional.of(text).filter(hour -> hour.matches("none|([01][0-9]|2[0-3]):[0-5][0-9]")));
        Optional<Boolean> more = ask("Do you want to raise more plants? (yes or no)",
                text -> Optional.of(text).filter(word -> word.matches("yes|no")).map("yes"::equals));
        boolean any = never.isPresent() || alarm.isPresent() || more.isPresent();
        return new Answers(days, minutes, kept, any ? Optional.of(new Wished(never, alarm, more)) : Optional.empty());
    }

    /** Asks until the answer is understood, or empty. */
    private <T> Optional<T> ask(String question, Function<String, Optional<T>> read) throws IOException {
        while (!gone) {
            Optional<String> answer = command.ask(question);
            gone = answer.isEmpty();
            if (gone || answer.get().isEmpty()) { return Optional.empty(); }
            Optional<T> understood = read.apply(answer.get().toLowerCase(Locale.ROOT));
            if (understood.isPresent()) { return understood; }
            command.tell("That was not understood: \"%s\".".formatted(answer.get()));
        }
        return Optional.empty();
    }

    /** Days by their names, or the first three letters of these. */
    private static Optional<List<String>> days(String text) {
        List<String> days = TaskIds.listed(text).stream().map(
                word -> DAYS.stream().filter(day -> word.length() >= 3 && day.startsWith(word)).findFirst().orElse(""))
                .distinct().collect(Collectors.toList());
        return Optional.of(days).filter(all -> !all.isEmpty() && !all.contains(""));
    }

    private static Optional<Integer> minutes(String text) {
        return Optional.of(text).filter(number -> number.matches("[0-9]{1,4}")).map(Integer::valueOf)
                .filter(number -> number <= 1440);
    }

    private static Optional<List<String>> among(String text, Set<String> known) {
        return Optional.of(TaskIds.listed(text)).filter(known::containsAll);
    }
}

package org.oldwood.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.plan.round.Round;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.JsonText;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import org.oldwood.words.Dates;

/**
 * The numbers of the list last shown, so that commands take a number for a round, or for jobs that were missed. They
 * are kept beside the record, and are no part of it: without them ids do.
 */
public final class ShownList {
    private static final String FILE = ".oldwood-numbers.json";

    private ShownList() {}

    /** What the file holds: the rounds' ids, or the missed tasks' with blanks between; the one with number 1 first. */
    private record Shown(LocalDate day, List<String> rounds) {}

    /** Remembers a list that is shown; a folder that may not be written has no numbers. */
    public static void remember(GardenCommand command, List<String> shown) {
        Place at = Place.of(FILE);
        Map<String, Json> list = new LinkedHashMap<>();
        list.put("format", new Json.Num(at, 1, "1"));
        list.put("day", new Json.Text(at, command.today().toString()));
        list.put("rounds", new Json.Arr(at, shown.stream().<Json>map(id -> new Json.Text(at, id)).toList()));
        try {
            Output.write(file(command), JsonText.line(new Json.Obj(at, list)) + "\n");
        } catch (IOException e) {
            command.tell("The numbers cannot be remembered here: %s.".formatted(e.getMessage()));
        }
    }

    private static Path file(GardenCommand command) { return command.gardenPath().resolve(FILE); }

    /** The round that a number of the last list or an id stands for; empty where it is neither. */
    public static Optional<Round> find(GardenCommand command, List<Round> rounds, String text) {
        String id = text.matches("[0-9]{1,3}") ? id(command, Integer.parseInt(text)) : text;
        Optional<Round> found = rounds.stream().filter(round -> round.id().equals(id)).findFirst();
        command.refuseIf(found.isEmpty() && isMissed(id) && !id.equals(text),
                "number %s of the list last shown was missed, and is no round: %s", text, id);
        command.refuseIf(found.isEmpty() && !id.equals(text),
                "number %s of the list last shown was %s, which is done or past; oldwood now shows a new list", text,
                id);
        return found;
    }

    /** The missed tasks that a number of the last list stands for; none where it stands for a round, or is none. */
    public static List<String> missed(GardenCommand command, String text) {
        String id = text.matches("[0-9]{1,3}") ? id(command, Integer.parseInt(text)) : "";
        return isMissed(id) ? List.of(id.split(" ")) : List.of();
    }

    /** Tasks' ids have a job, a subject and a season; those of rounds only two of these. */
    private static boolean isMissed(String ids) {
        return ids.matches("[^@]*@[^@]*@.*");
    }

    private static String id(GardenCommand command, int number) {
        Shown list = read(command).orElseThrow(() -> command.usage(
                "%s is a number, but no list was shown in this garden yet; oldwood now shows one".formatted(number)));
        command.refuseIf(number < 1 || number > list.rounds.size(),
                "the list last shown goes from 1 to %s, but not to %s", list.rounds.size(), number);
        if (!list.day.equals(command.today())) {
            command.tell("The numbers are those of the list of %s.".formatted(Dates.shortDay(list.day)));
        }
        return list.rounds.get(number - 1);
    }

    private static Optional<Shown> read(GardenCommand command) {
        if (!Files.isRegularFile(file(command))) { return Optional.empty(); }
        Problems problems = new Problems();
        try {
            Optional<Shown> read = JsonReader.readLine(Files.readString(file(command)), FILE, 1, problems)
                    .map(json -> Fields.of(json, problems)).filter(fields -> fields.count("format", 1, 1) == 1)
                    .map(fields -> new Shown(fields.date("day"), fields.texts("rounds")));
            return problems.isEmpty() ? read : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

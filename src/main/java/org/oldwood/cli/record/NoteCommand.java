package org.oldwood.cli.record;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryField.Holds;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.EntryWriter;
import org.oldwood.store.Csv;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Notes what happened: one entry by the command of its kind ({@link NoteKindCommand}), or many from a table, all of
 * them or none.
 */
@Command(name = "note", synopsisSubcommandLabel = "ENTRY", commandListHeading = "%nEntries:%n")
public final class NoteCommand extends GardenCommand {
    /** What a table of rounds says besides. */
    private static final List<String> ROUNDS = List.of("round", "day", "from", "to", "title", "beds", "bushes",
            "minutes", "materials", "state", "tasks");

    @Option(names = "--csv", paramLabel = "FILE")
    Optional<String> csv = Optional.empty();

    @Option(names = "--once", paramLabel = "KEY")
    Optional<String> once = Optional.empty();

    @Option(names = "--yes")
    boolean yes;

    @Override
    public CommandLine commandLine() {
        CommandLine line = super.commandLine();
        for (EntryKind kind : EntryKind.values()) {
            line.addSubcommand(kind.key(), new NoteKindCommand(kind, this).commandLine());
        }
        return line;
    }

    @Override
    public int run() throws IOException {
        refuseIf(csv.isEmpty(), "say what happened (oldwood note --help lists the entries), or give --csv FILE");
        String file = csv.get().equals("-") ? "standard input" : csv.get();
        Problems problems = new Problems();
        Csv table = Csv.read(text(csv.get()), file, problems);
        checkColumns(table, file, problems);
        // rows that a phone kept go by keys of their own: those that it sent meanwhile are not noted twice
        Map<Optional<String>, List<Csv.Row>> sent = new LinkedHashMap<>();
        table.rows().forEach(
                row -> sent.computeIfAbsent(row.cell("once").or(() -> once), key -> new ArrayList<>()).add(row));
        if (sent.isEmpty()) { sent.put(once, List.of()); }
        for (Map.Entry<Optional<String>, List<Csv.Row>> each : sent.entrySet()) {
            new Noting(this, problems).once(each.getKey()).sure(yes)
                    .note(() -> drafts(each.getValue(), table.semicolons(), problems));
        }
        return 0;
    }

    private List<Draft> drafts(List<Csv.Row> rows, boolean semicolons, Problems problems) {
        List<Draft> drafts = new ArrayList<>();
        Ticking ticking = new Ticking(this);
        for (Csv.Row row : rows) {
            (row.cell("round").isPresent() ? tick(row, ticking, problems) : draft(row, semicolons, problems)).ifPresent(
                    draft -> drafts.addAll(draft.id().isPresent() ? List.of(draft) : ticking.booked(draft, List.of())));
        }
        return drafts;
    }

    /** A round of a table of rounds, where its state says that it is done and the plan does not. */
    private Optional<Draft> tick(Csv.Row row, Ticking ticking, Problems problems) {
        String round = row.cell("round").orElseThrow();
        return date(row, Map.of("date", new Json.Text(row.place().at("date"), row.cell("date").orElse(""))), problems)
                .filter(day -> row.cell("state").filter("done"::equals).isPresent() && ticking.isOpen(round, day))
                .map(day -> new Draft(day, EntryKind.DONE,
                        Map.of("task", new Json.Text(row.place().at("round"), round)), row.place()));
    }

    private static void checkColumns(Csv table, String file, Problems problems) {
        Set<String> known = new TreeSet<>(List.of("id", "once", "date", "entry", "note"));
        Stream.of(EntryKind.values()).flatMap(kind -> kind.fields().stream()).map(EntryField::key).forEach(known::add);
        if (table.columns().contains("round")) { known.addAll(ROUNDS); }
        for (String column : table.columns()) {
            if (!column.isEmpty() && !known.contains(column)) {
                problems.tell("unknown-key of-notes", Place.of(file, 1), column,
                        Nearest.to(column, known).map(near -> "Did you mean \"" + near + "\"?")
                                .orElse("oldwood note ENTRY --help lists an entry's keys."));
            }
        }
    }

    private Optional<Draft> draft(Csv.Row row, boolean semicolons, Problems problems) {
        String name = row.cell("entry").orElse("");
        Optional<EntryKind> kind = EntryKind.find(name);
        if (kind.isEmpty()) {
            problems.add("unknown-entry", row.place().at("entry"),
                    name.isEmpty() ? "is missing" : "is no kind of entry: \"" + name + "\"",
                    Nearest.hint(name, EntryKind.keys()));
            return Optional.empty();
        }
        Map<String, Json> values = new LinkedHashMap<>();
        row.cells()
                .forEach((key, text) -> values.put(key,
                        kind.get().field(key)
                                .map(field -> value(field, typed(field, text, semicolons), row.place(), problems))
                                .orElseGet(() -> new Json.Text(row.place().at(key), text))));
        Optional<LocalDate> date = date(row, values, problems);
        values.keySet().removeAll(Set.of("date", "entry", "id", "once"));
        return date.map(day -> new Draft(day, kind.get(), values, row.place(), false, id(row, problems)));
    }

    private Json value(EntryField field, String text, Place place, Problems problems) {
        try {
            return EntryText.value(field, text, place, this::units);
        } catch (IllegalArgumentException e) {
            problems.tell("not-a-measure", place.at(field.key()), String.valueOf(e.getMessage()));
            return new Json.Text(place.at(field.key()), text);
        }
    }

    private static String typed(EntryField field, String text, boolean semicolons) {
        boolean number = field.type() == Holds.NUMBER || field.type() == Holds.COUNT;
        return number ? Csv.number(text, semicolons) : text;
    }

    /** The id that a line has which a journal was written out in. */
    private static Optional<String> id(Csv.Row row, Problems problems) {
        Optional<String> id = row.cell("id");
        id.filter(text -> !EntryWriter.isId(text))
                .ifPresent(text -> problems.tell("not-an-id of-entry", row.place().at("id"), text));
        return id;
    }

    private Optional<LocalDate> date(Csv.Row row, Map<String, Json> values, Problems problems) {
        if (row.cell("date").isEmpty()) { return Optional.of(today()); }
        Fields fields = new Fields(new Json.Obj(row.place(), values), problems);
        LocalDate date = fields.date("date");
        return fields.ok() ? Optional.of(date) : Optional.empty();
    }
}

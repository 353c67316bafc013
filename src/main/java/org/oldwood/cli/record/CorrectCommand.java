package org.oldwood.cli.record;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets an entry right: it is taken back, and a new one that differs in what was wrong stands for it. */
@Command(name = "correct")
public final class CorrectCommand extends GardenCommand {
    private static final Place PLACE = Place.of(ProblemWords.COMMAND_LINE);
    static final String SET_RIGHT = "set right by ";

    @Parameters(index = "0", paramLabel = "ID")
    String id = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "KEY=VALUE")
    List<String> right = new ArrayList<>();

    @Option(names = "--yes")
    boolean yes;

    @Override
    public int run() throws IOException {
        List<Entry> counting = StateBuilder.counting(folder().journal(), Set.of()).stream()
                .filter(entry -> entry.kind() != EntryKind.WITHDRAWN).toList();
        Entry wrong = UndoCommand.known(this, id, counting);
        Draft corrected = corrected(wrong);
        new Noting(this, new Problems()).sure(yes).note(() -> {
            List<Draft> drafts = new ArrayList<>(List.of(Draft.withdrawal(today(), id, SET_RIGHT, PLACE)));
            drafts.addAll(new Ticking(this).booked(corrected, List.of()));
            return drafts;
        });
        return 0;
    }

    private Draft corrected(Entry wrong) {
        Map<String, Json> values = new LinkedHashMap<>(wrong.values());
        if (!wrong.note().isEmpty()) { values.put("note", new Json.Text(PLACE.at("note"), wrong.note())); }
        values.remove("planned");
        LocalDate date = wrong.date();
        for (String part : right) {
            int sign = part.indexOf('=');
            String key = sign < 1 ? "" : part.substring(0, sign);
            String text = part.substring(sign + 1);
            if (key.equals("date")) {
                date = date(text);
            } else if (key.equals("note") && !text.isEmpty()) {
                values.put(key, new Json.Text(PLACE.at(key), text));
            } else if (text.isEmpty() && sign > 0) {
                values.remove(key);
            } else {
                EntryField field = wrong.kind().field(key).orElseThrow(() -> noSuch("key of " + wrong.kind().key(),
                        sign < 1 ? part : key, wrong.kind().fields().stream().map(EntryField::key).toList()));
                values.put(key, Draft.typed(this, field, text));
            }
        }
        return new Draft(date, wrong.kind(), values, PLACE);
    }

    private LocalDate date(String text) {
        try {
            return IsoDate.parse(text);
        } catch (DateTimeParseException e) {
            throw usage("date=%s is no day; write for example: date=2026-11-20".formatted(text));
        }
    }
}

package org.oldwood.cli.record;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine;
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

    /** Whether more than day and note is set right: else figures booked by a tick, or set right since, are true. */
    private boolean otherWork;

    @Override
    public CommandLine commandLine() { return super.commandLine().setUnmatchedOptionsArePositionalParams(true); }

    @Override
    public int run() throws IOException {
        List<Entry> counting = StateBuilder.counting(folder().journal(), Set.of()).stream()
                .filter(entry -> entry.kind() != EntryKind.WITHDRAWN).toList();
        Entry wrong = UndoCommand.known(this, id, counting);
        Draft corrected = corrected(wrong);
        List<Draft> drafts = new ArrayList<>(List.of(Draft.withdrawal(today(), id, SET_RIGHT, PLACE)));
        new Noting(this, new Problems()).sure(yes).note(() -> {
            if (otherWork) {
                drafts.addAll(new Ticking(this).without(id).booked(corrected, List.of()));
                return drafts;
            }
            drafts.add(corrected);
            counting.stream().filter(entry -> entry.names("tick", id)).forEach(
                    entry -> drafts.add(new Draft(entry.date().equals(wrong.date()) ? corrected.date() : entry.date(),
                            entry.kind(), values(entry), PLACE, true, Optional.empty())));
            return drafts;
        });
        return 0;
    }

    private static Map<String, Json> values(Entry entry) {
        Map<String, Json> values = new LinkedHashMap<>(entry.values());
        if (!entry.note().isEmpty()) { values.put("note", new Json.Text(PLACE.at("note"), entry.note())); }
        return values;
    }

    private Draft corrected(Entry wrong) {
        Map<String, Json> values = values(wrong);
        LocalDate date = wrong.date();
        List<String> keys = new ArrayList<>(List.of("date", "note"));
        wrong.kind().fields().forEach(field -> keys.add(field.key()));
        for (Iterator<String> parts = right.iterator(); parts.hasNext();) {
            String part = asKey(parts.next(), wrong.kind(), parts);
            int sign = part.indexOf('=');
            refuseIf(sign < 1, "what is \"%s\" to be? Write it as %s=VALUE", part, part);
            String key = part.substring(0, sign);
            String text = part.substring(sign + 1);
            mustKnow("key of " + wrong.kind().key(), Optional.of(key), keys);
            otherWork |= keys.indexOf(key) > 1;
            if (key.equals("date")) {
                date = IsoDate.find(text).orElseThrow(
                        () -> usage("date=%s is no day; write for example: date=2026-11-20".formatted(text)));
            } else if (text.isEmpty()) {
                values.remove(key);
            } else {
                values.put(key, wrong.kind().field(key).map(field -> Draft.typed(this, field, text))
                        .orElseGet(() -> new Json.Text(PLACE.at(key), text)));
            }
        }
        refuseIf(date.equals(wrong.date()) && EntryText.cells(wrong.kind(), values).equals(EntryText.cells(wrong)),
                "that is what %s says already: %s", id, EntryText.inWords(wrong));
        if (otherWork) { values.remove("planned"); }
        return new Draft(date, wrong.kind(), values, PLACE);
    }

    /** {@code --kg=3} and {@code --kg 3}, as {@code note} takes them, are {@code kg=3}. */
    private static String asKey(String part, EntryKind kind, Iterator<String> more) {
        String key = part.replaceFirst("^--", "");
        if (key.equals(part) || key.contains("=")) { return key; }
        boolean flag = kind.field(key).filter(field -> field.type() == EntryField.Holds.FLAG).isPresent();
        return flag ? key + "=true" : more.hasNext() ? key + "=" + more.next() : key;
    }
}

package org.oldwood.cli.record;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes entries back: the last one noted, with all that was booked with it, or those that are named. */
@Command(name = "undo")
public final class UndoCommand extends GardenCommand {
    private static final Place PLACE = Place.of(ProblemWords.COMMAND_LINE);

    @Parameters(arity = "0..*", paramLabel = "ID")
    List<String> ids = new ArrayList<>();

    @Option(names = "--last", paramLabel = "N")
    Optional<Integer> last = Optional.empty();

    @Override
    public int run() throws IOException {
        refuseIf(last.isPresent() && (last.get() < 1 || !ids.isEmpty()),
                "--last says how many, 1 or more, and goes with no ID");
        List<Entry> counting = StateBuilder.counting(folder().journal());
        for (String id : ids) {
            known(this, id, counting);
        }
        Set<String> chosen = ids.isEmpty() ? newest(counting) : new LinkedHashSet<>(ids);
        refuseIf(chosen.isEmpty(), "nothing is noted that could be taken back");
        new Noting(this, new Problems())
                .note(() -> chosen.stream().map(id -> Draft.withdrawal(today(), id, PLACE)).toList());
        return 0;
    }

    /** The entry of an id, which must be among those that can be taken back. */
    static Entry known(GardenCommand command, String id, List<Entry> among) throws IOException {
        Predicate<Entry> isAsked = entry -> entry.id().equals(id);
        Optional<Entry> known = among.stream().filter(isAsked).findFirst();
        command.refuseIf(known.isEmpty() && command.folder().journal().stream().anyMatch(isAsked),
                "%s was taken back, or takes another back: see oldwood journal", id);
        return known.orElseThrow(() -> command.noSuch("entry", id, among.stream().map(Entry::id).toList()));
    }

    /** The last ones; of those that a tick booked, the tick. */
    private Set<String> newest(List<Entry> counting) {
        Set<String> chosen = new LinkedHashSet<>();
        for (int i = counting.size() - 1; i >= 0 && chosen.size() < last.orElse(1); i--) {
            Entry entry = counting.get(i);
            if (entry.kind() != EntryKind.WITHDRAWN) { chosen.add(entry.text("tick").orElse(entry.id())); }
        }
        return chosen;
    }
}

package org.oldwood.cli.record;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes entries back: all that was noted at once last, or those that are named; a tick with all that it booked. */
@Command(name = "undo")
public final class UndoCommand extends GardenCommand {
    private static final Place PLACE = Place.of(ProblemWords.COMMAND_LINE);

    @Parameters(arity = "0..*", paramLabel = "ID")
    List<String> ids = new ArrayList<>();

    @Option(names = "--last", paramLabel = "N")
    Optional<Integer> last = Optional.empty();

    @Option(names = "--whole")
    boolean whole;

    private List<Entry> journal = List.of();
    private Map<String, Entry> together = Map.of();
    private final Set<String> back = new HashSet<>();
    private final List<Draft> drafts = new ArrayList<>();

    @Override
    public int run() throws IOException {
        refuseIf(last.isPresent() && (last.get() < 1 || whole || !ids.isEmpty()),
                "--last says how many, 1 or more, and goes with no ID nor --whole");
        refuseIf(ids.size() == 1 && ids.get(0).matches("[0-9]+"),
                "an entry's id is such as e-1a2b3c; --last %s takes back the last %1$s", String.join("", ids));
        journal = folder().journal();
        together = Entries.together(journal);
        List<Entry> known = counting();
        for (String id : ids) {
            Entry entry = known(this, id, known);
            (whole ? act(entry) : List.of(entry)).forEach(each -> takeBack(withWhich(each)));
        }
        for (int i = 0; ids.isEmpty() && i < last.orElse(1); i++) {
            newest().ifPresent(entry -> (last.isEmpty() ? act(entry) : List.of(entry)).forEach(this::takeBack));
        }
        refuseIf(drafts.isEmpty(), "nothing is noted that could be taken back");
        new Noting(this, new Problems()).note(() -> drafts);
        long taken = drafts.stream().filter(draft -> !draft.values().containsKey("cause")).count();
        if (ids.isEmpty() && last.isEmpty() && taken > 1) {
            tell("It was noted at once; for one entry alone undo that, then: oldwood undo ID");
        }
        newest().filter(next -> ids.isEmpty()).ifPresent(next -> tell("Undo again would take back: %s%s %s: %s"
                .formatted(many(act(next).size()), next.date(), next.kind().key(), EntryText.inWords(next))));
        return 0;
    }

    private static String many(int entries) {
        return entries == 1 ? "" : entries + " entries noted at once, the last ";
    }

    /** Of what an entry was noted at once with, what counts; what a tick booked, or goes with another, goes along. */
    private List<Entry> act(Entry entry) {
        String act = Entries.act(entry.id());
        List<Entry> all = counting().stream().filter(each -> Entries.act(each.id()).equals(act)).toList();
        Set<String> ids = all.stream().map(Entry::id).collect(Collectors.toSet());
        Predicate<Entry> goesAlong = each -> together.containsKey(each.id())
                || each.text("tick").filter(ids::contains).isPresent();
        return all.stream().filter(each -> each.equals(entry) || !goesAlong.test(each)).toList();
    }

    /** What still counts after what is taken back now. */
    private List<Entry> counting() {
        return StateBuilder.counting(journal, back);
    }

    private List<Entry> goingWith(Entry entry) {
        return counting().stream().filter(each -> entry.equals(together.get(each.id()))).toList();
    }

    /** What it set right stands again. */
    private void takeBack(Entry entry) {
        if (!back.add(entry.id())) { return; }
        for (Entry with : goingWith(entry)) {
            back.add(with.id());
            add(with, with.needed("wrong") + " stands again; goes with ");
        }
        add(entry, "");
    }

    private void add(Entry entry, String how) { drafts.add(Draft.withdrawal(today(), entry.id(), how, PLACE)); }

    /** Of what took another back for an entry that stands for that one, the latter, lest both count. */
    private Entry withWhich(Entry entry) {
        Entry with = together.getOrDefault(entry.id(), entry);
        refuseIf(
                counting().stream()
                        .anyMatch(each -> together.containsKey(each.id()) && each.needed("wrong").equals(with.id())),
                "%s was set right again since: take that back first; see oldwood journal", with.id());
        return counting().contains(with) ? with : entry;
    }

    /** The entry of an id, which must be among those that can be taken back. */
    static Entry known(GardenCommand command, String id, List<Entry> among) {
        Predicate<Entry> isAsked = entry -> entry.id().equals(id);
        Optional<Entry> known = among.stream().filter(isAsked).findFirst();
        command.refuseIf(known.isEmpty() && command.folder().journal().stream().anyMatch(isAsked),
                "%s was taken back, or takes another back: see oldwood journal", id);
        return known.orElseThrow(() -> command.noSuch("entry", id, among.stream().map(Entry::id).toList()));
    }

    /** The last that counts; of those that a tick booked, the tick, but of one set right, only that. */
    private Optional<Entry> newest() {
        List<Entry> counting = counting();
        return counting.stream().filter(entry -> entry.kind() != EntryKind.WITHDRAWN).reduce((a, b) -> b)
                .map(entry -> counting.stream().filter(each -> entry.names("tick", each.id()))
                        .filter(tick -> goingWith(entry).isEmpty()).findFirst().orElse(entry));
    }
}

package org.oldwood.cli.record;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.TableOptions;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what was noted, the newest last. */
@Command(name = "journal")
public final class JournalCommand extends GardenCommand {
    @Option(names = "--plant", paramLabel = "ID")
    Optional<String> plant = Optional.empty();

    @Option(names = "--bed", paramLabel = "ID")
    Optional<String> bed = Optional.empty();

    @Option(names = "--cuttings", paramLabel = "ID")
    Optional<String> lot = Optional.empty();

    @Option(names = "--kind", paramLabel = "ENTRY")
    Optional<String> kind = Optional.empty();

    @Option(names = "--from", paramLabel = "DATE")
    Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE")
    Optional<LocalDate> to = Optional.empty();

    @Option(names = "--last", paramLabel = "N")
    Optional<Integer> last = Optional.empty();

    @Mixin
    TableOptions table = new TableOptions();

    @Override
    public int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = folder.on(today());
        mustKnow("plant", plant, state.plants().keySet());
        mustKnow("bed", bed, state.beds().keySet());
        mustKnow("cuttings", lot, state.lots().keySet());
        mustKnow("kind of entry", kind, EntryKind.keys());
        Set<String> withdrawn = Entries.withdrawn(folder.journal(), Set.of());
        List<Entry> chosen = new ArrayList<>(folder.journal().stream().filter(entry -> isAsked(entry, state)).toList());
        if (!table.asked()) { chosen.sort(Comparator.comparing(Entry::date)); }
        List<Entry> shown = chosen.subList(Math.max(0, chosen.size() - last.orElse(chosen.size())), chosen.size());
        if (table.asked()) {
            table.print(this, cells(shown));
            return 0;
        }
        return answer(() -> Answer.of(shown, withdrawn), () -> {
            if (shown.isEmpty()) { out().line("Nothing was noted that fits."); }
            out().columns(0, shown.stream().map(entry -> row(entry, withdrawn)).toList());
        });
    }

    private boolean isAsked(Entry entry, GardenState state) {
        boolean inTime = from.map(day -> !entry.date().isBefore(day)).orElse(true)
                && to.map(day -> !entry.date().isAfter(day)).orElse(true);
        return inTime && kind.map(entry.kind().key()::equals).orElse(true)
                && lot.map(id -> entry.names("lot", id)).orElse(true)
                && plant.map(id -> namesPlant(entry, id)).orElse(true)
                && bed.map(id -> entry.names("bed", id) || namesPlantIn(entry, id, state)).orElse(true);
    }

    private static boolean namesPlant(Entry entry, String id) {
        return entry.names("plant", id) || entry.names("parent", id) || entry.ids("plants").contains(id)
                || entry.ids("only").contains(id);
    }

    private static boolean namesPlantIn(Entry entry, String bed, GardenState state) {
        return entry.text("plant").flatMap(state::plant).filter(known -> known.plant().bed().equals(bed)).isPresent();
    }

    private static List<Map<String, String>> cells(List<Entry> entries) {
        return entries.stream().map(entry -> {
            Map<String, String> cells = new LinkedHashMap<>();
            cells.put("date", entry.date().toString());
            cells.put("entry", entry.kind().key());
            cells.put("id", entry.id());
            cells.put("note", entry.note());
            cells.putAll(EntryText.cells(entry));
            return cells;
        }).toList();
    }

    private static List<String> row(Entry entry, Set<String> withdrawn) {
        String gone = withdrawn.contains(entry.id()) ? " [taken back]" : "";
        return List.of(entry.date().toString(), entry.id(),
                entry.kind().key() + ": " + EntryText.inWords(entry) + gone);
    }

    private record Answer(List<Told> entries) {
        static Answer of(List<Entry> entries, Set<String> withdrawn) {
            return new Answer(entries.stream().map(entry -> new Told(entry.id(), entry.date(), entry.kind().key(),
                    EntryText.inWords(entry), withdrawn.contains(entry.id()))).toList());
        }
    }

    private record Told(String id, LocalDate date, String entry, String says, boolean takenBack) {}
}

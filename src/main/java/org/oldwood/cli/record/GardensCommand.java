package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.KnownGardens;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the gardens that have a name, names one, or says which is meant where none is given. */
@Command(name = "gardens")
public final class GardensCommand extends GardenCommand {
    @Option(names = "--name", paramLabel = "NAME")
    Optional<String> name = Optional.empty();

    @Option(names = "--folder", paramLabel = "DIR")
    Optional<Path> folder = Optional.empty();

    @Option(names = "--usual", paramLabel = "NAME")
    Optional<String> usual = Optional.empty();

    @Option(names = "--forget", paramLabel = "NAME")
    Optional<String> forgotten = Optional.empty();

    @Override
    public int run() throws IOException {
        Map<String, String> environment = around().environment();
        KnownGardens known = KnownGardens.of(environment);
        KnownGardens changed = known;
        refuseIf(name.isEmpty() && folder.isPresent(), "say what the garden in --folder is called, with --name");
        if (name.isPresent()) { changed = changed.with(name(), garden()); }
        if (forgotten.isPresent()) { changed = changed.without(known(forgotten.get(), changed)); }
        if (usual.isPresent()) {
            changed = new KnownGardens(Optional.of(known(usual.get(), changed)), changed.folders());
        }
        KnownGardens shown = changed;
        if (!changed.equals(known)) { tell("kept in " + changed.keep(environment)); }
        return answer(() -> new Answer(shown.usual(), shown.folders()), () -> print(shown));
    }

    private String name() {
        String given = name.orElse("");
        refuseIf(!GardenReader.isId(given), "--name must be made of small letters, digits and hyphens but is \"%s\"",
                given);
        return given;
    }

    private Path garden() {
        Path path = folder.map(this::path).orElse(around().folder()).toAbsolutePath().normalize();
        refuseIf(!Files.exists(path.resolve(GardenFolder.GARDEN_FILE)),
                "--folder: %s is no garden; begin one with oldwood start DIR", path);
        return path;
    }

    private String known(String asked, KnownGardens among) {
        if (!among.folders().containsKey(asked)) {
            throw among.names().isEmpty() ? usage("no garden has a name yet; give one with --name NAME --folder DIR")
                    : noSuch("garden named", asked, among.names());
        }
        return asked;
    }

    private void print(KnownGardens known) {
        if (known.folders().isEmpty()) { out().line("No garden has a name yet."); }
        out().columns(0,
                known.folders().entrySet().stream()
                        .map(each -> List.of(each.getKey(),
                                known.usual().filter(each.getKey()::equals).isPresent() ? "usual" : "",
                                each.getValue().toString()))
                        .toList());
    }

    private record Answer(Optional<String> usual, Map<String, Path> gardens) {}
}

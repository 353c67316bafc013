package org.oldwood.cli.year;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.crop.Source;
import org.oldwood.crop.Sources;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Documents;
import org.oldwood.store.JsonWriter;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the publications that the figures come from, or tells of one. Needs no garden. */
@Command(
        name = "sources",
        description = "list where the figures come from, or tell of one source",
        footer = {"", "Example:", "  oldwood sources bock-2014"})
public final class SourcesCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "KEY", description = "one source; all of them otherwise")
    Optional<String> key = Optional.empty();

    @Override
    public int run() throws IOException {
        Optional<GardenFolder> folder = folderIfAny();
        Sources sources = Sources.read(folder.map(GardenFolder::documents).orElseGet(Documents::bundled));
        folder.ifPresent(this::stopOnProblems);
        List<Source> chosen = key.map(wanted -> List.of(one(sources, wanted))).orElse(sources.all());
        if (json) {
            out().json(writer -> write(writer, chosen));
        } else if (key.isPresent()) {
            tellOf(chosen.get(0));
        } else {
            list(chosen);
        }
        return 0;
    }

    private Source one(Sources sources, String wanted) {
        return sources.find(wanted)
                .orElseThrow(() -> usage("there is no source \""
                        + wanted
                        + "\". "
                        + Nearest.to(wanted, keys(sources))
                                .map(near -> "Did you mean \"" + near + "\"?")
                                .orElse("oldwood sources lists them all.")));
    }

    private static List<String> keys(Sources sources) {
        return sources.all().stream().map(Source::key).toList();
    }

    private void list(List<Source> sources) {
        List<List<String>> rows = new ArrayList<>();
        for (Source source : sources) {
            rows.add(List.of(source.key(), source.title() + " (" + source.seen().words() + ")"));
        }
        out().columns(0, rows);
    }

    private void tellOf(Source source) {
        out().line(source.key());
        out().paragraph(2, source.inWords());
        out().paragraph(2, "Seen: " + source.seen().words() + grade(source));
        if (!source.note().isEmpty()) {
            out().paragraph(2, source.note());
        }
    }

    private static String grade(Source source) {
        return switch (source.grade()) {
            case "A" -> "; grade A: university, research or government";
            case "B" -> "; grade B: society, handbook or press";
            case "C" -> "; grade C: other";
            default -> "";
        };
    }

    private static void write(JsonWriter json, List<Source> sources) {
        json.object().array("sources");
        for (Source source : sources) {
            json.object()
                    .put("key", source.key())
                    .put("by", source.by())
                    .put("title", source.title())
                    .put("year", source.year())
                    .put("address", source.address())
                    .put("grade", source.grade())
                    .put("seen", source.seen().key())
                    .put("note", source.note())
                    .endObject();
        }
        json.endArray().endObject();
    }
}

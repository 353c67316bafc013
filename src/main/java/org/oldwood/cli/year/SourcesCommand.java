package org.oldwood.cli.year;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.crop.Source;
import org.oldwood.crop.Sources;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the publications that the figures come from, or tells of one. Needs no garden. */
@Command(name = "sources")
public final class SourcesCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "KEY")
    Optional<String> key = Optional.empty();

    @Override
    public int run() throws IOException {
        Sources sources = Sources.read(documents());
        folderIfAny().ifPresent(this::stopOnProblems);
        mustKnow("source", key, sources.all().stream().map(Source::key).toList());
        List<Source> chosen = key.map(wanted -> sources.find(wanted).stream().toList()).orElse(sources.all());
        return answer(() -> new Answer(chosen), key.isPresent() ? () -> tellOf(chosen.get(0)) : () -> list(chosen));
    }

    private void list(List<Source> sources) {
        out().columns(0,
                sources.stream().map(
                        source -> List.of(source.key(), "%s (%s)".formatted(source.title(), source.seen().words())))
                        .toList());
    }

    private void tellOf(Source source) {
        out().line(source.key());
        out().paragraph(2, source.inWords());
        out().paragraph(2, "Seen: " + source.seen().words() + grade(source));
        if (!source.note().isEmpty()) { out().paragraph(2, source.note()); }
    }

    private static String grade(Source source) {
        return switch (source.grade()) {
            case "A" -> "; grade A: university, research or government";
            case "B" -> "; grade B: society, handbook or press";
            case "C" -> "; grade C: other";
            default -> "";
        };
    }

    private record Answer(List<Source> sources) {}
}

package org.oldwood.cli.calendar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.calendar.Adoption;
import org.oldwood.calendar.Export;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Journal;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the year's rounds as iCalendar files. */
@Command(name = "calendar")
public final class CalendarCommand extends GardenCommand {
    @Option(names = "--out", paramLabel = "DIR")
    Optional<Path> outDir = Optional.empty();

    @Option(names = "--by", paramLabel = "PART")
    Part by = Part.all;

    @Option(names = "--feed", paramLabel = "FILE")
    Optional<Path> feed = Optional.empty();

    @Option(names = "--adopt", paramLabel = "FILE")
    List<Path> adopt = new ArrayList<>();

    @Option(names = "--replace")
    boolean replace;

    @Mixin
    CalendarLooks looks = new CalendarLooks();

    /** How to split the plan over files. */
    enum Part {
        all,
        bed,
        craft
    }

    @Override
    public CommandLine commandLine() {
        return super.commandLine().addSubcommand("read", new CalendarReadCommand(this).commandLine())
                .addSubcommand("publish", new CalendarPublishCommand(this).commandLine());
    }

    @Override
    public int run() throws IOException {
        CalendarItems calendar = CalendarItems.of(this, looks.each);
        Export.Result result;
        // one run at a time remembers what was written
        try (Journal.Writing held = new Journal(folder().journalPath()).begin()) {
            adopt(calendar);
            Export export = new Export(calendar.garden(), looks.layout(calendar.state().garden()), today(), replace);
            result = feed.isPresent() ? export.feed(calendar.items(), path(feed.get()))
                    : export.pairs(calendar.items(), target(folder()),
                            Export.Split.valueOf(by.name().toUpperCase(Locale.ROOT)));
        }
        result.files().forEach(file -> tell((result.changed().contains(file) ? "Wrote " : "Unchanged: ") + file));
        result.notices().forEach(notice -> tell("Note: " + notice));
        if (!calendar.leftOut().isEmpty()) {
            tell("Left out, as nothing is lost without it: %s. \"morePlants\" in garden.json puts it in."
                    .formatted(String.join("; ", calendar.leftOut())));
        }
        Planning.tellNotices(this, calendar.plan().notices());
        return 0;
    }

    private Path target(GardenFolder folder) throws IOException {
        Path target = outDir.map(this::path).orElse(folder.path().resolve("calendars"));
        Files.createDirectories(target);
        return target;
    }

    private void adopt(CalendarItems calendar) throws IOException {
        if (adopt.isEmpty()) { return; }
        Adoption adoption = new Adoption(calendar.garden(), looks.layout(calendar.state().garden()), calendar.known());
        for (Path file : adopt) {
            try (InputStream in = Files.newInputStream(path(file))) {
                adoption.from(in, file.toString());
            }
        }
        Adoption.Result result = adoption.keep();
        result.problems().list().forEach(problem -> tell("Note: " + problem.inWords()));
        if (result.half() > 0) {
            tell("Note: of %s rounds only the event or only the to-do was found. Adopt the other file too, before a calendar shows it twice."
                    .formatted(result.half()));
        }
        tell("Took over %s items; %s belong to nothing in the plan.".formatted(result.items(), result.strangers()));
    }
}

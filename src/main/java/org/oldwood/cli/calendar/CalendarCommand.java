package org.oldwood.cli.calendar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.calendar.Adoption;
import org.oldwood.calendar.Export;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.Spelled;
import org.oldwood.garden.GardenFolder;
import picocli.CommandLine;

/** Writes the year's tasks as iCalendar files. */
public final class CalendarCommand extends GardenCommand {
    private Optional<Path> outDir = Optional.empty();
    private Part by = Part.all;
    private Optional<Path> feed = Optional.empty();
    private final List<Path> adopt = new ArrayList<>();
    private final CalendarLooks looks = new CalendarLooks();

    /** How to split the plan over files. */
    enum Part {
        all,
        bed,
        craft
    }

    @Override
    public Optional<Spelled> spelled() {
        Spelled own = Spelled.command(
                "calendar",
                "write the year's tasks as iCalendar files: events and to-dos",
                "oldwood calendar --garden demo-data/terrace-school --today 2026-11-25");
        own.value(
                "--out",
                "DIR",
                "where to write; calendars in the garden's folder otherwise",
                Path.class,
                given -> outDir = Optional.of(given));
        own.value(
                "--by",
                "PART",
                "one pair of files for each bed or craft: ${COMPLETION-CANDIDATES}",
                Part.class,
                given -> by = given);
        own.value(
                "--feed",
                "FILE",
                "one file for a web server to offer, without to-dos, instead",
                Path.class,
                given -> feed = Optional.of(given));
        own.values(
                "--adopt",
                "FILE",
                "take over UIDs and revisions from an older file, if the memory was lost",
                Path.class,
                adopt);
        return Optional.of(own.with(looks.options()));
    }

    @Override
    public CommandLine commandLine(List<String> arguments) {
        CommandLine line = new CommandLine(commandSpec());
        if (mayName(arguments, "read", "-h", "--help")) {
            line.addSubcommand("read", new CalendarReadCommand(this).commandLine(List.of()));
        }
        if (mayName(arguments, "publish", "-h", "--help")) {
            line.addSubcommand("publish", new CalendarPublishCommand(this).commandLine(List.of()));
        }
        return line;
    }

    /** Commands of its own are made only where they may be asked for, so that a run starts fast. */
    private static boolean mayName(List<String> arguments, String... words) {
        return arguments.isEmpty()
                || !arguments.get(0).startsWith("-")
                || arguments.stream().anyMatch(List.of(words)::contains);
    }

    @Override
    public int run() throws IOException {
        CalendarItems calendar = CalendarItems.of(this);
        adopt(calendar);
        Export export = new Export(calendar.garden(), looks.layout(), today());
        Export.Result result = feed.isPresent()
                ? export.feed(calendar.items(), path(feed.get()))
                : export.pairs(calendar.items(), target(folder()), split());
        result.files().forEach(file -> tell((result.changed().contains(file) ? "Wrote " : "Unchanged: ") + file));
        result.notices().forEach(notice -> tell("Note: " + notice));
        Planning.tellNotices(this, calendar.plan().notices());
        return 0;
    }

    private Path target(GardenFolder folder) throws IOException {
        Path target = outDir.map(this::path).orElse(folder.path().resolve("calendars"));
        Files.createDirectories(target);
        return target;
    }

    private Export.Split split() {
        return switch (by) {
            case all -> Export.Split.NONE;
            case bed -> Export.Split.BED;
            case craft -> Export.Split.CRAFT;
        };
    }

    private void adopt(CalendarItems calendar) throws IOException {
        if (adopt.isEmpty()) {
            return;
        }
        Adoption adoption =
                new Adoption(calendar.garden(), looks.layout(), calendar.items().all());
        for (Path file : adopt) {
            try (InputStream in = Files.newInputStream(path(file))) {
                adoption.from(in, file.toString());
            }
        }
        Adoption.Result result = adoption.keep();
        result.problems().list().forEach(problem -> tell("Note: " + problem.inWords()));
        tell("Took over " + result.tasks() + " tasks; " + result.strangers() + " items belong to no task.");
    }
}

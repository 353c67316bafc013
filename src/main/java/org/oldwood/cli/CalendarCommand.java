package org.oldwood.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.TaskItems;
import org.oldwood.care.Plan;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.report.TaskWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the year's tasks as iCalendar files. */
@Command(
        name = "calendar",
        description = "write the year's tasks as iCalendar files: events and to-dos",
        footer = {
            "",
            "Example:",
            "  oldwood calendar --garden demo-data/terrace-school --today 2026-11-25"
        })
final class CalendarCommand extends GardenCommand {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where to write; calendars in the garden's folder otherwise")
    Optional<Path> outDir = Optional.empty();

    @Option(
            names = "--by",
            paramLabel = "PART",
            description = "one pair of files for each bed or craft: ${COMPLETION-CANDIDATES}")
    Part by = Part.all;

    @Option(
            names = "--feed",
            paramLabel = "FILE",
            description = "one file for a web server to offer, without to-dos, instead")
    Optional<Path> feed = Optional.empty();

    @Option(
            names = "--event-days",
            paramLabel = "DAYS",
            description = "what an event covers: ${COMPLETION-CANDIDATES}")
    EventDays eventDays = EventDays.usual;

    @Option(
            names = "--due",
            paramLabel = "DAY",
            description = "what a to-do's due day is: ${COMPLETION-CANDIDATES}")
    Due due = Due.last;

    @Option(names = "--no-reminder", description = "write no reminders")
    boolean noReminder;

    /** How to split the plan over files. */
    enum Part {
        all,
        bed,
        craft
    }

    /** What an event covers. */
    enum EventDays {
        usual,
        window,
        day
    }

    /** What a to-do's due day is. */
    enum Due {
        last,
        after
    }

    @Override
    int run() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        Plan plan = Planning.planner(folder, state).plan();
        stopOnProblems(folder);
        TaskWords words = Planning.words(folder);
        List<Item> items = TaskItems.of(plan.tasks(), TaskWords::headline, words::lines);
        Garden garden = folder.garden();
        Export export =
                new Export(
                        new Export.Garden(
                                garden.id(), garden.name(), garden.site().zone(), folder.path()),
                        layout(),
                        today());
        Export.Result result =
                feed.isPresent()
                        ? export.feed(items, path(feed.get()))
                        : export.pairs(items, target(folder), split());
        result.files()
                .forEach(
                        file ->
                                tell(
                                        (result.changed().contains(file) ? "Wrote " : "Unchanged: ")
                                                + file));
        folder.notices().forEach(problem -> tell("Note: " + problem.inWords()));
        result.notices().forEach(notice -> tell("Note: " + notice));
        Planning.tellNotices(this, plan.notices());
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

    private Layout layout() {
        Layout.EventDays days =
                switch (eventDays) {
                    case usual -> Layout.EventDays.USUAL;
                    case window -> Layout.EventDays.SPAN;
                    case day -> Layout.EventDays.BEST_DAY;
                };
        return new Layout(
                days,
                due == Due.last ? Layout.Due.LAST_DAY : Layout.Due.DAY_AFTER,
                noReminder ? Layout.Alarms.NONE : Layout.Alarms.MORNING);
    }
}

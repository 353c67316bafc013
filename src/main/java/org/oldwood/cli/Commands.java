package org.oldwood.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The commands by name: one line each, in the order in which the help lists them. */
final class Commands {
    private static final Map<String, Supplier<? extends GardenCommand>> TABLE = new LinkedHashMap<>();

    static {
        TABLE.put("start", StartCommand::new);
        TABLE.put("note", NoteCommand::new);
        TABLE.put("check", CheckCommand::new);
        TABLE.put("tasks", TasksCommand::new);
        TABLE.put("cuttings", CuttingsCommand::new);
        TABLE.put("calendar", CalendarCommand::new);
        TABLE.put("sheet", SheetCommand::new);
        TABLE.put("why", WhyCommand::new);
        TABLE.put("water", WaterCommand::new);
        TABLE.put("et0", Et0Command::new);
        TABLE.put("stages", StagesCommand::new);
        TABLE.put("chill", ChillCommand::new);
        TABLE.put("heat", HeatCommand::new);
        TABLE.put("weather", WeatherCommand::new);
        TABLE.put("prune", PruneCommand::new);
        TABLE.put("feed", FeedCommand::new);
        TABLE.put("ledger", LedgerCommand::new);
        TABLE.put("shopping", ShoppingCommand::new);
        TABLE.put("lime", LimeCommand::new);
        TABLE.put("acidify", AcidifyCommand::new);
        TABLE.put("mulch", MulchCommand::new);
        TABLE.put("pack", PackCommand::new);
        TABLE.put("sources", SourcesCommand::new);
        TABLE.put("completion", CompletionCommand::new);
    }

    private Commands() {}

    static List<String> names() {
        return List.copyOf(TABLE.keySet());
    }

    /** A new command of that name; no other is made, so that a run starts fast. */
    static Optional<GardenCommand> make(String name) {
        return Optional.ofNullable(TABLE.get(name)).map(Supplier::get);
    }
}

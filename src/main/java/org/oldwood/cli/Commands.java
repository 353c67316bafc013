package org.oldwood.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.oldwood.cli.calendar.CalendarCommand;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.cuttings.CuttingsCommand;
import org.oldwood.cli.feeding.AcidifyCommand;
import org.oldwood.cli.feeding.FeedCommand;
import org.oldwood.cli.feeding.LedgerCommand;
import org.oldwood.cli.feeding.LimeCommand;
import org.oldwood.cli.feeding.MulchCommand;
import org.oldwood.cli.feeding.ShoppingCommand;
import org.oldwood.cli.page.WalkCommand;
import org.oldwood.cli.pruning.PruneCommand;
import org.oldwood.cli.record.CheckCommand;
import org.oldwood.cli.record.CorrectCommand;
import org.oldwood.cli.record.GardensCommand;
import org.oldwood.cli.record.JournalCommand;
import org.oldwood.cli.record.NoteCommand;
import org.oldwood.cli.record.PackCommand;
import org.oldwood.cli.record.StartCommand;
import org.oldwood.cli.record.StockCommand;
import org.oldwood.cli.record.UndoCommand;
import org.oldwood.cli.season.ChillCommand;
import org.oldwood.cli.season.HeatCommand;
import org.oldwood.cli.season.StagesCommand;
import org.oldwood.cli.season.SuitsCommand;
import org.oldwood.cli.season.WeatherCommand;
import org.oldwood.cli.water.Et0Command;
import org.oldwood.cli.water.WaterCommand;
import org.oldwood.cli.year.NowCommand;
import org.oldwood.cli.year.SheetCommand;
import org.oldwood.cli.year.SourcesCommand;
import org.oldwood.cli.year.TasksCommand;
import org.oldwood.cli.year.WhyCommand;

/** The commands by name: one line each, in the order in which the help lists them. */
public final class Commands {
    private static final Map<String, Supplier<? extends GardenCommand>> TABLE = new LinkedHashMap<>();

    static {
        TABLE.put("start", StartCommand::new);
        TABLE.put("note", NoteCommand::new);
        TABLE.put("gardens", GardensCommand::new);
        TABLE.put("stock", StockCommand::new);
        TABLE.put("journal", JournalCommand::new);
        TABLE.put("undo", UndoCommand::new);
        TABLE.put("correct", CorrectCommand::new);
        TABLE.put("check", CheckCommand::new);
        TABLE.put("now", NowCommand::new);
        TABLE.put("tasks", TasksCommand::new);
        TABLE.put("cuttings", CuttingsCommand::new);
        TABLE.put("calendar", CalendarCommand::new);
        TABLE.put("sheet", SheetCommand::new);
        TABLE.put("walk", WalkCommand::new);
        TABLE.put("why", WhyCommand::new);
        TABLE.put("water", WaterCommand::new);
        TABLE.put("et0", Et0Command::new);
        TABLE.put("stages", StagesCommand::new);
        TABLE.put("suits", SuitsCommand::new);
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

    public static List<String> names() { return List.copyOf(TABLE.keySet()); }

    /** A new command of that name; no other is made, so that a run starts fast. */
    public static Optional<GardenCommand> make(String name) {
        return Optional.ofNullable(TABLE.get(name)).map(Supplier::get);
    }
}

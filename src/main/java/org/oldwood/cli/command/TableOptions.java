package org.oldwood.cli.command;

import java.util.List;
import java.util.Map;
import org.oldwood.store.Csv;
import picocli.CommandLine.Option;

/** How a command writes its answer as a table for a spreadsheet. */
public final class TableOptions {
    @Option(names = "--csv")
    boolean csv;

    @Option(names = "--decimal-comma")
    boolean decimalComma;

    public boolean asked() { return csv || decimalComma; }

    /** Prints rows; their keys, in the order in which they come, name the columns. */
    public void print(GardenCommand command, List<Map<String, String>> rows) {
        command.out().write(Csv.text(rows, decimalComma));
    }
}

package org.oldwood.cli;

import org.oldwood.cli.command.GardenCommand;
import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints a script that lets bash and zsh complete the names of commands and options. */
@Command(name = "completion")
final class CompletionCommand extends GardenCommand {
    @Override
    public int run() {
        out().write(AutoComplete.bash("oldwood", Main.everything()));
        return 0;
    }
}

package org.oldwood.cli;

import org.oldwood.cli.command.GardenCommand;
import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints a script that lets bash and zsh complete the names of commands and options. */
@Command(
        name = "completion",
        description = {
            "print a script that completes commands and options in bash and zsh",
            "",
            "For this shell: source <(oldwood completion)",
            "For every shell: put that line in ~/.bashrc or ~/.zshrc.",
            ""
        },
        footer = {"", "Example:", "  oldwood completion"})
final class CompletionCommand extends GardenCommand {
    @Override
    public int run() {
        out().write(AutoComplete.bash("oldwood", Main.everything()));
        return 0;
    }
}

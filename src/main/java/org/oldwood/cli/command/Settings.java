package org.oldwood.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.Help;

/** How every command line is read and its help printed. */
public final class Settings {
    private Settings() {}

    /** The command line of one command, printing to {@code out} and {@code err}. */
    public static CommandLine of(String name, GardenCommand command, Out out, Out err) {
        CommandLine line = command.commandLine();
        line.setCommandName("oldwood " + name);
        return plain(line).setOut(printing(out)).setErr(printing(err));
    }

    /** No colours, no abbreviations, no files of arguments, 80 columns. */
    public static CommandLine plain(CommandLine line) {
        return line.setExpandAtFiles(false).setUsageHelpWidth(Out.WIDTH).setUsageHelpAutoWidth(false)
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF)).registerConverter(LocalDate.class, Today::read);
    }

    private static PrintWriter printing(Out out) {
        return new PrintWriter(new StringWriter() {
            @Override
            public void flush() {
                out.write(toString().replace("\r\n", "\n"));
                getBuffer().setLength(0);
            }
        }, true);
    }
}

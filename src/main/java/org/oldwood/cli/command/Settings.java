package org.oldwood.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import org.oldwood.cli.Main;
import picocli.CommandLine;
import picocli.CommandLine.Help;

/** How every command line is read and its help printed. */
public final class Settings {
    private Settings() {}

    /** The program's command line with one command under it, printing to {@code out} and {@code err}. */
    public static CommandLine root(String name, GardenCommand command, Out out, Out err) {
        CommandLine root = Main.top();
        root.addSubcommand(name, command.commandLine());
        plain(root).setOut(printing(out)).setErr(printing(err));
        return root;
    }

    /** No colours, no abbreviations, no files of arguments, 80 columns. */
    public static CommandLine plain(CommandLine line) {
        return line.setExpandAtFiles(false)
                .setUsageHelpWidth(Out.WIDTH)
                .setUsageHelpAutoWidth(false)
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
                .registerConverter(LocalDate.class, new Today.Reader());
    }

    private static PrintWriter printing(Out out) {
        return new PrintWriter(
                new StringWriter() {
                    @Override
                    public void flush() {
                        out.write(toString().replace("\r\n", "\n"));
                        getBuffer().setLength(0);
                    }
                },
                true);
    }
}

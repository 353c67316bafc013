package org.oldwood.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.cli.command.Failures;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.HelpWords;
import org.oldwood.cli.command.Measured;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.command.Settings;
import org.oldwood.cli.command.Surroundings;
import org.oldwood.cli.year.NowCommand;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Nearest;
import org.oldwood.store.RecordException;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Starts the program. Only the command named first is built, so that a run starts fast; the help builds all. */
public final class Main {
    private static final String NOW = "now";

    private Main() {}

    public static void main(String[] args) { System.exit(run(List.of(args), surroundings())); }

    /** Those of a run that somebody started. */
    public static Surroundings surroundings() {
        // picocli formats numbers in the default locale; ours are the same everywhere
        Locale.setDefault(Locale.ROOT);
        return new Surroundings(Path.of(""), System.getenv(), System.in, new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err), Surroundings.Hidden.TERMINAL);
    }

    /** Runs one command line and returns its exit code. */
    public static int run(List<String> args, Surroundings around) {
        Out out = new Out(around.out());
        Out err = new Out(around.err());
        Failures failures = new Failures(err);
        try {
            int code = execute(args, new Run(around, out, err), failures);
            out.flush();
            return code;
        } catch (RuntimeException e) {
            return failures.unexpected(e);
        } finally {
            err.flush();
        }
    }

    /** Where one run reads and prints. */
    private record Run(Surroundings around, Out out, Out err) {}

    private static int execute(List<String> args, Run run, Failures failures) {
        String first = args.isEmpty() ? "" : args.get(0);
        if (first.startsWith("-")) {
            switch (first) {
                case "--help", "-h" -> run.out.write(everything().getUsageMessage());
                case "--version", "-V" -> run.out.line("oldwood " + Optional
                        .ofNullable(Main.class.getPackage().getImplementationVersion()).orElse("(not packaged)"));
                default -> {
                    return execute(NOW, new NowCommand(), args, run, failures);
                }
            }
            return 0;
        }
        if (first.isEmpty()) {
            GardenCommand now = new NowCommand();
            now.attach(run.around, run.out, run.err);
            if (Files.isRegularFile(now.gardenPath().resolve(GardenFolder.GARDEN_FILE))) {
                return execute(NOW, now, args, run, failures);
            }
            run.err.write(everything().getUsageMessage());
            return Failures.WRONG_USAGE;
        }
        Optional<GardenCommand> command = Commands.make(first);
        if (command.isEmpty()) {
            run.err.hanging("", 2,
                    "oldwood: there is no command \"" + first + "\". " + Nearest.hint(first, Commands.names()));
            run.err.line("Try: oldwood --help");
            return Failures.WRONG_USAGE;
        }
        return execute(first, command.get(), args.subList(1, args.size()), run, failures);
    }

    private static int execute(String name, GardenCommand command, List<String> args, Run run, Failures failures) {
        command.attach(run.around, run.out, run.err);
        CommandLine line = Settings.of(name, command, run.out, run.err);
        if (args.contains("--help") || args.contains("-h")) { HelpWords.put(line, name); }
        line.setParameterExceptionHandler((wrong, typed) -> failures.wrongUsage(wrong));
        line.setExecutionExceptionHandler((thrown, of, parsed) -> failures.thrown(thrown, of.getCommand()));
        try {
            return line.execute(Measured.inMetric(command, line, args).toArray(String[]::new));
        } catch (ParameterException e) {
            return failures.wrongUsage(e);
        } catch (UncheckedIOException | RecordException e) {
            return failures.thrown(e, command);
        }
    }

    /** The command line with all commands, for the help and for shell completion. */
    public static CommandLine everything() {
        CommandLine root = top();
        for (String name : Commands.names()) {
            root.addSubcommand(name, Commands.make(name).orElseThrow().commandLine());
        }
        HelpWords.put(root, "");
        return Settings.plain(root);
    }

    /** The program without a command. */
    public static CommandLine top() {
        CommandSpec spec = CommandSpec.create().name("oldwood");
        spec.usageMessage()
                .description("From a record of currant, gooseberry, cane and blueberry bushes to dated,"
                        + " measured, explained tasks.")
                .synopsisSubcommandLabel("COMMAND").commandListHeading("%nCommands:%n").footer("",
                        "oldwood alone, in a garden's folder, says what to do now.",
                        "oldwood COMMAND --help tells more of a command; oldwood --version the version.", "",
                        "Example:", "  oldwood tasks --garden our-garden");
        return new CommandLine(spec);
    }
}

package org.oldwood.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import org.oldwood.store.Nearest;
import org.oldwood.store.RecordException;
import org.oldwood.words.Typed;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Words what went wrong, and gives the exit code that says whose fault it was. */
public final class Failures {
    /** The records have problems. */
    public static final int RECORD_PROBLEMS = 1;

    /** The command line was wrong. */
    public static final int WRONG_USAGE = 2;

    /** Our fault, or the disk's. */
    public static final int UNEXPECTED = 3;

    private final Out err;

    public Failures(Out err) { this.err = err; }

    public int wrongUsage(ParameterException given) {
        ParameterException e = unknownFirst(given);
        CommandLine line = e.getCommandLine();
        String name = line.getCommandSpec().qualifiedName();
        say(name + ": " + firstLine(e) + suggestion(e));
        String synopsis = line.getHelp().synopsis(line.getHelp().synopsisHeadingLength());
        err.write("Usage: " + synopsis.replace("\r\n", "\n"));
        err.line("Try: " + name + " --help");
        return WRONG_USAGE;
    }

    /** Who writes --depth or depthCm=5 for --depthCm=5 has not left that out. */
    private static ParameterException unknownFirst(ParameterException e) {
        CommandLine line = e.getCommandLine();
        List<String> unknown = e instanceof MissingParameterException
                ? line.getUnmatchedArguments().stream()
                        .filter(word -> word.startsWith("-") || isOption("--" + word, line)).toList()
                : List.of();
        return unknown.isEmpty() ? e : new UnmatchedArgumentException(line, unknown);
    }

    private static boolean isOption(String word, CommandLine line) {
        return line.getCommandSpec().optionsMap().containsKey(word.replaceFirst("=.*", ""));
    }

    private static String firstLine(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched && unmatched.getUnmatched().get(0).startsWith("-")) {
            // what follows it may be a password, which belongs in no log
            String option = unmatched.getUnmatched().get(0);
            int value = option.indexOf('=');
            return "Unknown option: '" + (value < 0 ? option : option.substring(0, value)) + "'";
        }
        Set<String> below = e.getCommandLine().getSubcommands().keySet();
        if (e instanceof UnmatchedArgumentException unmatched && !below.isEmpty()) {
            String seen = unmatched.getUnmatched().get(0);
            return "there is no \"%s\". %s".formatted(seen, Nearest.hint(seen, below));
        }
        return String.valueOf(e.getMessage()).split("\n", 2)[0];
    }

    private static String suggestion(ParameterException e) {
        if (!(e instanceof UnmatchedArgumentException unmatched)) { return ""; }
        String seen = unmatched.getUnmatched().get(0);
        if (isOption("--" + seen, e.getCommandLine())) { return ". Did you mean --" + seen + "?"; }
        return Nearest.to(seen, e.getCommandLine().getCommandSpec().optionsMap().keySet())
                .map(option -> ". Did you mean " + option + "?")
                .orElse(Typed.isUnit(seen.replaceAll("^-*|=.*", "")) ? ". A unit stands behind its number: 3 lb" : "");
    }

    private void say(String text) { err.hanging("", 2, text); }

    /** What a command let through. */
    public int thrown(Exception thrown, GardenCommand command) {
        if (thrown instanceof RecordException records) {
            new ProblemWords(command.gardenPath()).print(err, records.problems(), "; nothing was written.");
            return RECORD_PROBLEMS;
        }
        if (thrown instanceof ParameterException usage) { return wrongUsage(usage); }
        if (thrown instanceof TypeConversionException) {
            say("oldwood: " + thrown.getMessage());
            return WRONG_USAGE;
        }
        return unexpected(thrown);
    }

    public int unexpected(Exception thrown) {
        if (thrown instanceof IOException || thrown instanceof UncheckedIOException) { return disk(thrown); }
        say("oldwood: this is a fault of the program, not of your records: " + thrown);
        StackTraceElement[] trace = thrown.getStackTrace();
        say("Please report it with the command you gave, the text above and this place: %s"
                .formatted(trace.length == 0 ? "unknown" : trace[0]));
        return UNEXPECTED;
    }

    /** A reader that has seen enough ({@code oldwood tasks | head}) is no fault. */
    private int disk(Exception thrown) {
        String message = String.valueOf(thrown.getMessage());
        if (message.contains("Broken pipe")) { return 0; }
        say("oldwood: a file could not be read or written: %s. Check that the folder is there, that you may write in it, and that the disk is not full."
                .formatted(message));
        return UNEXPECTED;
    }
}

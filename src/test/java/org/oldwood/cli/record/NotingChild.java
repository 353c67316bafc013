package org.oldwood.cli.record;

import java.io.ByteArrayInputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oldwood.cli.Main;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.command.Surroundings;

/**
 * A process of its own that notes one watering after another, through the whole program, and prints what the program
 * prints: the entry's id, once it is acknowledged. Made to be killed.
 */
public final class NotingChild {
    public static final String BED = "blackcurrant-bed";

    private NotingChild() {}

    /** Arguments: the garden's folder, a name for this process, how many entries at most. */
    public static void main(String[] args) {
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        for (int i = 0; i < Integer.parseInt(args[2]); i++) {
            int exit = note(args[0], args[1] + "-" + i, i, out);
            if (exit != 0) { Runtime.getRuntime().halt(exit); }
        }
        Runtime.getRuntime().halt(0);
    }

    private static int note(String folder, String name, int i, OutputStream out) {
        // lines of very different length, so that a kill or a full disk meets them everywhere
        String words = name + " " + "grün ".repeat(i * 37 % 400);
        return Main.run(
                List.of("note", "watered", "--garden=" + folder, "--bed=" + BED, "--litres=20", "--note=" + words,
                        "--date=2026-11-20", "--today=2026-11-25", "--quiet"),
                new Surroundings(Path.of(""), Map.of(), new ByteArrayInputStream(new byte[0]), out,
                        new FileOutputStream(FileDescriptor.err), Surroundings.Hidden.NOBODY));
    }

    /** Starts one; {@code before} is put before the command, a shell that sets limits for example. */
    public static Process start(Path folder, String name, int most, String... before) throws IOException {
        return started(folder, name, most, before).start();
    }

    public static ProcessBuilder started(Path folder, String name, int most, String... before) {
        List<String> command = new ArrayList<>(List.of(before));
        command.addAll(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-cp", System.getProperty("java.class.path"),
                NotingChild.class.getName(), folder.toString(), name, Integer.toString(most)));
        return new ProcessBuilder(command);
    }

    /** A garden to note in. */
    public static Path garden(Path folder) {
        Cli.Result made = Cli.in(folder).run("start", ".", "--name=Terrace", "--at=52,-2", "--plants=blackcurrant=2",
                "--planted=2021", "--zone=Europe/London", "--today=2026-11-25");
        if (made.exit() != 0) { throw new IllegalStateException(made.err()); }
        return folder;
    }

    /** The ids in what a process printed; a line cut off is none. */
    public static List<String> acknowledged(String printed) {
        return printed.lines().filter(line -> line.matches("e-[0-9a-f]{12} .*")).map(line -> line.substring(0, 14))
                .toList();
    }
}

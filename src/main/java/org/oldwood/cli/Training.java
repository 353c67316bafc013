package org.oldwood.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.oldwood.cli.command.Surroundings;

/**
 * Runs the commonest commands once on a copy of a garden, so that the build can make a class-data archive of what they
 * load. Prints nothing.
 */
public final class Training {
    private static final List<List<String>> COMMANDS = List.of(List.of("calendar"), List.of("calendar", "--by", "bed"),
            List.of("tasks"), List.of("tasks", "--json"), List.of("check"), List.of("why"), List.of("water"),
            List.of("water", "--compare"), List.of("chill"), List.of("cuttings"), List.of("stages"),
            List.of("suits", "--at", "52.1,-2.3"), List.of("prune", "--bed", "upper-terrace"), List.of("sources"),
            List.of("note", "vigour", "--bed", "upper-terrace", "--growth", "normal"), List.of("calendar", "--help"),
            List.of("--help"));

    private Training() {}

    /**
     * Runs the commands.
     *
     * @param arguments the folder of a garden that may be written to, and the day to work as on
     */
    public static void main(String[] arguments) throws IOException {
        // what a run that somebody started loads besides
        Main.surroundings();
        Surroundings quiet = new Surroundings(Path.of(arguments[0]), Map.of(), InputStream.nullInputStream(),
                OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Surroundings.Hidden.NOBODY);
        COMMANDS.forEach(command -> Main.run(dated(command, arguments[1]), quiet));
        // and without a climate of its own
        Path garden = Path.of(arguments[0], "garden.json");
        Files.writeString(garden, Files.readString(garden).replaceFirst("\"climate\": *\"[^\"]*\", *", ""));
        for (String command : List.of("check", "calendar", "stages")) {
            Main.run(dated(List.of(command), arguments[1]), quiet);
        }
    }

    private static List<String> dated(List<String> command, String today) {
        if (command.contains("--help")) { return command; }
        return Stream.concat(command.stream(), Stream.of("--today", today)).toList();
    }
}

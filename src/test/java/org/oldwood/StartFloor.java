package org.oldwood;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.model.component.VEvent;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * One part of a start, for measuring what it costs as a whole process: {@code nothing}, {@code picocli} (an empty
 * command with one option), {@code event} (one event through ical4j), {@code json FILE…} (all tokens of bundled files),
 * {@code load FILE} (loads the classes that a file lists, a name a line) and {@code begin FILE} (loads and initialises
 * them). How to run it is told in docs/benchmarks.md.
 */
public final class StartFloor {
    private StartFloor() {}

    public static void main(String[] arguments) throws IOException {
        List<String> rest = List.of(arguments).subList(1, arguments.length);
        switch (arguments[0]) {
            case "picocli" -> picocli();
            case "event" -> System.out.println(new VEvent(LocalDate.of(2026, 11, 25), "Prune"));
            case "json" -> json(rest);
            case "load" -> classes(rest.get(0), false);
            case "begin" -> classes(rest.get(0), true);
            default -> System.out.println("hello");
        }
    }

    private static void picocli() {
        CommandSpec spec = CommandSpec.create().name("empty");
        spec.addOption(OptionSpec.builder("--garden").type(String.class).build());
        new CommandLine(spec).parseArgs("--garden", "here");
    }

    private static void json(List<String> files) throws IOException {
        JsonFactory factory = new JsonFactory();
        int tokens = 0;
        for (String file : files) {
            try (InputStream in = StartFloor.class.getResourceAsStream(file);
                    JsonParser parser = factory.createParser(in)) {
                while (parser.nextToken() != null) {
                    tokens++;
                }
            }
        }
        System.out.println(tokens);
    }

    private static void classes(String list, boolean initialise) throws IOException {
        ClassLoader loader = StartFloor.class.getClassLoader();
        int loaded = 0;
        for (String name : Files.readAllLines(Path.of(list))) {
            try {
                Class.forName(name, initialise, loader);
                loaded++;
            } catch (ClassNotFoundException | LinkageError e) {
                // made at run time in the run that was listed, or not to be had by name
            }
        }
        System.out.println(loaded);
    }
}

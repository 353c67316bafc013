package org.oldwood.cli.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.cli.Main;

/** Runs the program inside a test, as from a shell in a folder. */
public final class Cli {
    private final Path folder;
    private final Map<String, String> environment = new LinkedHashMap<>();
    private String in = "";
    private Surroundings.Hidden hidden = Surroundings.Hidden.NOBODY;

    private Cli(Path folder) { this.folder = folder; }

    public static Cli in(Path folder) { return new Cli(folder); }

    public Cli with(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    /** What a person types where it is not shown. */
    public Cli typingHidden(String word) {
        hidden = question -> java.util.Optional.of(word);
        return this;
    }

    /** A person at a terminal, who answers what is asked. */
    public Cli answering(String text) {
        hidden = new Surroundings.Hidden() {
            @Override
            public java.util.Optional<String> answerTo(String question) { return java.util.Optional.empty(); }

            @Override
            public boolean isThere() { return true; }
        };
        return reading(text);
    }

    public Cli reading(String text) {
        in = text;
        return this;
    }

    /** What a run gave back. */
    public record Result(int exit, String out, String err) {}

    public Result run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(List.of(args), new Surroundings(folder, environment,
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), out, err, hidden));
        return new Result(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}

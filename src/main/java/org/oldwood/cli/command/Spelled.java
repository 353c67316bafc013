package org.oldwood.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A command's options, spelled out in code. Reading annotations takes the JVM longer than all of a short command's own
 * work, so the options that every command has, and the commonest commands, are spelled here instead. Nothing of picocli
 * is made before it is asked for ({@link #spec}): a command line that is plainly right is read without it
 * ({@link PlainLine}).
 */
public final class Spelled {
    private final List<SpelledPart> parts = new ArrayList<>();
    private String name = "";
    private String example = "";
    private List<String> description = List.of();

    /** Options that belong to no command yet. */
    public static Spelled options() {
        return new Spelled();
    }

    /**
     * A command without annotations, with an example that ends its help, and with more lines to say below its meaning
     * if it needs them.
     */
    public static Spelled command(String name, String meaning, String example, String... more) {
        Spelled made = new Spelled();
        made.name = name;
        made.example = example;
        made.description = new ArrayList<>(List.of(meaning));
        if (more.length > 0) {
            made.description.add("");
            made.description.addAll(List.of(more));
        }
        return made;
    }

    /** An option with a value; {@code to} gets it where it is given. */
    public <T> Spelled value(String name, String label, String help, Class<T> type, Consumer<T> to) {
        parts.add(new SpelledPart.Value<>(name, label, help, type, to));
        return this;
    }

    /** An option that may be given several times; {@code to} gets each value. */
    public <T> Spelled values(String name, String label, String help, Class<T> type, List<T> to) {
        parts.add(new SpelledPart.Values<>(name, label, help, type, to));
        return this;
    }

    /** One word without an option, which may be left out. */
    public Spelled word(String label, String help, Consumer<String> to) {
        parts.add(new SpelledPart.Word(label, help, to));
        return this;
    }

    /** An option without a value. */
    public Spelled flag(String name, String help, Consumer<Boolean> to) {
        parts.add(new SpelledPart.Flag(name, help, to));
        return this;
    }

    /** All that {@code more} has, after what is here. */
    public Spelled with(Spelled more) {
        parts.addAll(more.parts);
        return this;
    }

    public List<SpelledPart> parts() {
        return List.copyOf(parts);
    }

    /** How picocli reads {@code command}, and prints its help. */
    public CommandSpec spec(GardenCommand command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(command).name(name);
        spec.usageMessage().description(description.toArray(String[]::new)).footer("", "Example:", "  " + example);
        return addTo(spec);
    }

    /** Adds the options to a command that is there. */
    public CommandSpec addTo(CommandSpec spec) {
        parts.forEach(part -> part.addTo(spec));
        return spec;
    }
}

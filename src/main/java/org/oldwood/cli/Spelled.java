package org.oldwood.cli;

import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command's options, spelled out in code. Reading annotations takes the JVM longer than all of a
 * short command's own work, so the options that every command has, and the commonest commands, are
 * spelled here instead.
 */
final class Spelled {
    private final CommandSpec spec;

    private Spelled(CommandSpec spec) {
        this.spec = spec;
    }

    /** Adds to a command that is there. */
    static Spelled on(CommandSpec spec) {
        return new Spelled(spec);
    }

    /**
     * A command without annotations, with an example that ends its help, and with more lines to say
     * below its meaning if it needs them.
     */
    static Spelled command(
            GardenCommand command, String name, String meaning, String example, String... more) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(command).name(name);
        spec.usageMessage()
                .description(description(meaning, more))
                .footer("", "Example:", "  " + example);
        return new Spelled(spec);
    }

    private static String[] description(String meaning, String... more) {
        if (more.length == 0) {
            return new String[] {meaning};
        }
        String[] lines = new String[more.length + 2];
        lines[0] = meaning;
        lines[1] = "";
        System.arraycopy(more, 0, lines, 2, more.length);
        return lines;
    }

    CommandSpec spec() {
        return spec;
    }

    /** An option with a value; {@code to} gets it where it is given. */
    <T> Spelled value(String name, String label, String help, Class<T> type, Consumer<T> to) {
        spec.addOption(
                OptionSpec.builder(name)
                        .paramLabel(label)
                        .description(help)
                        .type(type)
                        .setter(new Into<>(type, to))
                        .build());
        return this;
    }

    /** An option that may be given several times; {@code to} gets each value. */
    <T> Spelled values(String name, String label, String help, Class<T> type, List<T> to) {
        spec.addOption(
                OptionSpec.builder(name)
                        .paramLabel(label)
                        .description(help)
                        .type(List.class)
                        .auxiliaryTypes(type)
                        .getter(new Held(to))
                        .setter(new Kept<>(type, to))
                        .build());
        return this;
    }

    /** One word without an option, which may be left out. */
    Spelled word(String label, String help, Consumer<String> to) {
        spec.addPositional(
                PositionalParamSpec.builder()
                        .arity("0..1")
                        .index("0")
                        .paramLabel(label)
                        .description(help)
                        .type(String.class)
                        .setter(new Into<>(String.class, to))
                        .build());
        return this;
    }

    /** An option without a value. */
    Spelled flag(String name, String help, Consumer<Boolean> to) {
        spec.addOption(
                OptionSpec.builder(name)
                        .description(help)
                        .type(boolean.class)
                        .setter(new Into<>(Boolean.class, to))
                        .build());
        return this;
    }

    /** The option that shows the help and stops. */
    Spelled help() {
        spec.addOption(
                OptionSpec.builder("-h", "--help")
                        .usageHelp(true)
                        .type(boolean.class)
                        .description("show this help and stop")
                        .build());
        return this;
    }

    /** The list itself, which picocli adds to. */
    private record Held(List<?> list) implements IGetter {
        @Override
        @SuppressWarnings({
            "unchecked",
            "TypeParameterUnusedInFormals"
        }) // picocli asks for what it set
        public <T> T get() {
            return (T) list;
        }
    }

    /** Hands on what was given; picocli sets what was not given to nothing first. */
    private record Into<V>(Class<V> type, Consumer<V> to) implements ISetter {
        @Override
        public <T> T set(T value) {
            if (value != null) {
                to.accept(type.cast(value));
            }
            return value;
        }
    }

    /** Keeps what a list was given; picocli gathers the values in a list of its own at first. */
    private record Kept<V>(Class<V> type, List<V> to) implements ISetter {
        @Override
        public <T> T set(T value) {
            if (value instanceof List<?> given && given != to) {
                to.clear();
                given.forEach(each -> to.add(type.cast(each)));
            }
            return value;
        }
    }
}

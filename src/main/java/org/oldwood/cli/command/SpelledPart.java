package org.oldwood.cli.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.oldwood.store.IsoDate;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** One thing that may be given on a command line, to be read by picocli or without it. */
sealed interface SpelledPart {
    /** The option's name with its dashes; empty where it is a word without one. */
    public String name();

    /** Adds it to what picocli reads. */
    public void addTo(CommandSpec spec);

    /** What is to be done where {@code text} is given; empty where that is not plainly a value of it. */
    public Optional<Runnable> given(String text);

    /** Whether a value follows the option. */
    public default boolean hasValue() {
        return true;
    }

    /** Whether it may be given more than once. */
    public default boolean repeats() {
        return false;
    }

    /** An option with a value. */
    public record Value<T>(String name, String label, String help, Class<T> type, Consumer<T> to)
            implements SpelledPart {
        @Override
        public void addTo(CommandSpec spec) {
            spec.addOption(OptionSpec.builder(name)
                    .paramLabel(label)
                    .description(help)
                    .type(type)
                    .setter(new Into<>(type, to))
                    .build());
        }

        @Override
        public Optional<Runnable> given(String text) {
            return plain(type, text).map(value -> () -> to.accept(value));
        }
    }

    /** An option that may be given several times. */
    public record Values<T>(String name, String label, String help, Class<T> type, List<T> to) implements SpelledPart {
        @Override
        public void addTo(CommandSpec spec) {
            spec.addOption(OptionSpec.builder(name)
                    .paramLabel(label)
                    .description(help)
                    .type(List.class)
                    .auxiliaryTypes(type)
                    .getter(new Held(to))
                    .setter(new Kept<>(type, to))
                    .build());
        }

        @Override
        public Optional<Runnable> given(String text) {
            return plain(type, text).map(value -> () -> to.add(value));
        }

        @Override
        public boolean repeats() {
            return true;
        }
    }

    /** An option without a value. */
    public record Flag(String name, String help, Consumer<Boolean> to) implements SpelledPart {
        @Override
        public void addTo(CommandSpec spec) {
            spec.addOption(OptionSpec.builder(name)
                    .description(help)
                    .type(boolean.class)
                    .setter(new Into<>(Boolean.class, to))
                    .build());
        }

        @Override
        public Optional<Runnable> given(String text) {
            return Optional.of(() -> to.accept(true));
        }

        @Override
        public boolean hasValue() {
            return false;
        }
    }

    /** One word without an option. */
    public record Word(String label, String help, Consumer<String> to) implements SpelledPart {
        @Override
        public String name() {
            return "";
        }

        @Override
        public void addTo(CommandSpec spec) {
            spec.addPositional(PositionalParamSpec.builder()
                    .arity("0..1")
                    .index("0")
                    .paramLabel(label)
                    .description(help)
                    .type(String.class)
                    .setter(new Into<>(String.class, to))
                    .build());
        }

        @Override
        public Optional<Runnable> given(String text) {
            return Optional.of(() -> to.accept(text));
        }
    }

    /** The value that {@code text} plainly is; empty for other types and where it is none. */
    private static <T> Optional<T> plain(Class<T> type, String text) {
        try {
            if (type == String.class) {
                return Optional.of(type.cast(text));
            }
            if (type == Path.class) {
                return Optional.of(type.cast(Path.of(text)));
            }
            if (type == LocalDate.class) {
                return Optional.of(type.cast(IsoDate.parse(text)));
            }
            if (type == Double.class) {
                return Optional.of(type.cast(Double.valueOf(text)));
            }
            return constant(type, text);
        } catch (InvalidPathException | DateTimeParseException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static <T> Optional<T> constant(Class<T> type, String text) {
        T[] constants = type.getEnumConstants();
        for (int i = 0; constants != null && i < constants.length; i++) {
            if (((Enum<?>) constants[i]).name().equals(text)) {
                return Optional.of(constants[i]);
            }
        }
        return Optional.empty();
    }

    /** The list itself, which picocli adds to. */
    public record Held(List<?> list) implements IGetter {
        @Override
        @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // picocli asks for what it set
        public <T> T get() {
            return (T) list;
        }
    }

    /** Hands on what was given; picocli sets what was not given to nothing first. */
    public record Into<V>(Class<V> type, Consumer<V> to) implements ISetter {
        @Override
        public <T> T set(T value) {
            if (value != null) {
                to.accept(type.cast(value));
            }
            return value;
        }
    }

    /** Keeps what a list was given; picocli gathers the values in a list of its own at first. */
    public record Kept<V>(Class<V> type, List<V> to) implements ISetter {
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

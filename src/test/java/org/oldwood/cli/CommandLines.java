package org.oldwood.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Command lines made at random of the program's own commands and options, with odd values. */
final class CommandLines {
    private static final List<String> VALUES = List.of("", " ", "0", "-1", "1", "5", "1e999", "99999999999999999999",
            "abc", "bc-1", "upper-terrace", "blackcurrant-1", "blackcurrant-bed", "blackcurrant", "2026-02-30",
            "2026-11-20", "0000-01-01", "-999999999-01-01", "+999999999-12-31", "9999-12-31", "52,-2", "91,181", "52",
            "x/y", "nowhere", ".", "garden.json", "\u0000", "\uD83E\uDED0", "%s%n", "${x}", "1=5,4+=3", "1=,=,",
            "http://127.0.0.1:9/x/", "true", "stool", "-", "--", "@nofile", "NaN", "Infinity", "winter-cut@bc-1@2027",
            "a=b", "sandy-loam", "ground-limestone", "x".repeat(3000));

    private final Random random;
    private final CommandLine all = Main.everything();
    private final List<String> names = Commands.names();

    CommandLines(Random random) { this.random = random; }

    String[] next() {
        List<String> words = new ArrayList<>();
        String name = random.nextInt(12) == 0 ? any(VALUES) : any(names);
        words.add(name);
        CommandLine command = all.getSubcommands().get(name);
        if (command != null && !command.getSubcommands().isEmpty() && random.nextInt(5) > 0) {
            List<String> below = new ArrayList<>(command.getSubcommands().keySet());
            String sub = any(below);
            words.add(sub);
            command = command.getSubcommands().get(sub);
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            add(words, command);
        }
        return words.toArray(String[]::new);
    }

    private void add(List<String> words, CommandLine command) {
        if (command == null || random.nextInt(4) == 0) {
            words.add(any(VALUES));
            return;
        }
        OptionSpec option = any(command.getCommandSpec().options());
        String value = option.arity().max() == 0 ? "" : "=" + any(VALUES);
        words.add(option.longestName() + (random.nextInt(10) == 0 ? "" : value));
    }

    private <T> T any(List<T> among) { return among.get(random.nextInt(among.size())); }
}

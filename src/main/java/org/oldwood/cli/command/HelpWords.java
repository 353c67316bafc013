package org.oldwood.cli.command;

import java.util.List;
import java.util.ListResourceBundle;
import java.util.Map;
import java.util.TreeMap;
import org.oldwood.words.Texts;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The words of the commands' help, from {@code words/help.txt}: under {@code [tasks]} what a command does, under
 * {@code [tasks end]} what stands at the end of its help, under {@code [tasks --bed]} and {@code [tasks WHICH]} what is
 * given to it; under {@code [--json]} what several commands take. What was said in code stays.
 */
public final class HelpWords {
    private HelpWords() {}

    /** Gives a command, named as one types it after {@code oldwood}, and those that belong to it their words. */
    public static void put(CommandLine line, String name) {
        put(line, name, Texts.sections("help.txt"));
    }

    private static void put(CommandLine line, String name, Map<String, String> words) {
        CommandSpec spec = line.getCommandSpec();
        Map<String, String> own = new TreeMap<>();
        if (words.containsKey(name)) {
            lines(own, "usage.description.", words.get(name));
            lines(own, "usage.footer.", words.getOrDefault(name + " end", ""));
        }
        spec.options().forEach(option -> take(own, option, option.longestName().replaceFirst("^-+", ""), name,
                option.longestName(), words));
        spec.positionalParameters().forEach(given -> take(own, given, given.paramLabel() + "[" + given.index() + "]",
                name, given.paramLabel(), words));
        spec.resourceBundle(new ListResourceBundle() {
            @Override
            protected Object[][] getContents() {
                return own.entrySet().stream().map(each -> new Object[]{each.getKey(), each.getValue()})
                        .toArray(Object[][]::new);
            }
        });
        line.getSubcommands().forEach((sub, below) -> put(below, (name + " " + sub).strip(), words));
    }

    private static void lines(Map<String, String> own, String key, String text) {
        List<String> lines = List.of(text.split("\n", -1));
        for (int i = 0; i < lines.size(); i++) {
            own.put(key + i, lines.get(i));
        }
    }

    private static void take(Map<String, String> own, ArgSpec given, String key, String name, String typed,
            Map<String, String> words) {
        String ofItsOwn = name + " " + typed;
        String said = words.get(words.containsKey(ofItsOwn) ? ofItsOwn : typed);
        if (said != null && given.description().length == 0) { own.put(key, said.replace("\n", "%n")); }
    }
}

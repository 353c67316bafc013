package org.oldwood.cli.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a command line that is plainly right, because starting picocli takes a short command as long as much of its
 * work. Whatever it is not sure of it leaves to picocli, untouched: help, other commands, values that look like
 * options, and all that is wrong, so that there is one voice for what to do instead. What it takes, picocli takes in
 * the same way.
 */
final class PlainLine {
    private final Map<String, SpelledPart> parts = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final List<Runnable> given = new ArrayList<>();

    private PlainLine(List<SpelledPart> parts) {
        parts.forEach(part -> this.parts.put(part.name(), part));
    }

    /** Takes {@code arguments}; where false, nothing was taken and picocli is to read them. */
    public static boolean read(List<SpelledPart> parts, List<String> arguments) {
        PlainLine line = new PlainLine(parts);
        Iterator<String> rest = arguments.iterator();
        while (rest.hasNext()) {
            if (!line.takes(rest.next(), rest)) {
                return false;
            }
        }
        line.given.forEach(Runnable::run);
        return true;
    }

    private boolean takes(String argument, Iterator<String> rest) {
        if (!argument.startsWith("-")) {
            return takes(parts.get(""), argument);
        }
        int value = argument.indexOf('=');
        SpelledPart part = parts.get(value < 0 ? argument : argument.substring(0, value));
        if (part == null) {
            return false;
        }
        if (!part.hasValue()) {
            return value < 0 && takes(part, argument);
        }
        if (value < 0 && !rest.hasNext()) {
            return false;
        }
        String text = value < 0 ? rest.next() : argument.substring(value + 1);
        return !text.startsWith("-") && takes(part, text);
    }

    private boolean takes(@Nullable SpelledPart part, String text) {
        if (part == null || text.isEmpty() || (!seen.add(part.name()) && !part.repeats())) {
            return false;
        }
        Optional<Runnable> todo = part.given(text);
        todo.ifPresent(given::add);
        return todo.isPresent();
    }
}

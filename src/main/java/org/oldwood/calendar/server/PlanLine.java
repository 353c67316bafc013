package org.oldwood.calendar.server;

import java.util.Map;
import java.util.stream.Collectors;

/**
 * The one line of a description that says what the plan would have where the person's version stays. It stands last,
 * and is replaced and taken out by us alone.
 *
 * @param line as it stands in the calendar, escaped; empty if there is none
 * @param rest the description without it
 */
record PlanLine(String line, String rest) {
    private static final String START = "[The plan says: ";
    private static final String BREAK = "\\n";

    /** Finds it in a description. */
    static PlanLine in(String description) {
        int start = description.lastIndexOf(START);
        int end = start < 0 ? -1 : description.indexOf(']', start);
        if (end < 0) { return new PlanLine("", description); }
        int before = description.startsWith(BREAK, start - BREAK.length()) ? start - BREAK.length() : start;
        return new PlanLine(description.substring(start, end + 1),
                description.substring(0, before) + description.substring(end + 1));
    }

    /** @param said the plan's versions, by what they are */
    static PlanLine of(Map<String, String> said) {
        return of(said.entrySet().stream().map(one -> one.getKey() + ": " + one.getValue())
                .collect(Collectors.joining("; ")));
    }

    static PlanLine of(String said) {
        String line = said.replace("\\", "").replace(']', ')').replace(",", "\\,").replace(";", "\\;");
        return new PlanLine(line.isEmpty() ? "" : START + line + "]", "");
    }

    /** The same line, with something said before. */
    PlanLine after(String said) {
        PlanLine alone = of(said);
        if (line.isEmpty() || line.startsWith(alone.line.substring(0, alone.line.length() - 1))) {
            return line.isEmpty() ? alone : this;
        }
        return new PlanLine(START + said + "\\; " + line.substring(START.length()), rest);
    }

    boolean names(String word) { return line.contains(" " + word + ": "); }

    String addedTo(String text) { return line.isEmpty() ? text : text.isEmpty() ? line : text + BREAK + line; }
}

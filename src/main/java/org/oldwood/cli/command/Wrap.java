package org.oldwood.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Breaks text into lines and sets rows in columns. A code point counts as one column. */
final class Wrap {
    private static final String GAP = "  ";
    private static final int LEAST_LAST_COLUMN = 20;

    private Wrap() {}

    /**
     * The lines of a paragraph: the first starts with {@code first}, the others with {@code indent} spaces. Line ends
     * in the text are kept; a word longer than a line is not broken.
     */
    public static List<String> lines(String first, int indent, String text) {
        if (text.indexOf('\n') < 0 && width(first) + width(text) <= Out.WIDTH) { return List.of(first + text); }
        List<String> lines = new ArrayList<>();
        String start = first;
        for (String part : text.split("\n", -1)) {
            fill(lines, start, indent, part);
            start = " ".repeat(indent);
        }
        return lines;
    }

    private static void fill(List<String> lines, String first, int indent, String text) {
        StringBuilder line = new StringBuilder(first);
        int used = width(first);
        boolean empty = true;
        for (String word : text.split(" ", -1)) {
            int wide = width(word);
            if (!empty && used + 1 + wide > Out.WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent));
                used = indent;
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            used += wide + (empty ? 0 : 1);
            empty = false;
        }
        lines.add(line.toString());
    }

    /** Rows in columns, told line by line; a row may be shorter than the others. */
    public static void columns(int indent, List<List<String>> rows, Consumer<String> line) {
        List<Integer> widths = widths(rows);
        for (List<String> row : rows) {
            StringBuilder start = new StringBuilder(" ".repeat(indent));
            for (int i = 0; i < row.size() - 1; i++) {
                start.append(pad(row.get(i), widths.get(i))).append(GAP);
            }
            int room = Math.min(start.length(), Out.WIDTH - LEAST_LAST_COLUMN);
            lines(start.toString(), room, row.get(row.size() - 1)).forEach(line);
        }
    }

    private static List<Integer> widths(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size() - 1; i++) {
                if (i == widths.size()) { widths.add(0); }
                widths.set(i, Math.max(widths.get(i), width(row.get(i))));
            }
        }
        return widths;
    }

    private static String pad(String text, int width) { return text + " ".repeat(Math.max(0, width - width(text))); }

    public static int width(String text) { return text.codePointCount(0, text.length()); }
}

package org.oldwood.words;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.regex.Pattern;

/**
 * Keeps what people wrote from steering the terminal that shows it: control characters, which can move the cursor, set
 * the title or forge a line, and the marks that turn the direction of writing, which can show a line other than it is.
 */
public final class Safe {
    private static final String SHOWN = "\uFFFD";
    private static final Pattern STEERING = Pattern
            .compile("[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u202A-\\u202E\\u2066-\\u2069]");

    private Safe() {}

    /** Text for people; each such character becomes {@value #SHOWN}. Line ends and tabs stay. */
    public static String text(String text) {
        return STEERING.matcher(text).replaceAll(SHOWN);
    }

    /**
     * For JSON: such a character can only stand inside a text there, and is written as its number ({@code \u009b}), so
     * that a program reads it as it was. Closing only flushes.
     */
    public static Writer json(Writer beneath) { return new Escaping(beneath); }

    private static final class Escaping extends FilterWriter {
        Escaping(Writer beneath) { super(beneath); }

        @Override
        public void write(int c) throws IOException { write(Character.toString(c), 0, 1); }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            write(new String(text, from, length), 0, length);
        }

        @Override
        public void write(String text, int from, int length) throws IOException {
            out.write(STEERING.matcher(text.substring(from, from + length))
                    .replaceAll(found -> "\\\\u%04x".formatted((int) found.group().charAt(0))));
        }

        @Override
        public void close() throws IOException { flush(); }
    }
}

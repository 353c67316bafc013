package org.oldwood.cli.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.oldwood.store.JsonText;
import org.oldwood.words.Safe;
import org.oldwood.words.Wording;

/**
 * Where a command prints: UTF-8 and {@code \n} line ends on every machine, never a colour. Text is wrapped at
 * {@link #WIDTH} columns.
 */
public final class Out {
    /** Columns that a line of wrapped text has at most. */
    public static final int WIDTH = 80;

    private static final String OBJECT = "{\n";
    private static final String UNITS = "  \"units\": \"SI\",\n";

    private final Writer writer;
    private Wording wording = Wording.METRIC;

    public Out(OutputStream stream) {
        writer = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }

    /** From now on, what a person reads is told so; JSON and tables for other programs only by the half of the earth. */
    public void tellIn(Wording told) {
        wording = told;
    }

    /** A line without the spaces at its end, not wrapped. */
    public Out line(String text) {
        return raw(wording.said(text));
    }

    private Out raw(String line) { return write(line.stripTrailing()).write("\n"); }

    /** An empty line. */
    public Out line() { return write("\n"); }

    /** Text as it is, but for what would steer a terminal; line ends are the caller's. */
    public Out write(String text) {
        try {
            writer.write(Safe.text(text));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A paragraph, wrapped; every line starts with {@code indent} spaces. */
    public Out paragraph(int indent, String text) {
        return hanging(" ".repeat(indent), indent, text);
    }

    /** A paragraph whose first line starts with {@code first}, the others with spaces. */
    public Out hanging(String first, int indent, String text) {
        Wrap.lines(wording.said(first), indent, wording.said(text)).forEach(this::raw);
        return this;
    }

    /** Rows in columns as wide as need be, two spaces apart; the last column is wrapped. */
    public Out columns(int indent, List<List<String>> rows) {
        Wrap.columns(indent, rows.stream().map(row -> row.stream().map(wording::said).toList()).toList(), this::raw);
        return this;
    }

    /** A titled list; nothing where it is empty. */
    public void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            line(title);
            lines.forEach(line -> hanging("  - ", 4, line));
        }
    }

    /** A record as JSON, indented, with a line end after it; it says in which units its amounts are. */
    public Out json(Record value) {
        String text = JsonText.indented(value, wording::ofItsHalf);
        try (Writer json = Safe.json(writer)) {
            json.write(text.startsWith(OBJECT) ? OBJECT + UNITS + text.substring(OBJECT.length()) : text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line();
    }

    public void flush() {
        try {
            writer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

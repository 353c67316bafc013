package org.oldwood.cli.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.oldwood.store.JsonText;
import org.oldwood.store.JsonWriter;
import org.oldwood.words.Safe;

/**
 * Where a command prints: UTF-8 and {@code \n} line ends on every machine, never a colour. Text is wrapped at
 * {@link #WIDTH} columns.
 */
public final class Out {
    /** Columns that a line of wrapped text has at most. */
    public static final int WIDTH = 80;

    private final Writer writer;

    public Out(OutputStream stream) {
        writer = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }

    /** A line as it is, without the spaces at its end. */
    public Out line(String text) {
        return write(text.stripTrailing()).write("\n");
    }

    /** An empty line. */
    public Out line() {
        return write("\n");
    }

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
        Wrap.lines(first, indent, text).forEach(this::line);
        return this;
    }

    /** Rows in columns as wide as need be, two spaces apart; the last column is wrapped. */
    public Out columns(int indent, List<List<String>> rows) {
        Wrap.columns(indent, rows, this::line);
        return this;
    }

    /** A record as JSON, indented, with a line end after it. */
    public Out json(Record value) {
        try (Writer json = Safe.json(writer)) {
            json.write(JsonText.indented(value));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line();
    }

    /** One JSON value, indented, with a line end after it. */
    public Out json(Consumer<JsonWriter> value) {
        JsonWriter json = JsonWriter.indented(Safe.json(writer));
        value.accept(json);
        json.flush();
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

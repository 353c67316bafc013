package org.oldwood.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Collection;

/** Writes JSON in the order of the calls, over Jackson's generator. Numbers that are whole have no point. */
public final class JsonWriter {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final Separators COLONS =
            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
    private final JsonGenerator out;

    JsonWriter(JsonGenerator out) {
        this.out = out;
    }

    /** Writes indented by two spaces, with {@code \n}, for files and {@code --json}. */
    public static JsonWriter indented(Writer writer) {
        try {
            JsonGenerator out = FACTORY.createGenerator(writer);
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            out.setPrettyPrinter(new DefaultPrettyPrinter()
                    .withSeparators(COLONS)
                    .withObjectIndenter(lines)
                    .withArrayIndenter(lines));
            return new JsonWriter(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes on one line. */
    public static JsonWriter oneLine(Writer writer) {
        try {
            return new JsonWriter(FACTORY.createGenerator(writer));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The value as one line of text. */
    public static String line(Json value) {
        StringWriter text = new StringWriter();
        JsonWriter writer = oneLine(text);
        writer.json(value);
        writer.flush();
        return text.toString();
    }

    private interface Step {
        void run() throws IOException;
    }

    private JsonWriter step(Step step) {
        try {
            step.run();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public JsonWriter object() {
        return step(out::writeStartObject);
    }

    public JsonWriter object(String key) {
        return step(() -> out.writeObjectFieldStart(key));
    }

    public JsonWriter endObject() {
        return step(out::writeEndObject);
    }

    public JsonWriter array() {
        return step(out::writeStartArray);
    }

    public JsonWriter array(String key) {
        return step(() -> out.writeArrayFieldStart(key));
    }

    public JsonWriter endArray() {
        return step(out::writeEndArray);
    }

    public JsonWriter put(String key, String value) {
        return step(() -> out.writeStringField(key, value));
    }

    public JsonWriter put(String key, boolean value) {
        return step(() -> out.writeBooleanField(key, value));
    }

    public JsonWriter put(String key, long value) {
        return step(() -> out.writeNumberField(key, value));
    }

    /** A number; a whole one is written without a point. */
    public JsonWriter put(String key, double value) {
        return step(() -> {
            out.writeFieldName(key);
            out.writeNumber(Fields.plain(value));
        });
    }

    public JsonWriter put(String key, Collection<String> values) {
        array(key);
        values.forEach(this::add);
        return endArray();
    }

    public JsonWriter put(String key, Json value) {
        step(() -> out.writeFieldName(key));
        return json(value);
    }

    public JsonWriter add(long value) {
        return step(() -> out.writeNumber(value));
    }

    public JsonWriter add(String value) {
        return step(() -> out.writeString(value));
    }

    public JsonWriter json(Json value) {
        if (value instanceof Json.Obj object) {
            object();
            object.members().forEach(this::put);
            return endObject();
        }
        if (value instanceof Json.Arr array) {
            array();
            array.items().forEach(this::json);
            return endArray();
        }
        return step(() -> scalar(value));
    }

    private void scalar(Json value) throws IOException {
        if (value instanceof Json.Text text) {
            out.writeString(text.value());
        } else if (value instanceof Json.Num num) {
            out.writeNumber(num.written());
        } else if (value instanceof Json.Bool bool) {
            out.writeBoolean(bool.value());
        } else {
            out.writeNull();
        }
    }

    /** Hands on what was written so far; does not close the writer beneath. */
    public void flush() {
        step(out::flush);
    }
}

package org.oldwood.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Writes records as JSON, by Jackson: a record's components in their order under their own names, days as ISO dates,
 * enums in lower case with hyphens, whole numbers without a point, what is absent left out. This is how every command
 * answers {@code --json}.
 */
public final class JsonText {
    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");
    private static final JsonFactory FACTORY = new JsonFactory();

    /** Made when a record is written first: it takes a tenth of a second, and trees of JSON are written without. */
    private static final class Mapping {
        static final JsonMapper MAPPER = JsonMapper.builder().addModule(new Jdk8Module())
                .addModule(new SimpleModule()
                        .addSerializer(new Plain<>(LocalDate.class, (value, out) -> out.writeString(value.toString())))
                        .addSerializer(new Plain<>(Double.class, (value, out) -> out.writeNumber(Fields.plain(value))))
                        .addSerializer(new Plain<>(double.class, (value, out) -> out.writeNumber(Fields.plain(value))))
                        .addSerializer(new Plain<>(Enum.class, (value, out) -> out.writeString(word(value))))
                        .addSerializer(new Plain<>(Json.class, JsonText::json)))
                .defaultPropertyInclusion(JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, null)).build();
    }

    private interface Writing<T> {
        void write(T value, JsonGenerator out) throws IOException;
    }

    private static final class Plain<T> extends StdSerializer<T> {
        private static final long serialVersionUID = 1;
        private final transient Writing<T> writing;

        Plain(Class<T> kind, Writing<T> writing) {
            super(kind);
            this.writing = writing;
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
            writing.write(value, out);
        }
    }

    private JsonText() {}

    private static String word(Enum<?> value) { return value.name().toLowerCase(Locale.ROOT).replace('_', '-'); }

    private static void json(Json value, JsonGenerator out) throws IOException {
        if (value instanceof Json.Obj object) {
            out.writeStartObject();
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                out.writeFieldName(member.getKey());
                json(member.getValue(), out);
            }
            out.writeEndObject();
        } else if (value instanceof Json.Arr array) {
            out.writeStartArray();
            for (Json item : array.items()) {
                json(item, out);
            }
            out.writeEndArray();
        } else if (value instanceof Json.Text text) {
            out.writeString(text.value());
        } else if (value instanceof Json.Num num) {
            out.writeNumber(num.written());
        } else if (value instanceof Json.Bool bool) {
            out.writeBoolean(bool.value());
        } else {
            out.writeNull();
        }
    }

    /** Indented by two spaces, with {@code \n} and without one at the end. */
    public static String indented(Object value) {
        return indented(value, text -> text);
    }

    /** The same with every text, but no name, told in its reader's own way. */
    public static String indented(Object value, UnaryOperator<String> own) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withSeparators(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(LINES).withArrayIndenter(LINES);
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonGeneratorDelegate(FACTORY.createGenerator(text)) {
            @Override
            public void writeString(String word) throws IOException { super.writeString(own.apply(word)); }
        }) {
            Mapping.MAPPER.writer(printer).writeValue(out, value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** What a person will read of it, as JSON with every text told in their own way. */
    public static JsonNode told(Object value, UnaryOperator<String> own) {
        try {
            return Mapping.MAPPER.readTree(indented(value, own));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String line(Json value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            json(value, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    public static String line(Object value) {
        try {
            return Mapping.MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}

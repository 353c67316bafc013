package org.oldwood.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads JSON into {@link Json} values that keep their place, which is why Jackson does not bind them. Depth is limited
 * to 100 levels, a string to 1 MB.
 */
public final class JsonReader {
    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(100).maxStringLength(1_000_000).build())
            .build();

    private final JsonParser parser;
    private final String file;
    private final int lineOffset;
    private final Map<String, String> words;

    private JsonReader(JsonParser parser, String file, int lineOffset, Map<String, String> words) {
        this.parser = parser;
        this.file = file;
        this.lineOffset = lineOffset;
        this.words = words;
    }

    /** Reads a whole file; a problem is added and nothing returned where it is not JSON. */
    public static Optional<Json> read(InputStream in, String file, Problems problems) throws IOException {
        try (JsonParser parser = FACTORY.createParser(in)) {
            return new JsonReader(parser, file, 0, new HashMap<>()).whole(problems);
        }
    }

    /** Reads one line of a file of lines; {@code line} counts from 1. */
    public static Optional<Json> readLine(String text, String file, int line, Problems problems) {
        return readLine(new Journal.Line(line, text), file, new HashMap<>(), problems);
    }

    /** Reads one of many lines; texts that come again, other than ids, are kept once in {@code words}. */
    public static Optional<Json> readLine(Journal.Line line, String file, Map<String, String> words,
            Problems problems) {
        try (JsonParser parser = FACTORY.createParser(line.text())) {
            return new JsonReader(parser, file, line.number() - 1, words).whole(problems);
        } catch (IOException e) {
            throw new UncheckedIOException("a text cannot fail to be read", e);
        }
    }

    private String kept(String text) throws IOException {
        String known = "id".equals(parser.currentName()) ? null : words.putIfAbsent(text, text);
        return known == null ? text : known;
    }

    private Optional<Json> whole(Problems problems) throws IOException {
        try {
            if (parser.nextToken() == null) {
                problems.tell("empty-file json", Place.of(file));
                return Optional.empty();
            }
            Json value = value(here());
            if (parser.nextToken() != null) {
                problems.tell("more-after-end", here());
                return Optional.empty();
            }
            return Optional.of(value);
        } catch (JsonProcessingException e) {
            var at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
            Place place = Place.of(file, at.getLineNr() + lineOffset, at.getColumnNr(), "");
            String message = e.getOriginalMessage().split("\n", 2)[0];
            boolean twice = message.startsWith("Duplicate field");
            problems.tell(twice ? "duplicate-key" : "not-json", place,
                    twice ? message.substring(message.indexOf('\'')) : message);
            return Optional.empty();
        }
    }

    private Place here() {
        var at = parser.currentTokenLocation();
        return Place.of(file, at.getLineNr() + lineOffset, at.getColumnNr(), "");
    }

    private Json value(Place place) throws IOException {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(place);
            case START_ARRAY -> array(place);
            case VALUE_STRING -> new Json.Text(place, kept(parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                new Json.Num(place, parser.getDoubleValue(), kept(parser.getText()));
            case VALUE_TRUE -> new Json.Bool(place, true);
            case VALUE_FALSE -> new Json.Bool(place, false);
            default -> new Json.Nothing(place);
        };
    }

    private Json object(Place place) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>(4);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            var at = parser.currentTokenLocation();
            Place inside = place.of(key, at.getLineNr() + lineOffset, at.getColumnNr());
            members.put(key, value(inside));
        }
        return new Json.Obj(place, members);
    }

    private Json array(Place place) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            var at = parser.currentTokenLocation();
            Place inside = place.of(items.size(), at.getLineNr() + lineOffset, at.getColumnNr());
            items.add(value(inside));
        }
        return new Json.Arr(place, items);
    }
}

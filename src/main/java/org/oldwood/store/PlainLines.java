package org.oldwood.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads the lines that most are, straight from their octets: objects of texts, numbers and objects of these, in ASCII,
 * where a column is an octet. Of a line that holds anything else, or has anything wrong, it makes nothing:
 * {@link JsonReader} reads that one and words what is wrong.
 */
final class PlainLines {
    /** Looks for no key that is there twice: members are put together one by one and show it. */
    private static final JsonFactory FACTORY = new JsonFactory();

    /** An entry holds stems by age, and these hold numbers. */
    private static final int LEVELS = 2;

    /** Far from any limit on the length of a text. */
    private static final int LONGEST = 10_000;

    private final byte[] bytes;
    private final String file;

    /** Texts that come again, other than ids, are kept once. */
    private final Map<String, String> words = new HashMap<>();

    private final Members.Gathering[] gatherings = new Members.Gathering[LEVELS];

    PlainLines(byte[] bytes, String file) {
        this.bytes = bytes;
        this.file = file;
        for (int i = 0; i < LEVELS; i++) {
            gatherings[i] = new Members.Gathering();
        }
    }

    /** The line from {@code start} to before {@code end}; nothing where it is not plain. */
    @Nullable
    Json read(int line, int start, int end) {
        if (end - start > LONGEST || !isPlainText(start, end)) {
            return null;
        }
        try (JsonParser parser = FACTORY.createParser(bytes, start, end - start)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return null;
            }
            Json value = object(parser, Place.of(file, line, column(parser), ""), 0);
            return value != null && parser.nextToken() == null ? value : null;
        } catch (IOException e) {
            // the thorough reader finds it again, and says what and where
            return null;
        }
    }

    /** In ASCII, and without the line end of an old system, which would count as one. */
    private boolean isPlainText(int start, int end) {
        for (int i = start; i < end; i++) {
            if (bytes[i] < 0 || bytes[i] == '\r') {
                return false;
            }
        }
        return true;
    }

    private static int column(JsonParser parser) {
        return parser.currentTokenLocation().getColumnNr();
    }

    private @Nullable Json object(JsonParser parser, Place place, int level) throws IOException {
        if (level == LEVELS) {
            return null;
        }
        Members.Gathering members = gatherings[level];
        members.clear();
        int line = place.line();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken token = parser.nextToken();
            Json value = value(parser, token, place.of(key, line, column(parser)), key, level);
            if (value == null || !members.putNew(key, value)) {
                return null;
            }
        }
        return new Json.Obj(place, members.take());
    }

    private @Nullable Json value(JsonParser parser, JsonToken token, Place place, String key, int level)
            throws IOException {
        return switch (token) {
            case START_OBJECT -> object(parser, place, level + 1);
            case VALUE_STRING -> new Json.Text(place, key.equals("id") ? parser.getText() : kept(parser.getText()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                new Json.Num(place, parser.getDoubleValue(), kept(parser.getText()));
            default -> null;
        };
    }

    private String kept(String text) {
        String known = words.putIfAbsent(text, text);
        return known == null ? text : known;
    }
}

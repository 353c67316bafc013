package org.oldwood.garden;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.oldwood.store.Archive;
import org.oldwood.store.Json;
import org.oldwood.store.JsonText;
import org.oldwood.store.Place;

/**
 * Makes journal entries to be written. An entry's id is {@code e-} and the first 12 hexadecimal digits of SHA-256 over
 * the id before it and its own content, so that the same notes in the same order have the same ids, and the same note
 * twice has two. Of those noted at once it goes over the content of all; the second has {@code -2} behind it, and so on.
 */
public final class EntryWriter {
    private static final int ID_DIGITS = 12;

    private EntryWriter() {}

    /**
     * The JSON object of an entry; not yet checked.
     *
     * @param values what it says, by key, in any order; {@code note} may be among them
     */
    public static Json.Obj entry(String id, LocalDate date, EntryKind kind, Map<String, Json> values, Place place) {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put("id", new Json.Text(place.at("id"), id));
        members.putAll(content(date, kind, values, place).members());
        return new Json.Obj(place, members);
    }

    /** What an entry without its id says, as the journal has it; ids are made from it. */
    public static String line(LocalDate date, EntryKind kind, Map<String, Json> values, Place place) {
        return JsonText.line(content(date, kind, values, place));
    }

    /** Whether a text could be an entry's id. */
    public static boolean isId(String text) {
        return text.matches("[A-Za-z0-9-]{1,64}");
    }

    /**
     * The id of the entry that was sent under a key: it follows from the key alone, so that sending it twice notes it
     * once.
     *
     * @param key what the sender calls it, unique among all that it sends
     */
    public static String idOfKey(String key) { return id("key", key); }

    private static Json.Obj content(LocalDate date, EntryKind kind, Map<String, Json> values, Place place) {
        Map<String, Json> content = new LinkedHashMap<>();
        content.put("date", new Json.Text(place.at("date"), date.toString()));
        content.put("entry", new Json.Text(place.at("entry"), kind.key()));
        for (EntryField field : kind.fields()) {
            Json value = values.get(field.key());
            if (value != null) { content.put(field.key(), value); }
        }
        values.forEach(content::putIfAbsent);
        return new Json.Obj(place, content);
    }

    /**
     * The id of the first of some entries noted at once.
     *
     * @param before the id of the entry before it, empty for none
     * @param content what they say, a {@link #line} each
     */
    public static String id(String before, String content) {
        byte[] sum = Archive.sha256().digest((before + content).getBytes(StandardCharsets.UTF_8));
        return "e-" + HexFormat.of().formatHex(sum).substring(0, ID_DIGITS);
    }
}

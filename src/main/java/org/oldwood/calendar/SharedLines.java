package org.oldwood.calendar;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/**
 * Content lines that stand in several components, made once: an item's event and its to-do differ
 * in few lines, and the items of a bed often say the same. A line does not depend on those before
 * it, so the octets can be copied as they are.
 */
final class SharedLines {
    /** Octets kept. Items that say the same come near each other, so little is made twice. */
    private static final int MOST = 4 << 20;

    private final Layout layout;
    private final Map<Object, byte[]> made = new HashMap<>();
    private final ByteArrayOutputStream octets = new ByteArrayOutputStream();
    private final ContentLines lines = new ContentLines(octets);
    private int size;

    private record Text(String name, String value) {}

    private record Description(String text, Item.Days days) {}

    private record Where(String category, String place) {}

    SharedLines(Layout layout) {
        this.layout = layout;
    }

    Layout layout() {
        return layout;
    }

    /** A property with a text; no line where it is empty. */
    byte[] text(String name, String value) throws IOException {
        Text key = new Text(name, value);
        byte[] known = made.get(key);
        if (known != null) {
            return known;
        }
        lines.text(name, value);
        return keep(key);
    }

    /** The window in words, and what the item says. */
    byte[] description(String text, Item.Days days) throws IOException {
        Description key = new Description(text, days);
        byte[] known = made.get(key);
        if (known != null) {
            return known;
        }
        lines.text("DESCRIPTION", WindowWords.before(text, days, layout));
        return keep(key);
    }

    /** The craft, the place, and the craft's colour (RFC 7986, 5.9). */
    byte[] where(String category, String place) throws IOException {
        Where key = new Where(category, place);
        byte[] known = made.get(key);
        if (known != null) {
            return known;
        }
        lines.text("CATEGORIES", category);
        lines.text("LOCATION", place);
        lines.line("COLOR", Colours.of(category));
        return keep(key);
    }

    byte[] stamp(Stamp stamp) throws IOException {
        byte[] known = made.get(stamp);
        if (known != null) {
            return known;
        }
        String changed = Stamp.utc(stamp.changed());
        lines.line("DTSTAMP", changed);
        lines.line("LAST-MODIFIED", changed);
        lines.line("SEQUENCE", Integer.toString(stamp.sequence()));
        return keep(stamp);
    }

    private byte[] keep(Object key) throws IOException {
        lines.flush();
        byte[] now = octets.toByteArray();
        octets.reset();
        size += now.length;
        if (size > MOST) {
            made.clear();
            size = now.length;
        }
        made.put(key, now);
        return now;
    }
}

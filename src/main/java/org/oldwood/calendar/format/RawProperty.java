package org.oldwood.calendar.format;

import java.util.Locale;

/**
 * One content line as it stands, unfolded: name, parameters and value are not interpreted, so that what a client wrote
 * can be handed back as it was.
 *
 * @param name in upper case; names do not differ by case (RFC 5545, 2)
 * @param valueAt where the value begins
 */
public record RawProperty(String name, String line, int valueAt) {

    /** A line without a colon outside quotes has an empty value. */
    public static RawProperty of(String line) {
        int nameEnd = line.length();
        boolean isQuoted = false;
        int i = 0;
        for (; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                isQuoted = !isQuoted;
            } else if (!isQuoted && (c == ':' || c == ';')) {
                nameEnd = Math.min(nameEnd, i);
                if (c == ':') { break; }
            }
        }
        String name = line.substring(0, nameEnd).strip().toUpperCase(Locale.ROOT);
        return new RawProperty(name, line, Math.min(i + 1, line.length()));
    }

    public String value() { return line.substring(valueAt); }
}

package org.oldwood.calendar.format;

import java.util.regex.Pattern;

/**
 * Makes people's text fit for a calendar: line ends become line feeds, control characters go, half characters become
 * the replacement sign, ends are trimmed. Readers have been seen to drop an item or refuse a whole file for each of
 * these.
 */
public final class Hygiene {
    /** Carriage return, next line, and the two separators of Unicode. */
    private static final Pattern LINE_END = Pattern.compile("\r\n?|[\\x{85}\\x{2028}\\x{2029}]");

    /** Controls other than tab (RFC 5545, 3.1: not in a text), byte order marks, non-characters. */
    private static final Pattern UNWANTED = Pattern.compile("[\\p{Cc}\\x{FEFF}\\x{FFFE}\\x{FFFF}&&[^\t\n]]");

    private static final Pattern HALF_CHARACTER = Pattern.compile("\\p{Cs}");

    private Hygiene() {}

    /** Text of several lines. */
    public static String text(String raw) {
        String lines = UNWANTED.matcher(LINE_END.matcher(raw).replaceAll("\n")).replaceAll("");
        return HALF_CHARACTER.matcher(lines).replaceAll("\uFFFD").strip();
    }

    /** Text of one line: line ends and tabs become spaces. */
    public static String line(String raw) {
        return text(raw).replace('\n', ' ').replace('\t', ' ');
    }

    /**
     * One plain word: letters, digits and hyphens. A reader that splits categories at escaped commas, or a client that
     * trims them, then has nothing to get wrong.
     */
    public static String word(String raw) { return raw.strip().replaceAll("[^\\p{L}\\p{Nd}]", "-"); }
}

package org.oldwood.calendar.format;

import java.nio.charset.StandardCharsets;

/**
 * Makes people's text fit for a calendar: line ends become line feeds, control characters go, half characters become
 * the replacement sign, ends are trimmed. Readers have been seen to drop an item or refuse a whole file for each of
 * these.
 */
public final class Hygiene {
    private static final char REPLACEMENT = '\uFFFD';

    /** Which of the first 256 characters may stay as they are. */
    private static final boolean[] STAYS = new boolean[0x100];

    static {
        for (char c = 0; c < STAYS.length; c++) {
            STAYS[c] = c == '\n' || !(isLineEnd(c) || isUnwanted(c));
        }
    }

    /** Which of them a line may have; a question mark may stand for what is none of them. */
    private static final boolean[] STAYS_IN_LINE = STAYS.clone();

    static {
        for (char c : new char[] {'\n', '\t', '?'}) {
            STAYS_IN_LINE[c] = false;
        }
    }

    private Hygiene() {}

    /** Whether one of the first 256 characters may stay as it is in a text. */
    public static boolean stays(char c) {
        return STAYS[c];
    }

    /** Text of several lines. */
    public static String text(String raw) {
        String trimmed = raw.strip();
        return isClean(trimmed) ? trimmed : clean(trimmed).strip();
    }

    /** Text of one line: line ends and tabs become spaces. */
    public static String line(String raw) {
        String trimmed = raw.strip();
        return isCleanLine(trimmed) ? trimmed : text(raw).replace('\n', ' ').replace('\t', ' ');
    }

    /** Octets of ISO 8859-1 are copied as a whole, characters one by one. */
    private static boolean isCleanLine(String line) {
        byte[] octets = line.getBytes(StandardCharsets.ISO_8859_1);
        for (byte octet : octets) {
            if (!STAYS_IN_LINE[octet & 0xFF]) {
                return false;
            }
        }
        return true;
    }

    /**
     * One plain word: letters, digits and hyphens. A reader that splits categories at escaped commas, or a client that
     * trims them, then has nothing to get wrong.
     */
    public static String word(String raw) {
        String word = raw.strip();
        return isWord(word) ? word : hyphened(word);
    }

    private static boolean isWord(String word) {
        byte[] octets = word.getBytes(StandardCharsets.ISO_8859_1);
        for (byte c : octets) {
            if ((c < 'a' || c > 'z') && c != '-') {
                return false;
            }
        }
        return true;
    }

    private static String hyphened(String words) {
        StringBuilder word = new StringBuilder();
        words.codePoints().map(c -> Character.isLetterOrDigit(c) ? c : '-').forEach(word::appendCodePoint);
        return word.toString();
    }

    /** Whether {@link #text} would leave all its characters as they are. */
    public static boolean isClean(String text) {
        char[] characters = text.toCharArray();
        for (char c : characters) {
            boolean stays = c < STAYS.length ? STAYS[c] : !(isLineEnd(c) || isUnwanted(c) || Character.isSurrogate(c));
            if (!stays) {
                return false;
            }
        }
        return true;
    }

    private static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        int i = 0;
        while (i < text.length()) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\r' && i < text.length() && text.charAt(i) == '\n') {
                continue;
            }
            if (c <= 0xFFFF && isLineEnd((char) c)) {
                clean.append('\n');
            } else if (c <= 0xFFFF && Character.isSurrogate((char) c)) {
                clean.append(REPLACEMENT);
            } else if (c > 0xFFFF || !isUnwanted((char) c)) {
                clean.appendCodePoint(c);
            }
        }
        return clean.toString();
    }

    /** Line feed, carriage return, next line, and the two separators of Unicode. */
    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
    }

    /** Controls other than tab (RFC 5545, 3.1: not in a text), byte order marks, non-characters. */
    private static boolean isUnwanted(char c) {
        return (c < ' ' && c != '\t' && c != '\n')
                || (c >= '\u007F' && c <= '\u009F')
                || c == '\uFEFF'
                || c >= '\uFFFE';
    }
}

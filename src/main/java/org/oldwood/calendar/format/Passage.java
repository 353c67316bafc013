package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import org.jspecify.annotations.Nullable;

/**
 * A piece of text and what calendars need of it: its octets escaped by RFC 5545, 3.3.11, and what it does to a hash.
 * Both are worked out once, because the same lines stand in very many items.
 */
public final class Passage {
    private static final int ESCAPED = 1;
    private static final int LATIN = 2;
    private static final int UNFIT = 4;

    /** It may also stand for a character beyond the first 256. */
    private static final int QUESTION = 8;

    /** What is to be thought of where one of the first 256 characters occurs. */
    private static final byte[] KINDS = new byte[0x100];

    static {
        for (char c = 0; c < KINDS.length; c++) {
            KINDS[c] = (byte) (Hygiene.stays(c) ? (c < 0x80 ? 0 : LATIN) : UNFIT);
        }
        for (char c : new char[] {'\\', ';', ',', '\n'}) {
            KINDS[c] |= ESCAPED;
        }
        KINDS['?'] |= QUESTION;
    }

    private final String text;
    private final byte[] escaped;
    private final boolean isFit;

    /** One octet a character; none where a character needs more. */
    private final byte @Nullable [] octets;

    private @Nullable Hashes hashes;
    private boolean wasHashed;

    public Passage(String text) {
        this.text = text;
        byte[] narrow = text.getBytes(ISO_8859_1);
        int kinds = kinds(narrow);
        boolean isWide = (kinds & QUESTION) != 0 && isWide(text);
        octets = isWide ? null : narrow;
        isFit = isWide ? Hygiene.isClean(text) : (kinds & UNFIT) == 0;
        byte[] all = isWide || (kinds & ~(ESCAPED | QUESTION)) != 0 ? text.getBytes(UTF_8) : narrow;
        escaped = isWide || (kinds & ESCAPED) != 0 ? escaped(all) : all;
    }

    private static int kinds(byte[] octets) {
        int kinds = 0;
        for (byte octet : octets) {
            kinds |= KINDS[octet & 0xFF];
        }
        return kinds;
    }

    private static boolean isWide(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 0xFF) {
                return true;
            }
        }
        return false;
    }

    private static byte[] escaped(byte[] plain) {
        int more = 0;
        for (byte octet : plain) {
            more += isEscaped(octet) ? 1 : 0;
        }
        if (more == 0) {
            return plain;
        }
        byte[] escaped = new byte[plain.length + more];
        int at = 0;
        for (byte octet : plain) {
            if (isEscaped(octet)) {
                escaped[at++] = '\\';
            }
            escaped[at++] = octet == '\n' ? (byte) 'n' : octet;
        }
        return escaped;
    }

    private static boolean isEscaped(byte octet) {
        return octet >= 0 && (KINDS[octet] & ESCAPED) != 0;
    }

    public String text() {
        return text;
    }

    /** In UTF-8, escaped and not folded. */
    public byte[] escaped() {
        return escaped;
    }

    /** Whether {@link Hygiene} would leave all its characters as they are. */
    public boolean isFit() {
        return isFit;
    }

    public boolean beginsBlank() {
        return text.isEmpty() || Character.isWhitespace(text.charAt(0));
    }

    public boolean endsBlank() {
        return text.isEmpty() || Character.isWhitespace(text.charAt(text.length() - 1));
    }

    /** The hash with all characters of this text added. */
    public long addTo(long hash) {
        byte[] all = octets;
        if (all == null) {
            return Fnv.characters(hash, text);
        }
        if (!wasHashed) {
            wasHashed = true;
            return Fnv.octets(hash, all, 0, all.length);
        }
        Hashes known = hashes;
        if (known == null) {
            known = new Hashes(all);
            hashes = known;
        }
        return known.add(hash);
    }

    /**
     * What a text does to any hash. A step of FNV-1a changes the low eight bits of the hash by the character and
     * multiplies. What is changed depends on those eight bits alone, and so do the next eight; so {@code n} characters
     * turn {@code h} into {@code h} times the prime's {@code n}th power, plus a number that only the low eight bits of
     * {@code h} decide.
     */
    private static final class Hashes {
        private final byte[] octets;
        private final long power;
        private final long[] added = new long[0x100];
        private final boolean[] isKnown = new boolean[0x100];

        Hashes(byte[] octets) {
            this.octets = octets;
            long product = 1;
            for (int i = 0; i < octets.length; i++) {
                product *= Fnv.PRIME;
            }
            power = product;
        }

        long add(long hash) {
            int low = (int) hash & 0xFF;
            long scaled = hash * power;
            if (!isKnown[low]) {
                added[low] = Fnv.octets(hash, octets, 0, octets.length) - scaled;
                isKnown[low] = true;
            }
            return scaled + added[low];
        }
    }
}

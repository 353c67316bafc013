package org.oldwood.crop;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** How a figure came into the data. It goes with the figure wherever the figure is shown. */
public enum Seen {
    /** The text that gives it was read. */
    READ("read"),
    /** Seen quoted in another work, which the source names. */
    QUOTED("quoted"),
    /** Worked out by us from read figures, or by our own code: never outside evidence. */
    COMPUTED("computed"),
    /** Remembered only; never seen in print for this project. */
    MEMORY("from memory"),
    /** A fact of the trade without a printed source. */
    COMMON_PRACTICE("common practice"),
    /** Our own choice, where nothing was found. */
    ASSUMED("our assumption");

    private static final List<String> KEYS = Stream.of(values()).map(Seen::key).toList();

    private final String words;
    private final String key;

    Seen(String words) {
        this.words = words;
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** For people: {@code read}, {@code from memory}, {@code our assumption}. */
    public String words() { return words; }

    /** Beside a figure: nothing where it was read in print, else {@code (our assumption)} and the like. */
    public String beside() {
        return this == READ ? "" : " (%s)".formatted(words);
    }

    /** As it stands in the data: {@code read}, {@code memory}, {@code common-practice}. */
    public String key() {
        return key;
    }

    public static List<String> keys() { return KEYS; }

    /** The mark written as {@code key}; the key must be one of {@link #keys()}. */
    public static Seen parse(String key) {
        return values()[KEYS.indexOf(key)];
    }
}

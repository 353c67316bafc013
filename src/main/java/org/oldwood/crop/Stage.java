package org.oldwood.crop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A principal stage of growth, with its BBCH code. Listed in the order of one growing season, from the winter's rest
 * before the crop to the leaf fall after it.
 *
 * <p>Source of the codes: BBCH Monograph, 2nd edition 2001, currants; 11 as the German Weather Service ties leaf
 * unfolding to it; 93 and 97 from memory.
 */
public enum Stage {
    /** Leaves are off, buds at rest: the season's beginning. */
    DORMANT("00", "dormant", "all leaves off, buds shut under dark scales"),
    BUD_SWELL("03", "bud swell", "buds fat, the edges of their scales pale"),
    BUD_BURST("07", "bud burst", "the first green or red tips just show"),
    FIRST_LEAVES("11", "first leaves", "the first leaves stand unfolded"),
    FIRST_FLOWER("60", "first flower", "the first flowers are open"),
    FULL_FLOWER("65", "full flower", "half of the flowers are open, the first petals drop"),
    PETAL_FALL("69", "petal fall", "all petals are down"),
    RIPE("87", "ripe for picking", "most berries have the colour of the variety"),
    LEAF_FALL_BEGINS("93", "leaf fall begins", "the first leaves drop"),
    LEAF_FALL_DONE("97", "leaf fall done", "all leaves are down");

    private static final List<Stage> ALL = List.of(values());
    private static final List<String> KEYS = ALL.stream().map(Stage::key).toList();

    private final String key;
    private final String bbch;
    private final String words;
    private final String look;

    Stage(String bbch, String words, String look) {
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
        this.bbch = bbch;
        this.words = words;
        this.look = look;
    }

    /** The two digits of the BBCH scale. */
    public String bbch() { return bbch; }

    public String words() { return words; }

    /** How a bush looks then; said to be so once half of the plants show it. */
    public String look() { return look; }

    /** As it stands in the data and on the command line: {@code bud-swell}. */
    public String key() { return key; }

    public static List<String> keys() { return KEYS; }

    /** The stage of a key or of two BBCH digits. */
    public static Optional<Stage> find(String keyOrCode) {
        for (Stage stage : ALL) {
            if (stage.key.equals(keyOrCode) || stage.bbch.equals(keyOrCode)) { return Optional.of(stage); }
        }
        return Optional.empty();
    }
}

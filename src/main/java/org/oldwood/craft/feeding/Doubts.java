package org.oldwood.craft.feeding;

import java.util.Optional;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.crop.Key;
import org.oldwood.words.Words;

/**
 * When what somebody noted is so much or so little that it was probably meant otherwise: kilograms written as grams, or
 * the other way. A doubt is a question; the entry counts as it stands.
 *
 * @param mostN most nitrogen free in the first year, g/m²
 * @param most most of a feed, g/m²
 * @param mostBulky most of a manure or compost, g/m²
 * @param least least of anything, g/m²
 * @param mostLime most of a lime, g/m²
 * @param leastLime least of a lime, g/m²
 */
public record Doubts(@Key("mostNGPerM2") double mostN, @Key("mostGPerM2") double most,
        @Key("mostBulkyGPerM2") double mostBulky, @Key("leastGPerM2") double least,
        @Key("mostLimeGPerM2") double mostLime, @Key("leastLimeGPerM2") double leastLime) {
    /** A question about so much of a feed on so much ground; empty where it is likely. */
    public Optional<String> about(Feed feed, double grams, double areaM2) {
        double gPerM2 = grams / areaM2;
        double n = feed.gives(gPerM2).n();
        if (n > mostN) { return question(grams, gPerM2, "that would be " + Words.amount(n) + " g N/m²", grams / 1000); }
        return question(grams, gPerM2, feed.bulky() ? mostBulky : most, least);
    }

    /** A question about so much lime on so much ground; empty where it is likely. */
    public Optional<String> about(Lime lime, double grams, double areaM2) {
        return question(grams, grams / areaM2, mostLime, leastLime);
    }

    private static Optional<String> question(double grams, double gPerM2, double most, double least) {
        if (gPerM2 > most) { return question(grams, gPerM2, "more than anybody gives", grams / 1000); }
        return gPerM2 < least ? question(grams, gPerM2, "next to nothing", grams * 1000) : Optional.empty();
    }

    private static Optional<String> question(double grams, double gPerM2, String what, double perhaps) {
        return Optional.of("%s here is %s a square metre: %s. Was it %s? Grams and kilograms are easily mixed up."
                .formatted(Words.weight(grams), Words.weight(gPerM2), what, Words.weight(perhaps)));
    }
}

package org.oldwood.crop;

import java.util.Optional;
import org.oldwood.store.Fields;

/**
 * What print says of leaving a bush alone that is renewed by the age of its stems.
 *
 * @param words what print says, a sentence or two
 * @param crop crop of the season after some winters without pruning, of that of pruned bushes; empty where nothing was
 *     weighed
 * @param winters after how many winters that was
 */
public record Unpruned(String words, Optional<Figure> crop, Optional<Figure> winters) {

    static Unpruned read(Fields fields) {
        String words = fields.text("words");
        fields.texts("source");
        fields.oneOf("seen", Seen.keys());
        Unpruned unpruned = new Unpruned(words, Figure.optional(fields, "crop"), Figure.optional(fields, "winters"));
        if (unpruned.crop.isPresent() != unpruned.winters.isPresent()) {
            fields.wrong(
                    "crop",
                    "unpruned-unclear",
                    "must stand with \"winters\": after how many winters that was weighed",
                    "");
        }
        if (unpruned.winters.isPresent() && !(unpruned.winters.get().is() >= 1)) {
            fields.wrong("winters", "unpruned-winters", "must be one winter or more", "");
        }
        fields.done();
        return unpruned;
    }

    /**
     * Share of the crop of pruned bushes, 0 to 1, in the season after so many winters in a row without pruning: in
     * equal steps to what was weighed, and no lower after it, of which nothing is known. 1 where nothing was weighed.
     */
    public Range share(int unprunedWinters) {
        if (crop.isEmpty() || winters.isEmpty()) {
            return new Range(1, 1, 1);
        }
        Figure weighed = crop.get();
        double way = Math.min(1, unprunedWinters / winters.get().is());
        return new Range(1 - way * (1 - weighed.low()), 1 - way * (1 - weighed.is()), 1 - way * (1 - weighed.high()));
    }
}

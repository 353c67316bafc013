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
 * @param berryWeight weight of a berry, of that on pruned bushes; empty where none was weighed
 * @param picking speed of picking after as many winters as {@code pickingWinters}, of that on pruned bushes
 */
@Notes({"source", "seen"})
public record UnprunedBush(String words, Optional<Figure> crop, Optional<Figure> winters, Optional<Figure> berryWeight,
        Optional<Figure> picking, Optional<Figure> pickingWinters) implements Checked {

    /** Weight of a berry and speed of picking, of those of a pruned bush. */
    public record Berry(Range weight, double speed) {}

    /** Berries and picking in the season after so many winters in a row without pruning. */
    public Optional<Berry> berry(int unprunedWinters) {
        if (berryWeight.isEmpty() || picking.isEmpty() || pickingWinters.isEmpty()) { return Optional.empty(); }
        double way = Math.min(1, unprunedWinters / pickingWinters.get().is());
        Range weight = unprunedWinters == 0 ? new Range(1, 1, 1) : Range.of(berryWeight.get());
        return Optional.of(new Berry(weight, 1 - way * (1 - picking.get().is())));
    }

    @Override
    public void check(Fields fields) {
        fields.tellIf(crop.isPresent() != winters.isPresent(), "crop", "unpruned-unclear");
        fields.tellIf(winters.isPresent() && !(winters.get().is() >= 1), "winters", "unpruned-winters");
    }

    /**
     * Share of the crop of pruned bushes, 0 to 1, in the season after so many winters in a row without pruning: in
     * equal steps to what was weighed, and no lower after it, of which nothing is known. 1 where nothing was weighed.
     */
    public Range share(int unprunedWinters) {
        if (crop.isEmpty() || winters.isEmpty()) { return new Range(1, 1, 1); }
        Figure weighed = crop.get();
        double way = Math.min(1, unprunedWinters / winters.get().is());
        return new Range(1 - way * (1 - weighed.low()), 1 - way * (1 - weighed.is()), 1 - way * (1 - weighed.high()));
    }
}

package org.oldwood.craft.pruning;

import java.util.List;
import java.util.OptionalInt;
import org.oldwood.crop.Key;
import org.oldwood.crop.Seen;

/**
 * How much older wood (stems of 2 years and more) may go in one winter. Thinning last summer's shoots and taking dead,
 * diseased, weak or damaged wood do not count.
 *
 * @param share of all living stems, over 0 to 1
 * @param most the most stems, where print names a number
 */
public record SeasonLimit(@Key(least = 0.01, most = 1) double share, @Key(least = 1, most = 100) OptionalInt most,
        List<String> sources, Seen seen, String note) {

    /** No limit: of a way that takes the whole bush at once. */
    static final SeasonLimit NONE = new SeasonLimit(1, OptionalInt.empty(), List.of("oldwood"), Seen.ASSUMED, "");

    /** The most older stems that may go out of {@code living} stems; at least one. */
    public int of(int living) {
        int byShare = Math.max(1, (int) Math.floor(share * living + 1e-9));
        return Math.min(byShare, most.orElse(byShare));
    }
}

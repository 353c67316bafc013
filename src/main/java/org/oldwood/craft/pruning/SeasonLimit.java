package org.oldwood.craft.pruning;

import java.util.List;
import java.util.OptionalInt;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * How much older wood (stems of 2 years and more) may go in one winter. Thinning last summer's shoots and taking dead,
 * diseased, weak or damaged wood do not count.
 *
 * @param share of all living stems, over 0 to 1
 * @param most the most stems, where print names a number
 */
public record SeasonLimit(double share, OptionalInt most, List<String> sources, Seen seen, String note) {

    /** Reads the limit under {@code limit}, which must be there. */
    static SeasonLimit required(Fields parent) {
        return parent.object("limit").map(SeasonLimit::read).orElseGet(() -> {
            parent.wrong(
                    "limit",
                    "missing-key",
                    "is missing; it must say how much may go in one winter",
                    "Write for example: \"limit\": {\"share\": 0.5, …}");
            return all();
        });
    }

    /** No limit: a way that takes the whole bush at once. */
    static SeasonLimit all() {
        return new SeasonLimit(1, OptionalInt.empty(), List.of("oldwood"), Seen.ASSUMED, "");
    }

    static SeasonLimit read(Fields fields) {
        SeasonLimit limit = new SeasonLimit(
                fields.number("share", 0.01, 1),
                fields.has("most") ? OptionalInt.of(fields.count("most", 1, 100)) : OptionalInt.empty(),
                fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())),
                fields.text("note", ""));
        fields.done();
        return limit;
    }

    /** The most older stems that may go out of {@code living} stems; at least one. */
    public int of(int living) {
        int byShare = Math.max(1, (int) Math.floor(share * living + 1e-9));
        return Math.min(byShare, most.orElse(byShare));
    }
}

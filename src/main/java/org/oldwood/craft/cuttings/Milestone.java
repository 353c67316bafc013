package org.oldwood.craft.cuttings;

import java.util.List;
import org.oldwood.season.Season;

/**
 * A step of a lot's life and when it comes.
 *
 * @param season the growing season that it belongs to
 * @param from the day, or the first of several
 * @param to the last day; the same as {@code from} for a single day
 */
public record Milestone(LotStep step, Season season, LikelyDay from, LikelyDay to, List<String> sources) {
    public Milestone {
        sources = List.copyOf(sources);
    }
}

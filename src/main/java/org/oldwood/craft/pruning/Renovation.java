package org.oldwood.craft.pruning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.oldwood.crop.Key;
import org.oldwood.crop.Seen;

/**
 * How a bush with more spent wood than bearing wood is brought back: in equal parts over some winters, or by a share of
 * the bush each winter.
 *
 * @param winters over how many winters; empty where a share rules
 * @param share share of the living stems in one winter
 * @param stems the fewest stems in one winter, where print names a number
 * @param fromSpent with fewer spent stems than this the bush is not called neglected
 * @param staged how a bush is brought back that is too crowded for all that; empty where the school has nothing of the
 *     kind
 */
public record Renovation(@Key(least = 1, most = 6) OptionalInt winters,
        @Key(least = 0.01, most = 1) OptionalDouble share, @Key(least = 1, most = 20) OptionalInt stems,
        @Key(least = 1, most = 20, otherwise = 4) int fromSpent, List<String> sources, Seen seen, String note,
        Optional<StagedRenovation> staged) {

    /** This winter's part of {@code spent} stems, on a bush of {@code living} stems. */
    int part(int spent, int living, int winter) {
        if (winters.isPresent()) {
            int left = Math.max(1, winters.getAsInt() - winter + 1);
            return Math.max((spent + left - 1) / left, stems.orElse(0));
        }
        return share.isPresent() ? limit(living) : stems.orElse(spent);
    }

    /** The most that the share allows of {@code living} stems, at least 1; 0 without a share. */
    int limit(int living) {
        return share.isPresent() ? Math.max(1, (int) Math.floor(share.getAsDouble() * living + 1e-9)) : 0;
    }
}

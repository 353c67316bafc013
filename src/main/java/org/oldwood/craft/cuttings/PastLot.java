package org.oldwood.craft.cuttings;

import java.util.OptionalInt;

/**
 * What became of an earlier lot of the same crop and method, as far as it was counted.
 *
 * @param rooted alive when rooting was over, if that was counted
 * @param lifted lifted fit to plant, if that was counted
 * @param plantedOut planted out, if that was noted
 * @param established alive one growing season after planting out, if that was counted
 */
public record PastLot(int struck, OptionalInt rooted, OptionalInt lifted, OptionalInt plantedOut,
        OptionalInt established) {}

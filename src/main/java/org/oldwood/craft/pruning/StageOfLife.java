package org.oldwood.craft.pruning;

import java.util.Locale;

/** Where a plant stands in its life, as far as its pruning goes. */
public enum StageOfLife {
    /** Planted, and no growing season completed yet. */
    PLANTING_YEAR,
    /** Its structure is being built up. */
    YOUNG,
    /** In bearing, with its wood in order. */
    BEARING,
    /** More spent wood than can come out in one winter. */
    NEGLECTED,
    /** At the end of its productive life. */
    AGEING;

    /** {@code planting-year}, {@code young}, {@code bearing}, {@code neglected}, {@code ageing}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package org.oldwood.plan.settle;

import java.util.List;
import org.oldwood.garden.Entry;

/**
 * A part of a task that is done for itself: a plant's, or that of the bed, the cuttings, the garden.
 *
 * @param id of the plant, bed or cuttings; {@code garden}
 * @param bushes how many bushes it stands for, 1 at least
 * @param done how much of it is done, from 0 to 1
 * @param skipped left out on purpose
 * @param by the entries that say so, oldest first
 */
public record Share(String id, int bushes, double done, boolean skipped, List<Entry> by) {

    public static Share untouched(String id, int bushes) { return new Share(id, bushes, 0, false, List.of()); }

    /** Whether something is left to do. */
    public boolean open() { return !skipped && done < 1; }
}

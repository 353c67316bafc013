package org.oldwood.calendar.server;

import org.oldwood.calendar.format.RawComponent;

/**
 * Our version of an item, its title as people know it, and whether the plan needs it: if not, it stays only where a
 * person wrote in it.
 */
record Ours(RawComponent item, String title, boolean isNeeded) {
    String uid() { return item.uid(); }

    Merge.Result into(RawComponent object) { return isNeeded ? Merge.of(object, item) : Merge.withdrawn(object, item); }
}

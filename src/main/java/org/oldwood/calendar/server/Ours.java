package org.oldwood.calendar.server;

import org.oldwood.calendar.format.RawComponent;

/** Our version of an item, and its title as people know it. */
record Ours(RawComponent item, String title) {
    String uid() {
        return item.uid();
    }
}

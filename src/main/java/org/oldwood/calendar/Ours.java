package org.oldwood.calendar;

import org.oldwood.calendar.format.RawComponent;

/** Our version of an item, and its title as people know it. */
public record Ours(RawComponent item, String title) {
    public String uid() {
        return item.uid();
    }
}

package org.oldwood.calendar;

import org.oldwood.calendar.format.Passage;
import org.oldwood.calendar.format.Text;

/**
 * An item with all that it says.
 *
 * @param item the item; its own text is not looked at
 * @param title its title, as a passage
 * @param text what stands beneath the title
 */
public record Content(Item item, Passage title, Text text) {
    static Content of(Item item, Text text) {
        return new Content(item, new Passage(item.words().title()), text);
    }

    /** An item whose text is its own. */
    static Content of(Item item) {
        return of(item, Text.of(item.words().text()));
    }
}

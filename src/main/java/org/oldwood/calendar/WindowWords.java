package org.oldwood.calendar;

import java.time.LocalDate;
import org.oldwood.garden.MonthNames;

/** The window in words, before an item's text: some clients drop the end, all show the text. */
final class WindowWords {
    private WindowWords() {}

    static String before(String text, Item.Days days, Layout layout) {
        StringBuilder words = new StringBuilder();
        if (days.count() == 1) {
            words.append("On ").append(inWords(days.first())).append('.');
        } else {
            words.append("From ").append(inWords(days.first()));
            words.append(" to ")
                    .append(inWords(days.last()))
                    .append(", both days included. Best day: ");
            words.append(inWords(days.best())).append('.');
        }
        if (layout.due() == Layout.Due.DAY_AFTER) {
            words.append(" A to-do's due date is the day after the last good day.");
        }
        return text.isEmpty() ? words.toString() : words.append('\n').append(text).toString();
    }

    static String inWords(LocalDate day) {
        return day.getDayOfMonth() + " " + MonthNames.of(day) + " " + day.getYear();
    }
}

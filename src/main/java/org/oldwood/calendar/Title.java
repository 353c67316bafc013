package org.oldwood.calendar;

import java.util.List;

/**
 * The title of an item. Several clients show a cancelled item like any other, and an event cannot say that it is done;
 * so the title says it.
 */
public final class Title {
    private static final String WITHDRAWN = "Withdrawn: ";
    private static final String SKIPPED = "Skipped: ";
    private static final String DONE = "Done: ";

    private Title() {}

    static String ofTodo(Item.State state, String title) {
        return switch (state) {
            case WITHDRAWN -> WITHDRAWN + title;
            case SKIPPED -> SKIPPED + title;
            case OPEN, BEGUN, DONE -> title;
        };
    }

    static String ofEvent(Item.State state, String title) {
        return state == Item.State.DONE ? DONE + title : ofTodo(state, title);
    }

    /** Whether a title is one that we gave an item when we cancelled it. */
    public static boolean isOfCancelled(String title) {
        return title.startsWith(WITHDRAWN) || title.startsWith(SKIPPED);
    }

    /** A title without what we put before it. */
    static String bare(String title) {
        return List.of(WITHDRAWN, SKIPPED, DONE).stream().filter(title::startsWith).findFirst()
                .map(before -> title.substring(before.length())).orElse(title);
    }
}

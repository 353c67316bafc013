package org.oldwood.calendar;

/**
 * The title of an item. Several clients show a cancelled item like any other, and an event cannot
 * say that it is done; so the title says it.
 */
final class Title {
    private static final String WITHDRAWN = "Withdrawn: ";
    private static final String SKIPPED = "Skipped: ";
    private static final String DONE = "Done: ";

    private Title() {}

    static String ofEvent(Item item) {
        return item.progress().state() == Item.State.DONE
                ? DONE + item.words().title()
                : ofTodo(item);
    }

    /** Whether a title is one that we gave an item when we cancelled it. */
    static boolean isOfCancelled(String title) {
        return title.startsWith(WITHDRAWN) || title.startsWith(SKIPPED);
    }

    /** A title without what we put before it. */
    static String bare(String title) {
        for (String prefix : new String[] {WITHDRAWN, SKIPPED, DONE}) {
            if (title.startsWith(prefix)) {
                return title.substring(prefix.length());
            }
        }
        return title;
    }

    static String ofTodo(Item item) {
        String title = item.words().title();
        return switch (item.progress().state()) {
            case WITHDRAWN -> WITHDRAWN + title;
            case SKIPPED -> SKIPPED + title;
            case OPEN, BEGUN, DONE -> title;
        };
    }
}

package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

/**
 * The title of an item. Several clients show a cancelled item like any other, and an event cannot say that it is done;
 * so the title says it.
 */
public final class Title {
    private static final String WITHDRAWN = "Withdrawn: ";
    private static final String SKIPPED = "Skipped: ";
    private static final String DONE = "Done: ";

    static final byte[] NOTHING = {};
    private static final byte[] WITHDRAWN_BEFORE = WITHDRAWN.getBytes(US_ASCII);
    private static final byte[] SKIPPED_BEFORE = SKIPPED.getBytes(US_ASCII);

    /** What stands before the title of an event that is done. */
    static final byte[] DONE_BEFORE = DONE.getBytes(US_ASCII);

    private Title() {}

    /** What stands before the title of an item that is cancelled. */
    static byte[] beforeTodo(Item.State state) {
        return switch (state) {
            case WITHDRAWN -> WITHDRAWN_BEFORE;
            case SKIPPED -> SKIPPED_BEFORE;
            case OPEN, BEGUN, DONE -> NOTHING;
        };
    }

    /** Whether a title is one that we gave an item when we cancelled it. */
    public static boolean isOfCancelled(String title) {
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
}

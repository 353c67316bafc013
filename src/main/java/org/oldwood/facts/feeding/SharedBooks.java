package org.oldwood.facts.feeding;

import org.jspecify.annotations.Nullable;
import org.oldwood.store.Documents;

/** The tables of feeding, liming and mulching, read once for the crafts of one plan. */
public final class SharedBooks {
    private @Nullable FeedingBooks books;

    public FeedingBooks of(Documents documents) {
        FeedingBooks read = books == null ? new FeedingBooks(documents) : books;
        books = read;
        return read;
    }
}

package org.oldwood.craft.feeding;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;

/** Marks a figure that stands on no print, so that whoever meets it knows. */
final class NotRead {
    private NotRead() {}

    /**
     * {@code (from memory)} or {@code (our assumption)}, with a space before it; empty for a figure that was read,
     * quoted or worked out, and for nothing of something.
     */
    static Optional<String> mark(Figure figure) {
        boolean open = figure.seen() == Seen.MEMORY || figure.seen() == Seen.ASSUMED;
        return open && figure.is() != 0 ? Optional.of(" (" + figure.seen().words() + ")") : Optional.empty();
    }
}

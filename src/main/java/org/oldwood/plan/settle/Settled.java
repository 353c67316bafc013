package org.oldwood.plan.settle;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.Entry;

/**
 * How far a task has come: its shares, each done, skipped or open.
 *
 * @param shares one at least
 */
public record Settled(List<Share> shares) {

    /** Whether anything is left to do. */
    public boolean open() { return shares.stream().anyMatch(Share::open); }

    /** Whether nothing was done, and nothing is left to do. */
    public boolean skipped() {
        return shares.stream().allMatch(Share::skipped);
    }

    /** Whether some was done or skipped and some is left. */
    public boolean partly() {
        return open() && shares.stream().anyMatch(share -> !share.by().isEmpty());
    }

    /** Whether an entry names the task itself. */
    public boolean named() {
        return shares.stream().flatMap(share -> share.by().stream()).anyMatch(entry -> entry.text("task").isPresent());
    }

    public List<Share> left() { return shares.stream().filter(Share::open).toList(); }

    /** The day of the latest entry that counts for it. */
    public Optional<LocalDate> lastDay() {
        return shares.stream().flatMap(share -> share.by().stream()).map(Entry::date).max(LocalDate::compareTo);
    }
}

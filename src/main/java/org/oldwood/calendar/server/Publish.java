package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.Memory;
import org.oldwood.store.RecordException;

/**
 * Brings a calendar server's collection up to the plan: reads, merges, then writes object by object (RFC 4791, 5.3.2).
 * Touches only objects with this garden's UIDs; a conflict is read anew and tried again; one refusal does not stop the
  * rest.
 *
 * @param isTrial whether only to say what would be done
 * @param restores whether to put back what was deleted on the server
 */
public record Publish(Export.Garden garden, Layout layout, LocalDate today, boolean isTrial, boolean restores) {

    /** What was done, or in a trial would have been done. */
    public record Result(List<String> created, List<String> changed, List<String> removed, int unchanged,
            List<String> notices, List<String> refused) {}

    /**
     * Publishes; the collection for events and that for to-dos may be the same.
     *
     * @throws RecordException where nothing was written
     */
    public Result to(Session session, URI events, URI todos, List<Item> plan) throws IOException {
        PublishRun run = new PublishRun(this, session, new Memory(garden, layout, today, plan));
        run.all(events, todos);
        return run.result();
    }
}

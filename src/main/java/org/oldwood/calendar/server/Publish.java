package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Items;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.Memory;
import org.oldwood.calendar.Ours;
import org.oldwood.calendar.Outgoing;
import org.oldwood.calendar.Seen;
import org.oldwood.calendar.SeenReader;
import org.oldwood.calendar.server.Collection.Stored;
import org.oldwood.store.RecordException;

/**
 * Brings a calendar server's collection up to the plan: reads, merges, then writes object by object (RFC 4791, 5.3.2).
 * Touches only objects with this garden's UIDs; a conflict is read anew and tried again; one refusal does not stop the
 * rest.
 */
public final class Publish {
    private static final int TRIES = 3;
    private static final int NOT_FOUND = 404;
    private static final int PRECONDITION_FAILED = 412;

    private final Export.Garden garden;
    private final Layout layout;
    private final LocalDate today;
    private final boolean isTrial;
    private final boolean restores;

    /** What was done, or in a trial would have been done. */
    public record Result(
            List<String> created,
            List<String> changed,
            List<String> removed,
            int unchanged,
            List<String> notices,
            List<String> refused) {}

    /** @param isTrial whether only to say what would be done */
    public Publish(Export.Garden garden, Layout layout, LocalDate today, boolean isTrial) {
        this(garden, layout, today, isTrial, false);
    }

    /** @param restores whether to put back what was deleted on the server */
    public Publish(Export.Garden garden, Layout layout, LocalDate today, boolean isTrial, boolean restores) {
        this.restores = restores;
        this.garden = garden;
        this.layout = layout;
        this.today = today;
        this.isTrial = isTrial;
    }

    public Result to(Target target, List<Item> plan) throws IOException {
        return to(target, plan, Http.Limits.USUAL);
    }

    Result to(Target target, List<Item> plan, Http.Limits limits) throws IOException {
        Work work = new Work(new Memory(garden, layout, today, Items.of(plan)));
        work.all(target, limits);
        if (!isTrial) {
            work.memory.keep();
            work.known.keep();
        }
        return work.result();
    }

    /** One run. */
    private final class Work {
        final Memory memory;
        private final List<String> created = new ArrayList<>();
        private final List<String> changed = new ArrayList<>();
        private final List<String> removed = new ArrayList<>();
        private final List<String> notices = new ArrayList<>();
        private final List<String> refused = new ArrayList<>();
        private final List<String> deleted = new ArrayList<>();
        private final Known known;
        private int unchanged;
        private int newlyDeleted;

        Work(Memory memory) throws IOException {
            this.memory = memory;
            this.known = Known.of(garden.folder());
        }

        /** A server that fails in the middle has what was written until then, and the next run goes on from there. */
        void all(Target target, Http.Limits limits) throws IOException {
            try {
                kind(target.events(), "VEVENT", target, limits);
                kind(target.todos(), "VTODO", target, limits);
            } catch (RecordException e) {
                if (created.isEmpty() && changed.isEmpty() && removed.isEmpty()) {
                    throw e;
                }
                e.problems().forEach(problem -> refused.add("Broken off: " + problem.inWords()));
            }
        }

        Result result() {
            if (newlyDeleted > 0) {
                notices.add(newlyDeleted + (newlyDeleted == 1 ? " entry was" : " entries were")
                        + " deleted on the server and will stay away: " + String.join("; ", deleted)
                        + ". To put back all that were deleted there, add --restore.");
            }
            notices.addAll(memory.notices());
            return new Result(created, changed, removed, unchanged, notices, refused);
        }

        void kind(URI address, String component, Target target, Http.Limits limits) throws IOException {
            Http http = target.http(address, limits);
            Collection collection = Collection.at(address, http);
            String words = component.equals("VEVENT") ? "events" : "to-dos";
            if (!collection.takes(component)) {
                notices.add(address + " takes no " + words + ", so none were published there.");
                return;
            }
            List<String> uids = new ArrayList<>();
            for (Outgoing task : memory.written()) {
                uids.add(uid(component, task.identity));
            }
            known.at(address);
            Map<String, Stored> there = collection.read(uids);
            there.keySet().forEach(known::isThere);
            for (int i = 0; i < uids.size(); i++) {
                Stored old = there.get(uids.get(i));
                one(collection, memory.written().get(i), component, Optional.ofNullable(old));
            }
        }

        private String uid(String component, String identity) {
            return component.equals("VEVENT")
                    ? memory.uids().event(identity)
                    : memory.uids().todo(identity);
        }

        private void one(Collection collection, Outgoing task, String component, Optional<Stored> old)
                throws IOException {
            Ours ours = ItemObject.ours(memory, task, component, layout, garden.zone());
            if (memory.isCancelled(task)) {
                if (old.isPresent()) {
                    remove(collection, ours, old.get());
                }
            } else if (old.isPresent()) {
                change(collection, ours, old.get(), TRIES);
            } else if (isDeletedThere(ours)) {
                deleted.add(ours.title());
            } else {
                create(collection, ours, TRIES);
            }
        }

        private void create(Collection collection, Ours ours, int tries) throws IOException {
            if (isTrial) {
                created.add(ours.title());
                return;
            }
            Http.Reply reply =
                    collection.create(ours.uid(), ItemObject.text(ItemObject.alone(Merge.marked(ours.item()))));
            if (reply.isGood()) {
                created.add(ours.title());
                known.isThere(ours.uid());
                return;
            }
            // it is there after all, perhaps under another name (RFC 4791, 5.3.2.1)
            Optional<Stored> other = tries > 1 && reply.status() / 100 == 4
                    ? collection.find(ours.item().name(), ours.uid())
                    : Optional.empty();
            if (other.isPresent()) {
                change(collection, ours, other.get(), tries - 1);
            } else {
                refuse(ours, reply);
            }
        }

        private void change(Collection collection, Ours ours, Stored old, int tries) throws IOException {
            known.isThere(ours.uid());
            noticeCompletion(ours, old);
            Merge.Result merged = Merge.of(old.object(), ours.item());
            if (merged.object().isEmpty()) {
                unchanged++;
                return;
            }
            if (old.etag().isEmpty()) {
                refused.add(ours.title() + ": was not changed, since the server names no version (ETag) of it,"
                        + " and what others change there meanwhile could be lost.");
                return;
            }
            if (isTrial) {
                changed(ours, merged);
                return;
            }
            Http.Reply reply =
                    collection.change(old, ItemObject.text(merged.object().get()));
            if (reply.isGood()) {
                changed(ours, merged);
            } else if (reply.status() == PRECONDITION_FAILED && tries > 1) {
                Optional<Stored> now = collection.again(old.address());
                if (now.isPresent()) {
                    change(collection, ours, now.get(), tries - 1);
                } else {
                    create(collection, ours, tries - 1);
                }
            } else {
                refuse(ours, reply);
            }
        }

        private void changed(Ours ours, Merge.Result merged) {
            changed.add(ours.title());
            merged.told().forEach(told -> notices.add(ours.title() + ": " + told));
        }

        /** What was done is never taken away. */
        private void remove(Collection collection, Ours ours, Stored old) {
            known.isGone(ours.uid());
            boolean isDone = Merge.itemOf(old.object(), ours.uid())
                    .map(SeenReader::plain)
                    .filter(Seen::isDone)
                    .isPresent();
            if (isDone) {
                unchanged++;
                return;
            }
            if (old.etag().isEmpty()) {
                refused.add(ours.title() + ": was not removed, since the server names no version (ETag) of it.");
                return;
            }
            if (isTrial) {
                removed.add(ours.title());
                return;
            }
            Http.Reply reply = collection.delete(old);
            if (reply.isGood() || reply.status() == NOT_FOUND) {
                removed.add(ours.title());
            } else {
                refuse(ours, reply);
            }
        }

        /** Deleting an entry on the server says: not this one. It is put back only when the person asks for that. */
        private boolean isDeletedThere(Ours ours) {
            if (!known.wasThere(ours.uid())) {
                return false;
            }
            if (restores) {
                return false;
            }
            if (known.deleted(ours.uid())) {
                newlyDeleted++;
            }
            return true;
        }

        private void noticeCompletion(Ours ours, Stored old) {
            boolean isNews = !ours.item().isEvent()
                    && !ours.item().value("STATUS").orElse("").equals("COMPLETED")
                    && Merge.itemOf(old.object(), ours.uid())
                            .map(SeenReader::plain)
                            .filter(Seen::isDone)
                            .isPresent();
            if (isNews) {
                notices.add(ours.title()
                        + ": is ticked off on the server; take it into the journal with:"
                        + " oldwood calendar read");
            }
        }

        private void refuse(Ours ours, Http.Reply reply) {
            refused.add(ours.title() + ": the server refused it (HTTP " + reply.status() + ") " + reply.start());
        }
    }
}

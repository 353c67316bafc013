package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.ItemReader;
import org.oldwood.calendar.Memory;
import org.oldwood.calendar.Outgoing;
import org.oldwood.calendar.ReadItem;
import org.oldwood.calendar.Uids;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.server.Collection.Stored;
import org.oldwood.store.Journal;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

final class PublishRun {
    private static final int TRIES = 3;
    private static final int NOT_FOUND = 404;
    private static final int PRECONDITION_FAILED = 412;

    private final Publish options;
    private final Session session;
    private final Memory memory;
    private final List<String> created = new ArrayList<>();
    private final List<String> changed = new ArrayList<>();
    private final List<String> removed = new ArrayList<>();
    private final List<String> notices = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> deleted = new ArrayList<>();
    /** What an answer that was lost, or a conflict, kept from being told. */
    private final Map<String, List<String>> untold = new HashMap<>();

    private final Known known;
    /** What the server was asked to write, until it answers. */
    private String asked = "";

    private boolean hasForgotten;
    private int unchanged;
    private int newlyDeleted;

    PublishRun(Publish options, Session session, Memory memory) throws IOException {
        this.options = options;
        this.session = session;
        this.memory = memory;
        this.known = new Known(options.garden().folder());
        this.hasForgotten = !Files.exists(options.garden().folder().resolve(CalendarState.FILE));
    }

    /** A server that fails in the middle has what was written until then, and the next run goes on from there. */
    void all(URI events, URI todos) throws IOException {
        try {
            if (events.equals(todos)) {
                all(events, "VEVENT", "VTODO");
            } else {
                all(events, "VEVENT");
                all(todos, "VTODO");
            }
        } catch (RecordException e) {
            if (created.isEmpty() && changed.isEmpty() && removed.isEmpty() && asked.isEmpty()) { throw e; }
            String at = asked.isEmpty() ? "" : " at " + asked + ", which may be written or not";
            e.problems().forEach(problem -> refused.add("Broken off%s: %s".formatted(at, problem.inWords())));
        }
        if (options.isTrial()) { return; }
        try (Journal.Writing held = new Journal(options.garden().folder().resolve("journal.jsonl")).begin()) {
            memory.keep();
            known.keep();
        } catch (IOException | RecordException e) {
            refused.add(
                    "Published as said, but not remembered: %s. Make room or let the folder be written, and run it again."
                            .formatted(e.getMessage()));
        }
    }

    Publish.Result result() {
        if (newlyDeleted > 0) {
            notices.add(
                    "%s deleted on the server and will stay away: %s. To put back all that were deleted there, add --restore."
                            .formatted(Words.count(newlyDeleted, "entry was", "entries were"),
                                    String.join("; ", deleted)));
        }
        notices.addAll(memory.notices());
        return new Publish.Result(created, changed, removed, unchanged, notices, refused);
    }

    private void all(URI address, String... components) throws IOException {
        Collection collection = session.at(address);
        known.at(address);
        List<String> taken = new ArrayList<>();
        List<String> uids = new ArrayList<>();
        for (String component : components) {
            if (collection.takes(component)) {
                taken.add(component);
                written(component).forEach(out -> uids.add(uid(component, out)));
            } else {
                notices.add("%s takes no %s, so none were published there.".formatted(address,
                        component.equals("VEVENT") ? "events" : "to-dos"));
            }
        }
        Map<String, Stored> there = collection.read(uids);
        there.keySet().forEach(known::isThere);
        // before anything is written: what stands as a to-do alone wants its event in this run, not in the next
        taken.forEach(component -> written(component).stream().filter(out -> there.containsKey(uid(component, out)))
                .forEach(Outgoing::isThere));
        // before it is taken away: or a run that is killed then would hold what it took away for the person's doing
        taken.forEach(component -> written(component).stream().filter(out -> out.isCancelled(component))
                .forEach(out -> known.isGone(uid(component, out))));
        if (!options.isTrial()) { known.keep(); }
        if (hasForgotten && !there.isEmpty()) {
            hasForgotten = false;
            notices.add("The memory of what was published, " + CalendarState.FILE
                    + ", is not there: entries of work that the plan dropped since then may still stand on the server.");
        }
        int done = 0;
        for (String component : taken) {
            for (Outgoing task : written(component)) {
                session.progress.isStillAt("publishing: %s of %s entries".formatted(done, uids.size()));
                one(collection, task, component, Optional.ofNullable(there.get(uids.get(done++))));
            }
        }
    }

    private List<Outgoing> written(String component) {
        return memory.written().stream().filter(out -> out.has(component)).toList();
    }

    private String uid(String component, Outgoing out) {
        Uids uids = memory.uids();
        return component.equals("VEVENT") ? uids.event(out.identity()) : uids.todo(out.identity());
    }

    private void one(Collection collection, Outgoing task, String component, Optional<Stored> old) throws IOException {
        Ours ours = ItemObject.ours(memory.component(task, component), task, !task.isCancelled(component));
        if (task.isCancelled(component)) {
            if (old.isPresent()) { cancel(collection, task, ours, old.get()); }
        } else if (old.isPresent()) {
            change(collection, ours, old.get(), TRIES);
        } else if (task.isPast()) {
            unchanged++;
        } else if (isDeletedThere(ours)) {
            deleted.add(ours.title());
        } else {
            create(collection, ours, TRIES);
        }
    }

    private void create(Collection collection, Ours ours, int tries) throws IOException {
        if (options.isTrial()) {
            created.add(ours.title());
            return;
        }
        asked = ours.title();
        Wire.Reply reply = collection.create(ours.uid(), ItemObject.text(ItemObject.alone(Merge.marked(ours.item()))));
        asked = "";
        if (reply.isGood()) {
            created.add(ours.title());
            known.isThere(ours.uid());
            return;
        }
        // it is there after all: by a request whose answer was lost, or under another name (RFC 4791, 5.3.2.1)
        Optional<Stored> other = tries > 1 && reply.status() / 100 == 4
                ? collection.find(ours.item().name(), ours.uid())
                : Optional.empty();
        if (other.isEmpty()) {
            refuse(ours, reply);
            return;
        }
        if (ours.into(other.get().object()).object().isEmpty() && !known.wasThere(ours.uid())) {
            created.add(ours.title());
            known.isThere(ours.uid());
        } else {
            change(collection, ours, other.get(), tries - 1);
        }
    }

    private void change(Collection collection, Ours ours, Stored old, int tries) throws IOException {
        Merge.Result merged = ours.into(old.object());
        known.isThere(ours.uid());
        noticeCompletion(ours, old);
        if (merged.object().isEmpty()) {
            if (untold.containsKey(ours.uid())) {
                changed(ours, merged);
            } else {
                unchanged++;
            }
        } else if (old.etag().isEmpty()) {
            refused.add(
                    "%s: was not changed, since the server names no version (ETag) of it, and what others change there meanwhile could be lost."
                            .formatted(ours.title()));
        } else if (options.isTrial()) {
            changed(ours, merged);
        } else {
            send(collection, ours, old, merged, tries);
        }
    }

    private void send(Collection collection, Ours ours, Stored old, Merge.Result merged, int tries) throws IOException {
        asked = ours.title();
        Wire.Reply reply = collection.change(old, ItemObject.text(merged.object().orElseThrow()));
        asked = "";
        if (reply.isGood()) {
            changed(ours, merged);
        } else if (reply.status() == PRECONDITION_FAILED && tries > 1) {
            untold.put(ours.uid(), merged.told());
            again(collection, ours, old, tries - 1);
        } else {
            refuse(ours, reply);
        }
    }

    /** Somebody else wrote in between, or we did and the answer was lost. */
    private void again(Collection collection, Ours ours, Stored old, int tries) throws IOException {
        Optional<Stored> now = collection.again(old.address())
                .filter(there -> Merge.itemOf(there.object(), ours.uid()).isPresent());
        if (now.isPresent()) {
            change(collection, ours, now.get(), tries);
        } else if (!ours.isNeeded()) {
            known.isGone(ours.uid());
        } else if (isDeletedThere(ours)) {
            deleted.add(ours.title());
        } else {
            create(collection, ours, tries);
        }
    }

    private void changed(Ours ours, Merge.Result merged) {
        changed.add(ours.title());
        List<String> told = merged.object().isEmpty() ? untold.getOrDefault(ours.uid(), List.of()) : merged.told();
        told.forEach(one -> notices.add(ours.title() + ": " + one));
    }

    /** What was done is never taken away, nor what a person wrote. */
    private void cancel(Collection collection, Outgoing task, Ours ours, Stored old) throws IOException {
        RawComponent there = Merge.itemOf(old.object(), ours.uid()).orElseThrow();
        if (ItemReader.plain(there).isDone()) {
            known.isThere(ours.uid());
            noticeCompletion(ours, old);
            unchanged++;
        } else if (Merge.isTouched(there)) {
            boolean isToDo = !task.isCancelled("VTODO");
            change(collection, isToDo ? ItemObject.ours(memory.ownEvent(task), task, true) : ours, old, TRIES);
        } else if (old.etag().isEmpty()) {
            refused.add(ours.title() + ": was not removed, since the server names no version (ETag) of it.");
        } else if (options.isTrial()) {
            removed.add(ours.title());
        } else {
            remove(collection, ours, old);
        }
    }

    private void remove(Collection collection, Ours ours, Stored old) {
        asked = ours.title();
        Wire.Reply reply = collection.delete(old);
        asked = "";
        if (reply.isGood() || reply.status() == NOT_FOUND) {
            removed.add(ours.title());
        } else {
            refuse(ours, reply);
        }
    }

    /** Deleting an entry on the server says: not this one. It is put back only when the person asks for that. */
    private boolean isDeletedThere(Ours ours) {
        boolean isDeleted = known.wasThere(ours.uid()) && !options.restores();
        newlyDeleted += isDeleted && known.deleted(ours.uid()) ? 1 : 0;
        return isDeleted;
    }

    private void noticeCompletion(Ours ours, Stored old) {
        if (!ours.item().isEvent() && !ours.item().value("STATUS").orElse("").equals("COMPLETED")
                && Merge.itemOf(old.object(), ours.uid()).stream().map(ItemReader::plain).anyMatch(ReadItem::isDone)) {
            notices.add("%s: is ticked off on the server; take it into the journal with: oldwood calendar read"
                    .formatted(ours.title()));
        }
    }

    private void refuse(Ours ours, Wire.Reply reply) {
        refused.add(ours.title() + ": the server refused it (HTTP " + reply.status() + ") " + reply.start());
    }
}

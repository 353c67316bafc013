package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.Content;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.IcsWriter;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.ItemLines;
import org.oldwood.calendar.Items;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.Memory;
import org.oldwood.calendar.Ours;
import org.oldwood.calendar.Outgoing;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Seen;
import org.oldwood.calendar.SeenReader;
import org.oldwood.calendar.Uids;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;
import org.oldwood.calendar.format.RawReader;
import org.oldwood.calendar.server.Collection.Stored;
import org.oldwood.store.Problems;

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

    /** What was done, or in a trial would have been done. */
    public record Result(
            List<String> created,
            List<String> changed,
            List<String> removed,
            int unchanged,
            List<String> notices,
            List<String> refused) {}

    /**
     * Where to publish.
     *
     * @param events the collection for events
     * @param todos the collection for to-dos; may be the same
     * @param login if the server asks for one
     * @param allowsPlain whether http without TLS may go to another machine
     */
    public record Target(URI events, URI todos, Optional<Login> login, boolean allowsPlain) {}

    /** @param isTrial whether only to say what would be done */
    public Publish(Export.Garden garden, Layout layout, LocalDate today, boolean isTrial) {
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
        work.kind(target.events, "VEVENT", target, limits);
        work.kind(target.todos, "VTODO", target, limits);
        if (!isTrial) {
            work.memory.keep();
        }
        return work.result();
    }

    /** What the collections hold, for {@link ReadBack}. */
    public static List<String> fetch(Export.Garden garden, List<Item> plan, Target target) throws IOException {
        CalendarState state = CalendarState.of(garden.folder(), new Problems());
        Uids uids = new Uids(garden.id(), state.adopted());
        Set<String> identities = new LinkedHashSet<>(state.tasks().keySet());
        plan.forEach(item -> identities.add(item.identity()));
        List<String> wanted = new ArrayList<>();
        identities.forEach(identity -> wanted.add(uids.event(identity)));
        identities.forEach(identity -> wanted.add(uids.todo(identity)));
        List<String> objects = new ArrayList<>();
        for (URI address :
                List.of(target.events, target.todos).stream().distinct().toList()) {
            Http http = new Http(address, target.login, target.allowsPlain, Http.Limits.USUAL);
            for (Stored stored : Collection.at(address, http).read(wanted).values()) {
                objects.add(text(stored.object()));
            }
        }
        return objects;
    }

    private static String text(RawComponent object) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ContentLines lines = new ContentLines(out);
        for (RawComponent calendar : object.parts()) {
            calendar.write(lines);
        }
        lines.flush();
        return out.toString(UTF_8);
    }

    /** One run. */
    private final class Work {
        final Memory memory;
        private final List<String> created = new ArrayList<>();
        private final List<String> changed = new ArrayList<>();
        private final List<String> removed = new ArrayList<>();
        private final List<String> notices = new ArrayList<>();
        private final List<String> refused = new ArrayList<>();
        private int unchanged;

        Work(Memory memory) {
            this.memory = memory;
        }

        Result result() {
            notices.addAll(memory.notices());
            return new Result(created, changed, removed, unchanged, notices, refused);
        }

        void kind(URI address, String component, Target target, Http.Limits limits) throws IOException {
            Http http = new Http(address, target.login, target.allowsPlain, limits);
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
            Map<String, Stored> there = collection.read(uids);
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
            Ours ours = ours(task, component);
            if (memory.isCancelled(task)) {
                if (old.isPresent()) {
                    remove(collection, ours, old.get());
                }
            } else if (old.isPresent()) {
                change(collection, ours, old.get(), TRIES);
            } else {
                create(collection, ours);
            }
        }

        private Ours ours(Outgoing task, String component) throws IOException {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Content content = memory.content(task);
            ItemLines lines = new ItemLines(layout);
            lines.make(content, task.stamp());
            IcsWriter writer = new IcsWriter(out, lines, memory.uids(), garden.zone());
            writer.begin();
            if (component.equals("VEVENT")) {
                writer.event();
            } else {
                writer.todo();
            }
            writer.end();
            RawComponent object = RawReader.read(new ByteArrayInputStream(out.toByteArray()), "ours", new Problems());
            RawComponent item = object.items().get(0);
            String hash = Long.toHexString(task.hash);
            item.properties().add(RawProperty.of(Merge.CONTENT + ":" + hash));
            return new Ours(item, content.item().words().title());
        }

        private RawComponent alone(RawComponent item) {
            RawComponent calendar = RawComponent.named("VCALENDAR");
            calendar.properties().add(RawProperty.of("VERSION:2.0"));
            calendar.properties().add(RawProperty.of("PRODID:" + IcsWriter.PRODUCT));
            calendar.parts().add(item);
            RawComponent object = RawComponent.named("");
            object.parts().add(calendar);
            return object;
        }

        private void create(Collection collection, Ours ours) throws IOException {
            if (isTrial) {
                created.add(ours.title());
                return;
            }
            Http.Reply reply = collection.create(ours.uid(), text(alone(ours.item())));
            if (reply.isGood()) {
                created.add(ours.title());
                return;
            }
            // it is there after all, perhaps under another name (RFC 4791, 5.3.2.1)
            Optional<Stored> other = reply.status() == PRECONDITION_FAILED || reply.status() / 100 == 4
                    ? collection.find(ours.item().name(), ours.uid())
                    : Optional.empty();
            if (other.isPresent()) {
                change(collection, ours, other.get(), TRIES);
            } else {
                refuse(ours, reply);
            }
        }

        private void change(Collection collection, Ours ours, Stored old, int tries) throws IOException {
            noticeCompletion(ours, old);
            Optional<RawComponent> merged = Merge.of(old.object(), ours.item());
            if (merged.isEmpty()) {
                unchanged++;
                return;
            }
            if (isTrial) {
                changed.add(ours.title());
                return;
            }
            Http.Reply reply = collection.change(old, text(merged.get()));
            if (reply.isGood()) {
                changed.add(ours.title());
            } else if (reply.status() == PRECONDITION_FAILED && tries > 1) {
                Optional<Stored> now = collection.again(old.address());
                if (now.isPresent()) {
                    change(collection, ours, now.get(), tries - 1);
                } else {
                    create(collection, ours);
                }
            } else {
                refuse(ours, reply);
            }
        }

        /** What was done is never taken away. */
        private void remove(Collection collection, Ours ours, Stored old) {
            boolean isDone = Merge.itemOf(old.object(), ours.uid())
                    .map(SeenReader::plain)
                    .filter(Seen::isDone)
                    .isPresent();
            if (isDone) {
                unchanged++;
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

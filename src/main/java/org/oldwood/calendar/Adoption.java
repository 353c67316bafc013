package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawReader;
import org.oldwood.store.Problems;

/**
 * Takes over from an older calendar file what was lost: revision numbers and times where the UIDs are still ours, and
 * the UIDs too where they are not (after the garden's id was lost), so that calendars that hold the old items see new
 * versions of them and no second copies.
 */
public final class Adoption {
    private static final int LONGEST_UID = 255;

    private final Export.Garden garden;
    private final Layout layout;
    private final List<Item> plan;
    private final Map<String, Item> byUid = new HashMap<>();
    private final Map<String, String> uids;
    private final Map<String, Remembered> items;
    private final Map<String, List<RawComponent>> found = new HashMap<>();
    private final Problems problems = new Problems();
    private int strangers;

    /**
     * What came of it.
     *
     * @param items how many were found again
     * @param half of how many only the event or only the to-do keeps its old UID, so that the other stands twice where
     *     the old one is
     * @param strangers how many belong to none
     */
    public record Result(int items, int half, int strangers, Problems problems) {}

    public Adoption(Export.Garden garden, Layout layout, List<Item> plan) throws IOException {
        this.garden = garden;
        this.layout = layout;
        this.plan = plan;
        CalendarState state = CalendarState.of(garden.folder(), problems);
        this.uids = new HashMap<>(state.adopted());
        this.items = new HashMap<>(state.items());
        Uids ours = new Uids(garden.id(), state.adopted());
        for (Item item : plan) {
            byUid.put(ours.event(item.identity()), item);
            byUid.put(ours.todo(item.identity()), item);
        }
    }

    /** Reads an events file or a to-dos file; call it for both. */
    public Adoption from(InputStream in, String name) throws IOException {
        for (RawComponent raw : RawReader.read(in, name, problems).items()) {
            Optional<Item> item = Optional.ofNullable(byUid.get(raw.uid())).or(() -> alike(raw));
            if (item.isPresent()) {
                found.computeIfAbsent(item.get().identity(), identity -> new ArrayList<>()).add(raw);
            } else {
                strangers++;
            }
        }
        return this;
    }

    /** Remembers what was found, for the next export. */
    public Result keep() throws IOException {
        for (Item item : plan) {
            List<RawComponent> raws = found.get(item.identity());
            if (raws != null) { items.put(item.identity(), remembered(item, raws)); }
        }
        new CalendarState(items, uids).write(garden.folder().resolve(CalendarState.FILE));
        long half = plan.stream().map(Item::identity).filter(identity -> uids
                .containsKey(Uids.name(identity, Uids.EVENT)) != uids.containsKey(Uids.name(identity, Uids.TODO)))
                .count();
        return new Result(found.size(), (int) half, strangers, problems);
    }

    private Remembered remembered(Item item, List<RawComponent> raws) {
        Optional<RawComponent> event = raws.stream().filter(RawComponent::isEvent).findFirst();
        LocalDate day = event.or(() -> raws.stream().findFirst())
                .flatMap(raw -> ItemReader.dateOf(raw.value("DTSTART").orElse(""))).filter(item.days()::hold)
                .orElse(item.days().best());
        Outgoing out = new Outgoing(item.on(item.days().at(day)), Optional.empty());
        out.event = event.isPresent() ? Outgoing.Event.OWN : Outgoing.Event.NONE;
        out.rings = event.filter(raw -> !raw.parts().isEmpty()).isPresent();
        Stamp stamp = new Stamp(
                raws.stream().mapToInt(raw -> raw.count("SEQUENCE", Integer.MAX_VALUE - 2)).max().orElse(0),
                raws.stream().map(Adoption::changed).max(Instant::compareTo).orElse(Instant.EPOCH));
        Components components = new Components(layout, new Uids(garden.id(), uids), garden.zone());
        boolean isAsNow = true;
        boolean isSameDays = true;
        for (RawComponent raw : raws) {
            RawComponent now = raw.isEvent() ? components.event(out, stamp) : components.todo(out, stamp);
            isAsNow &= now.equals(raw);
            isSameDays &= Stream.of("DTSTART", "DTEND", "DUE")
                    .allMatch(name -> now.value(name).equals(raw.value(name)));
        }
        return new Remembered(out.item, stamp, isSameDays ? layout.shown(out.item.days()) : "other",
                isAsNow ? components.hash(out) : "", day, out.event, out.rings);
    }

    /** The one item of that title whose window meets the item's days; none where two do. */
    private Optional<Item> alike(RawComponent raw) {
        String title = Title.bare(new ItemReader(garden.zone()).read(raw).title());
        Optional<LocalDate> day = ItemReader.dateOf(raw.value(raw.isEvent() ? "DTSTART" : "DUE").orElse(""));
        if (!isFit(raw.uid()) || day.isEmpty()) { return Optional.empty(); }
        List<Item> alike = plan.stream().filter(item -> item.words().title().equals(title))
                .filter(item -> !day.get().isBefore(item.days().first().minusDays(1)))
                .filter(item -> !day.get().isAfter(item.days().last().plusDays(1)))
                .filter(item -> !uids.containsKey(Uids.name(item.identity(), kind(raw)))).toList();
        if (alike.size() != 1) { return Optional.empty(); }
        uids.put(Uids.name(alike.get(0).identity(), kind(raw)), raw.uid());
        return Optional.of(alike.get(0));
    }

    /** RFC 5545, 3.8.4.7: up to 255 octets must be kept; more is not worth the trust. */
    private static boolean isFit(String uid) {
        return !uid.isEmpty() && uid.getBytes(UTF_8).length <= LONGEST_UID
                && uid.chars().noneMatch(Character::isISOControl);
    }

    private static String kind(RawComponent raw) { return raw.isEvent() ? "event" : "todo"; }

    private static Instant changed(RawComponent raw) {
        String written = raw.value("LAST-MODIFIED").or(() -> raw.value("DTSTAMP")).orElse("");
        try {
            return Stamp.UTC.parse(written, Instant::from);
        } catch (DateTimeParseException e) {
            return Instant.EPOCH;
        }
    }
}

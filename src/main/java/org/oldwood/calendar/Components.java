package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.property.Action;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Completed;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Due;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.PercentComplete;
import net.fortuna.ical4j.model.property.RelatedTo;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import org.oldwood.calendar.format.Colours;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.words.Dates;

/**
 * The event and the to-do of an item, with their properties in a fixed order, so that the same plan is the same bytes.
 * Days are DATE values: a garden's day is the same day wherever the reader is.
 *
 * @param zone the garden's: COMPLETED is UTC, and must fall on the gardener's day
 */
record Components(Layout layout, Uids uids, ZoneId zone) {
    private static final Stamp NO_STAMP = new Stamp(0, Instant.EPOCH);

    /** Tells all that an item says from what it said before, but for its revision. */
    String hash(Outgoing out) {
        String content = "%s %s %s".formatted(out.has("VEVENT") ? event(out, NO_STAMP) : "", todo(out, NO_STAMP),
                out.event);
        return UUID.nameUUIDFromBytes(content.getBytes(UTF_8)).toString();
    }

    RawComponent event(Outgoing out, Stamp stamp) {
        return event(out, stamp, out.event == Outgoing.Event.OWN ? out.item.progress().state() : Item.State.WITHDRAWN);
    }

    RawComponent event(Outgoing out, Stamp stamp, Item.State state) {
        Item item = out.item;
        VEvent event = new VEvent(false);
        head(event, uids.event(item.identity()), stamp);
        event.add(new DtStart<>(item.days().best()));
        event.add(new DtEnd<>(item.days().best().plusDays(1)));
        words(event, out, Title.ofEvent(state, item.words().title()));
        event.add(new Status(state.isCancelled() ? "CANCELLED" : "CONFIRMED"));
        event.add(new Transp("TRANSPARENT"));
        RawComponent raw = RawComponent.of(event);
        if (out.rings) { layout.alarm().ifPresent(hour -> raw.parts().add(RawComponent.of(alarm(item, hour)))); }
        return raw;
    }

    RawComponent todo(Outgoing out, Stamp stamp) {
        Item item = out.item;
        VToDo todo = new VToDo(false);
        head(todo, uids.todo(item.identity()), stamp);
        todo.add(new DtStart<>(layout.start(item.days())));
        todo.add(new Due<>(layout.due(item.days())));
        words(todo, out, Title.ofTodo(item.progress().state(), item.words().title()));
        if (!item.parent().isEmpty()) { todo.add(new RelatedTo(uids.todo(item.parent()))); }
        progress(item.progress()).forEach(todo::add);
        return RawComponent.of(todo);
    }

    private static void head(Component to, String uid, Stamp stamp) {
        to.add(new Uid(uid));
        to.add(new DtStamp(stamp.changed()));
        to.add(new LastModified(stamp.changed()));
        to.add(new Sequence(stamp.sequence()));
    }

    private void words(Component to, Outgoing out, String title) {
        Item.Words words = out.item.words();
        to.add(new Summary(title));
        List<String> lines = new ArrayList<>();
        lines.add(window(out.item.days()));
        if (to instanceof VEvent && !out.guests.isEmpty()) {
            lines.add("Also on this day: %s.".formatted(String.join("; ", out.guests)));
        }
        lines.add(words.text());
        to.add(new Description(String.join("\n", lines).strip()));
        if (!words.category().isEmpty()) { to.add(new Categories(words.category())); }
        if (!words.place().isEmpty()) { to.add(new Location(words.place())); }
        // RFC 7986, 5.9
        to.add(new Color(new ParameterList(), Colours.of(words.category())));
    }

    /** Some programs drop a to-do's days, and an event has but one of them; all show the text. */
    private String window(Item.Days days) {
        LocalDate first = days.first();
        LocalDate last = days.last();
        String month = first.getYear() != last.getYear() ? " " + Dates.month(first)
                : first.getMonth() == last.getMonth() ? "" : " " + Dates.monthName(first);
        String from = first.getDayOfMonth() + month;
        String to = "%s %s".formatted(last.getDayOfMonth(), Dates.month(last));
        String words = first.equals(last) ? "On %s.".formatted(to) : "From %s to %s.".formatted(from, to);
        return layout.due() == Layout.Due.LAST_DAY ? words
                : words + " A to-do's due date is the day after the last good day.";
    }

    private List<Property> progress(Item.Progress progress) {
        return switch (progress.state()) {
            case OPEN -> List.of(new Status("NEEDS-ACTION"));
            case BEGUN ->
                progress.percent() > 0 ? List.of(new Status("IN-PROCESS"), new PercentComplete(progress.percent()))
                        : List.of(new Status("IN-PROCESS"));
            case SKIPPED, WITHDRAWN -> List.of(new Status("CANCELLED"));
            // noon in the garden is the same day there, whatever UTC says
            case DONE -> List.of(new Status("COMPLETED"),
                    new Completed(progress.day().orElseThrow().atTime(LocalTime.NOON).atZone(zone).toInstant()),
                    new PercentComplete(100));
        };
    }

    /** Counted from midnight in the reader's own zone (RFC 5545, 3.8.6.3). */
    private static VAlarm alarm(Item item, LocalTime hour) {
        VAlarm alarm = new VAlarm();
        alarm.add(new Action("DISPLAY"));
        alarm.add(new Description(item.words().title()));
        alarm.add(new Trigger(Duration.ofMinutes(hour.toSecondOfDay() / 60)));
        return alarm;
    }
}

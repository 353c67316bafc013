package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Encodable;
import net.fortuna.ical4j.model.Parameter;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Completed;
import net.fortuna.ical4j.model.property.DateProperty;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Due;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.PercentComplete;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes one iCalendar object, item by item, with its properties in a fixed order, so that the same
 * plan is the same bytes. Days are DATE values: a garden's day is the same day wherever the reader
 * is. No METHOD: the file is no message (RFC 5546), and servers must not store one (RFC 4791, 4.1).
 */
final class IcsWriter {
    static final String PRODUCT = "-//Oldwood//Oldwood 1//EN";
    private static final Duration ALARM_AT_EIGHT = Duration.ofHours(8);

    private final ContentLines lines;
    private final Layout layout;
    private final Uids uids;
    private final ZoneId zone;
    private final Map<String, Map<Object, Property>> shared = new HashMap<>();

    /** What is said once, at the head of a file. */
    record Head(String uid, String name, boolean isFeed) {}

    /** The zone is the garden's: COMPLETED is UTC, and must fall on the gardener's day. */
    IcsWriter(OutputStream out, Layout layout, Uids uids, ZoneId zone) {
        this.lines = new ContentLines(out);
        this.layout = layout;
        this.uids = uids;
        this.zone = zone;
    }

    /** The head alone, for an object of one item on a server. */
    void begin() throws IOException {
        lines.line("BEGIN", Calendar.VCALENDAR);
        write(ImmutableVersion.VERSION_2_0);
        write(new ProdId(PRODUCT));
        write(ImmutableCalScale.GREGORIAN);
    }

    /** The head of a file, with a calendar's name and colour (RFC 7986, 5). */
    void begin(Head head) throws IOException {
        begin();
        String name = Hygiene.line(head.name);
        write(new Uid(head.uid));
        write(new Name(new ParameterList(), name));
        write(new XProperty("X-WR-CALNAME", name));
        write(new Color(new ParameterList(), Colours.CALENDAR));
        if (head.isFeed) {
            lines.line("REFRESH-INTERVAL;VALUE=DURATION", "P1D");
            write(new XProperty("X-PUBLISHED-TTL", "P1D"));
        }
    }

    void event(Item item, Stamp stamp) throws IOException {
        Item.Days days = item.days();
        List<Property> properties = identity(uids.event(item.identity()), stamp);
        properties.add(once("DTSTART", layout.eventStart(days), DtStart::new));
        properties.add(once("DTEND", layout.eventEnd(days), DtEnd::new));
        addWords(properties, item, Title::ofEvent);
        boolean cancelled = item.progress().state().isCancelled();
        properties.add(
                cancelled ? ImmutableStatus.VEVENT_CANCELLED : ImmutableStatus.VEVENT_CONFIRMED);
        properties.add(ImmutableTransp.TRANSPARENT);
        write(new VEvent(new PropertyList(properties)), alarm(item, Related.START));
    }

    void todo(Item item, Stamp stamp) throws IOException {
        Item.Days days = item.days();
        List<Property> properties = identity(uids.todo(item.identity()), stamp);
        boolean hasStart = layout.todoHasStart(days);
        if (hasStart) {
            properties.add(once("DTSTART", days.first(), DtStart::new));
        }
        properties.add(once("DUE", layout.due(days), Due::new));
        addWords(properties, item, Title::ofTodo);
        addStatus(properties, item.progress());
        write(
                new VToDo(new PropertyList(properties)),
                alarm(item, hasStart ? Related.START : Related.END));
    }

    void end() throws IOException {
        lines.line("END", Calendar.VCALENDAR);
        lines.flush();
    }

    private List<Property> identity(String uid, Stamp stamp) {
        List<Property> properties = new ArrayList<>();
        properties.add(new Uid(uid));
        properties.add(once("DTSTAMP", stamp.changed(), DtStamp::new));
        properties.add(once("LAST-MODIFIED", stamp.changed(), LastModified::new));
        properties.add(new Sequence(stamp.sequence()));
        return properties;
    }

    private void addWords(List<Property> properties, Item item, Function<Item, String> title) {
        Item.Words words = item.words();
        properties.add(new Summary(title.apply(item)));
        properties.add(new Description(WindowWords.before(words.text(), item.days(), layout)));
        if (!words.category().isEmpty()) {
            properties.add(once("CATEGORIES", words.category(), Categories::new));
        }
        if (!words.place().isEmpty()) {
            properties.add(once("LOCATION", words.place(), Location::new));
        }
        properties.add(once("COLOR", words.category(), IcsWriter::colour));
    }

    private static Property colour(String category) {
        return new Color(new ParameterList(), Colours.of(category));
    }

    /** Thousands of items share a day, a bed or a craft: its property is made once. */
    private <T> Property once(String kind, T value, Function<T, Property> make) {
        return shared.computeIfAbsent(kind, k -> new HashMap<>())
                .computeIfAbsent(value, v -> make.apply(value));
    }

    private void addStatus(List<Property> properties, Item.Progress progress) {
        switch (progress.state()) {
            case OPEN -> properties.add(ImmutableStatus.VTODO_NEEDS_ACTION);
            case BEGUN -> {
                properties.add(ImmutableStatus.VTODO_IN_PROCESS);
                if (progress.percent() > 0) {
                    properties.add(new PercentComplete(progress.percent()));
                }
            }
            case SKIPPED, WITHDRAWN -> properties.add(ImmutableStatus.VTODO_CANCELLED);
            case DONE -> {
                properties.add(ImmutableStatus.VTODO_COMPLETED);
                properties.add(new Completed(completed(progress.day().orElseThrow())));
                properties.add(new PercentComplete(100));
            }
        }
    }

    /** Noon in the garden: the same day there, whatever UTC says. */
    private Instant completed(LocalDate day) {
        return day.atTime(12, 0).atZone(zone).toInstant();
    }

    /** RFC 5545, 3.8.6.3: counted from midnight in the reader's own zone. */
    private List<Component> alarm(Item item, Related related) {
        if (layout.alarms() == Layout.Alarms.NONE || !item.progress().state().isDue()) {
            return List.of();
        }
        Trigger trigger = new Trigger(new ParameterList(List.of(related)), ALARM_AT_EIGHT);
        return List.of(
                new VAlarm(
                        new PropertyList(
                                List.of(
                                        ImmutableAction.DISPLAY,
                                        new Description(item.words().title()),
                                        trigger))));
    }

    /**
     * In the order in which the properties were given. The library's own encoding of a text takes
     * several regular expressions, that of a date a formatter: both are written here.
     */
    private void write(Component component, List<Component> inside) throws IOException {
        lines.line("BEGIN", component.getName());
        for (Property property : component.getPropertyList().getAll()) {
            write(property);
        }
        for (Component part : inside) {
            write(part, List.of());
        }
        lines.line("END", component.getName());
    }

    private void write(Property property) throws IOException {
        String name = name(property);
        if (property instanceof Encodable) {
            lines.text(name, property.getValue());
        } else if (property instanceof DateProperty<?> dated && dated.getDate() != null) {
            lines.line(name, date(dated.getDate()));
        } else {
            lines.line(name, property.getValue());
        }
    }

    /** The name with its parameters; ours are plain words. */
    private static String name(Property property) {
        List<Parameter> parameters = property.getParameterList().getAll();
        if (parameters.isEmpty()) {
            return property.getName();
        }
        StringBuilder name = new StringBuilder(property.getName());
        for (Parameter parameter : parameters) {
            name.append(';').append(parameter.getName()).append('=').append(parameter.getValue());
        }
        return name.toString();
    }

    private static String date(Temporal value) {
        return value instanceof LocalDate day ? digits(day) : Stamp.utc(Instant.from(value));
    }

    /** A DATE value (RFC 5545, 3.3.4). */
    static String digits(LocalDate day) {
        return Long.toString(
                day.getYear() * 10000L + day.getMonthValue() * 100L + day.getDayOfMonth());
    }
}

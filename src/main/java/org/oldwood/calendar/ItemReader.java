package org.oldwood.calendar;

import java.io.IOException;
import java.io.StringReader;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.property.DateProperty;
import net.fortuna.ical4j.util.CompatibilityHints;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;
import org.oldwood.store.IsoDate;

/**
 * Understands what a calendar says of an item: ical4j reads the values. Only the properties that matter here are given
 * to it, and where it refuses them together they are tried one by one, so that a client's slip in one property does not
 * lose the others.
 */
public final class ItemReader {
    private static final List<String> WANTED = List.of("STATUS", "COMPLETED", "PERCENT-COMPLETE", "LAST-MODIFIED",
            "SUMMARY");
    private static final int DATE_LENGTH = "20270112".length();
    private static final int FLOATING_LENGTH = "20270112T153000".length();
    private static final Pattern OUR_STAMP = Pattern.compile("\\d{8}T00000\\dZ");
    private static final int MOST_VALUE = 10_000;

    private final ZoneId zone;

    /** Days are those of the garden's zone. */
    ItemReader(ZoneId zone) {
        this.zone = zone;
        CompatibilityHints.setHintEnabled(CompatibilityHints.KEY_RELAXED_PARSING, true);
    }

    /** Where only the state matters and no day does; the title is as it stands. */
    public static ReadItem plain(RawComponent item) {
        return new ReadItem(item.value("STATUS").orElse("").toUpperCase(Locale.ROOT), Optional.empty(),
                item.value("COMPLETED").isPresent(), item.count("PERCENT-COMPLETE", 100), Optional.empty(),
                item.value("SUMMARY").orElse(""), item.value("DTSTART").orElse(""),
                item.value(item.isEvent() ? "DTEND" : "DUE").orElse(""));
    }

    ReadItem read(RawComponent item) {
        List<RawProperty> given = WANTED.stream().flatMap(name -> item.first(name).stream())
                .filter(property -> property.line().length() <= MOST_VALUE).toList();
        List<Property> properties = tryAll(item.name(), given).orElseGet(() -> given.stream()
                .flatMap(one -> tryAll(item.name(), List.of(one)).stream()).flatMap(List::stream).toList());
        String status = text(properties, "STATUS").strip().toUpperCase(Locale.ROOT);
        ReadItem plain = plain(item);
        return new ReadItem(status, day(item, properties, "COMPLETED"), plain.isCompletedGiven(), plain.percent(),
                isOurStamp(item) ? Optional.empty() : day(item, properties, "LAST-MODIFIED"),
                text(properties, "SUMMARY"), plain.start(), plain.end());
    }

    /**
     * Whether an item still has the time that we gave it: the first seconds of a day, and no client's. It tells when
     * the plan changed, not what the person did.
     */
    static boolean isOurStamp(RawComponent item) {
        return OUR_STAMP.matcher(item.value("LAST-MODIFIED").orElse("")).matches();
    }

    /** The library throws unchecked exceptions of several kinds on bad values. */
    private static Optional<List<Property>> tryAll(String component, List<RawProperty> given) {
        StringBuilder text = new StringBuilder("BEGIN:VCALENDAR\r\nBEGIN:" + component + "\r\n");
        given.forEach(property -> text.append(property.line()).append("\r\n"));
        text.append("END:").append(component).append("\r\nEND:VCALENDAR\r\n");
        try {
            return new CalendarBuilder().build(new StringReader(text.toString())).getComponents().stream().findFirst()
                    .map(Component::getProperties);
        } catch (IOException | ParserException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static String text(List<Property> properties, String name) {
        return find(properties, name).map(Property::getValue).orElse("");
    }

    private static Optional<Property> find(List<Property> properties, String name) {
        return properties.stream().filter(p -> p.getName().equalsIgnoreCase(name)).findFirst();
    }

    /**
     * A DATE or a time without zone, which the standard does not allow here but some write, is the day as it stands,
     * and so is one whose zone nobody knows. A day that no month has, as 30 February, is no day: the library would take
     * it for another one.
     */
    private Optional<LocalDate> day(RawComponent item, List<Property> properties, String name) {
        String raw = item.value(name).orElse("");
        Optional<LocalDate> asWritten = dateOf(raw);
        if (asWritten.isEmpty() || raw.length() == DATE_LENGTH || isFloating(item, raw, name)) { return asWritten; }
        Optional<LocalDate> inGarden = find(properties, name).filter(DateProperty.class::isInstance)
                .flatMap(property -> localDay(((DateProperty<?>) property)));
        boolean hasZone = item.first(name).filter(ItemReader::namesZone).isPresent();
        return inGarden.isPresent() || !hasZone ? inGarden : asWritten;
    }

    private static boolean isFloating(RawComponent item, String raw, String name) {
        return raw.length() == FLOATING_LENGTH && item.first(name).filter(p -> !namesZone(p)).isPresent();
    }

    private static boolean namesZone(RawProperty property) {
        return property.line().toUpperCase(Locale.ROOT).contains("TZID");
    }

    private Optional<LocalDate> localDay(DateProperty<?> property) {
        try {
            return Optional.ofNullable(property.getDate())
                    .map(time -> time.isSupported(ChronoField.INSTANT_SECONDS)
                            ? Instant.from(time).atZone(zone).toLocalDate()
                            : LocalDate.from(time));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The day with which a value of type DATE or DATE-TIME begins. */
    static Optional<LocalDate> dateOf(String digits) {
        return IsoDate.find(digits.replaceFirst("^(\\d{4})(\\d\\d)(\\d\\d).*", "$1-$2-$3"));
    }
}

package org.oldwood.calendar.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Component;

/** A component as it stands in a file: its lines, and the components inside it. */
public record RawComponent(String name, List<RawProperty> properties, List<RawComponent> parts) {

    public static RawComponent named(String name) {
        return new RawComponent(name, new ArrayList<>(), new ArrayList<>());
    }

    /** A component that the library made, without those inside it. */
    public static RawComponent of(Component made) {
        RawComponent raw = named(made.getName());
        made.getProperties()
                .forEach(property -> raw.properties.add(RawProperty.of(property.toString().stripTrailing())));
        return raw;
    }

    /** The value of the first property of that name, not unescaped. */
    public Optional<String> value(String property) {
        return first(property).map(found -> found.value().strip());
    }

    /** A whole number from 0 to {@code most}; 0 where the property is none. */
    public int count(String property, int most) {
        try {
            return Math.max(0, Math.min(most, Integer.parseInt(value(property).orElse("0"))));
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    public Optional<RawProperty> first(String property) {
        return properties.stream().filter(one -> one.name().equals(property)).findFirst();
    }

    /** RFC 5545, 3.8.4.7: UIDs are compared exactly. */
    public String uid() { return value("UID").orElse(""); }

    public boolean isItem() { return isEvent() || name.equals("VTODO"); }

    public boolean isEvent() { return name.equals("VEVENT"); }

    /** All items of a calendar, or of several. */
    public List<RawComponent> items() {
        return parts.stream().flatMap(part -> part.isItem() ? Stream.of(part)
                : part.name.equals("VCALENDAR") ? part.items().stream() : Stream.empty()).toList();
    }

    public void write(ContentLines lines) throws IOException {
        lines.whole("BEGIN:" + name);
        for (RawProperty property : properties) {
            lines.whole(property.line());
        }
        for (RawComponent part : parts) {
            part.write(lines);
        }
        lines.whole("END:" + name);
    }
}

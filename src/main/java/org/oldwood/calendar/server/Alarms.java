package org.oldwood.calendar.server;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;

/**
 * The alarms of an item on a server are the person's: added, silenced or answered. They count from the item's days, so
 * they move with it (RFC 5545, 3.8.6.3), and an answered one rings again at its new time (RFC 9074, 6.1).
 */
final class Alarms {
    private Alarms() {}

    static List<RawComponent> of(RawComponent server, RawComponent ours, RawComponent merged) {
        boolean hasStart = merged.first("DTSTART").isPresent();
        List<RawComponent> parts = new ArrayList<>(server.parts());
        if (!hasStart) { parts.replaceAll(Alarms::fromEnd); }
        if (server.parts().isEmpty() && !Written.in(server).isKnown()) { parts.addAll(ours.parts()); }
        return parts;
    }

    /** Nothing can count from the start of an item that has none. */
    private static RawComponent fromEnd(RawComponent part) {
        List<RawProperty> properties = new ArrayList<>(part.properties());
        properties.replaceAll(property -> property.name().equals("TRIGGER")
                ? RawProperty.of(property.line().replace("RELATED=START", "RELATED=END"))
                : property);
        return new RawComponent(part.name(), properties, part.parts());
    }
}

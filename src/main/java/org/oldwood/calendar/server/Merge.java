package org.oldwood.calendar.server;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.Seen;
import org.oldwood.calendar.SeenReader;
import org.oldwood.calendar.Title;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;

/**
 * Puts our new version of an item into a server's: what we wrote before is replaced, what clients added stays.
 * Completion on the server is never undone; alarms there, with what was acknowledged or deleted of them, stay unless
 * the item's days moved.
 *
 * <p>RFC 4791, 4.1: an object may carry properties of others, which a client must not lose.
 */
final class Merge {
    /**
     * Says which content of ours an object holds. While it is still the present one there is nothing to write, whatever
     * a client has changed since.
     */
    static final String CONTENT = "X-OLDWOOD-CONTENT";

    private static final Set<String> OURS = Set.of(
            "UID",
            "DTSTAMP",
            "LAST-MODIFIED",
            "SEQUENCE",
            "DTSTART",
            "DTEND",
            "DUE",
            "DURATION",
            "SUMMARY",
            "DESCRIPTION",
            "CATEGORIES",
            "LOCATION",
            "COLOR",
            "TRANSP",
            CONTENT);
    private static final Set<String> PROGRESS = Set.of("STATUS", "COMPLETED", "PERCENT-COMPLETE");
    private static final List<String> DAYS = List.of("DTSTART", "DTEND", "DUE");
    private static final String ALARM = "VALARM";

    private final RawComponent server;
    private final RawComponent ours;
    private final boolean keepsProgress;
    private final boolean isMoved;

    private Merge(RawComponent server, RawComponent ours) {
        this.server = server;
        this.ours = ours;
        this.keepsProgress = !ours.isEvent() && keepsProgress();
        this.isMoved = DAYS.stream().anyMatch(this::differs);
    }

    /** The server's whole object with our version in it; empty where there is nothing to write. */
    static Optional<RawComponent> of(RawComponent object, RawComponent ours) {
        RawComponent server = itemOf(object, ours.uid()).orElseThrow();
        if (server.value(CONTENT).equals(ours.value(CONTENT))) {
            return Optional.empty();
        }
        return Optional.of(replaced(object, server, new Merge(server, ours).merged()));
    }

    static Optional<RawComponent> itemOf(RawComponent object, String uid) {
        return object.items().stream().filter(item -> item.uid().equals(uid)).findFirst();
    }

    private static RawComponent replaced(RawComponent tree, RawComponent old, RawComponent now) {
        if (tree.equals(old)) {
            return now;
        }
        List<RawComponent> parts = new ArrayList<>();
        tree.parts().forEach(part -> parts.add(replaced(part, old, now)));
        return new RawComponent(tree.name(), tree.properties(), parts);
    }

    private RawComponent merged() {
        RawComponent merged = RawComponent.named(ours.name());
        for (RawProperty property : ours.properties()) {
            if (!(keepsProgress && PROGRESS.contains(property.name()))) {
                merged.properties().add(stamped(property));
            }
        }
        for (RawProperty property : server.properties()) {
            boolean isReplaced = PROGRESS.contains(property.name()) ? !keepsProgress : OURS.contains(property.name());
            if (!isReplaced) {
                merged.properties().add(property);
            }
        }
        merged.parts().addAll(parts());
        return merged;
    }

    /** RFC 5545, 3.8.7.4: clients raise SEQUENCE too, so ours goes past theirs. */
    private RawProperty stamped(RawProperty property) {
        return switch (property.name()) {
            case "SEQUENCE" -> RawProperty.of("SEQUENCE:" + sequence());
            case "DTSTAMP", "LAST-MODIFIED" -> later(property);
            default -> property;
        };
    }

    private int sequence() {
        boolean isSignificant = isMoved || (!keepsProgress && differs("STATUS"));
        int theirs = number(server) + (isSignificant ? 1 : 0);
        return Math.max(number(ours), theirs);
    }

    private static int number(RawComponent item) {
        try {
            int sequence = Integer.parseInt(item.value("SEQUENCE").orElse("0"));
            return Math.min(Math.max(sequence, 0), Integer.MAX_VALUE - 1);
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    /** UTC times of one length compare as text. */
    private RawProperty later(RawProperty property) {
        String theirs = server.value(property.name()).orElse("");
        boolean isTheirs = theirs.length() == property.value().length() && theirs.compareTo(property.value()) > 0;
        return isTheirs ? RawProperty.of(property.name() + ":" + theirs) : property;
    }

    private boolean keepsProgress() {
        Seen there = seen();
        if (there.isDone()) {
            return true;
        }
        String here = ours.value("STATUS").orElse("");
        boolean isOpenHere = here.equals("NEEDS-ACTION") || here.equals("IN-PROCESS");
        boolean isCancelledThere = there.status().equals("CANCELLED") && !Title.isOfCancelled(there.title());
        return isOpenHere && (there.isUnderWay() || isCancelledThere);
    }

    private Seen seen() {
        return SeenReader.plain(server);
    }

    private List<RawComponent> parts() {
        boolean takesOurs = isMoved || ours.parts().isEmpty();
        List<RawComponent> parts = new ArrayList<>();
        if (takesOurs) {
            parts.addAll(ours.parts());
        }
        for (RawComponent part : server.parts()) {
            if (!takesOurs || !part.name().equals(ALARM)) {
                parts.add(part);
            }
        }
        return parts;
    }

    private boolean differs(String name) {
        return !server.value(name).equals(ours.value(name));
    }
}

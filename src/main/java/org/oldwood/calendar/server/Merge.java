package org.oldwood.calendar.server;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.ItemReader;
import org.oldwood.calendar.ReadItem;
import org.oldwood.calendar.Title;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;

/**
 * Brings an item on a server up to the plan without taking anything from the person, by three versions: what we wrote
 * last (its marks stand in the item, {@link Written}), what stands there now, what the plan says now. What only the
 * plan changed is changed; what the person changed stays, and if the plan changed it too, the plan's goes into one line
 * of the description. A completed item, alarms and properties of others are left alone (RFC 4791, 4.1).
 */
final class Merge {
    /** Which content of ours an object holds; while it is the present one there is nothing to write. */
    static final String CONTENT = "X-OLDWOOD-CONTENT";

    private static final Set<String> STAMPS = Set.of("DTSTAMP", "LAST-MODIFIED", "SEQUENCE", CONTENT, Written.NAME);
    private static final Set<String> PROGRESS = Set.of("STATUS", "COMPLETED", "PERCENT-COMPLETE");
    private static final String DESCRIPTION = "DESCRIPTION";
    private static final Set<String> OF_PEOPLE = Set.of("ATTACH", "ATTENDEE", "COMMENT", "CONTACT", "PRIORITY", "URL");

    private final RawComponent server;
    private final RawComponent ours;
    private final Written before;
    private final PlanLine lineBefore;
    private final Map<String, String> inLine = new LinkedHashMap<>();
    private final List<String> told = new ArrayList<>();

    /**
     * What came of it.
     *
     * @param object the server's whole object with the plan's changes in it; empty where there is nothing to write
     * @param told in words, what the person's version keeps out or what was replaced
     */
    record Result(Optional<RawComponent> object, List<String> told) {}

    private Merge(RawComponent server, RawComponent ours) {
        this.server = server;
        this.ours = ours;
        this.before = Written.in(server);
        this.lineBefore = PlanLine.in(server.value(DESCRIPTION).orElse(""));
    }

    static Result of(RawComponent object, RawComponent ours) {
        RawComponent server = itemOf(object, ours.uid()).orElseThrow();
        boolean isDone = !ours.isEvent() && ItemReader.plain(server).isDone();
        if (isDone || server.value(CONTENT).equals(ours.value(CONTENT))) {
            return new Result(Optional.empty(), List.of());
        }
        Merge merge = new Merge(server, ours);
        RawComponent merged = merge.merged();
        boolean isSame = plain(merged).equals(plain(server));
        return new Result(isSame ? Optional.empty() : Optional.of(replaced(object, server, merged)), merge.told);
    }

    /**
     * Whether a person wrote, moved or began something in an item that the plan would take away; so it is too where
     * nobody knows any more who wrote what.
     */
    static boolean isTouched(RawComponent server) {
        Written before = Written.in(server);
        String text = PlanLine.in(server.value(DESCRIPTION).orElse("")).rest();
        boolean isChanged = before.isChanged(DESCRIPTION, text) || Written.GROUPS.keySet().stream()
                .anyMatch(group -> !group.equals(DESCRIPTION) && before.isChanged(group, server));
        return isChanged || ItemReader.plain(server).isUnderWay()
                || server.properties().stream().anyMatch(one -> OF_PEOPLE.contains(one.name()));
    }

    /** An item that the plan has no use for, but that a person wrote in: it stays, and says so. */
    static Result withdrawn(RawComponent object, RawComponent ours) {
        RawComponent server = itemOf(object, ours.uid()).orElseThrow();
        if (server.value(CONTENT).equals(ours.value(CONTENT))) { return new Result(Optional.empty(), List.of()); }
        PlanLine line = PlanLine.in(server.value(DESCRIPTION).orElse(""));
        String whole = line.after("not needed any more").addedTo(line.rest());
        RawComponent marked = new RawComponent(server.name(), new ArrayList<>(server.properties()), server.parts());
        marked.properties().removeIf(one -> one.name().equals(DESCRIPTION) || one.name().equals(CONTENT));
        marked.properties().add(RawProperty.of(DESCRIPTION + ":" + whole));
        ours.first(CONTENT).ifPresent(marked.properties()::add);
        return new Result(Optional.of(replaced(object, server, marked)),
                List.of("the plan does not need it any more; it stays on the server, since it was changed there."));
    }

    static Optional<RawComponent> itemOf(RawComponent object, String uid) {
        return object.items().stream().filter(item -> item.uid().equals(uid)).findFirst();
    }

    /** Ready to be made on a server, with the marks of what it says. */
    static RawComponent marked(RawComponent ours) {
        RawComponent marked = new RawComponent(ours.name(), new ArrayList<>(ours.properties()), ours.parts());
        marked.properties().add(Written.of(ours).property());
        return marked;
    }

    @SuppressWarnings("ReferenceEquality") // this very part of the tree, not one that says the same
    private static RawComponent replaced(RawComponent tree, RawComponent old, RawComponent now) {
        if (tree == old) { return now; }
        List<RawComponent> parts = new ArrayList<>();
        tree.parts().forEach(part -> parts.add(replaced(part, old, now)));
        return new RawComponent(tree.name(), tree.properties(), parts);
    }

    /** What people see of an item, in any order. */
    private static Map<String, Object> plain(RawComponent item) {
        Map<String, Object> plain = new LinkedHashMap<>();
        for (RawProperty property : item.properties()) {
            if (!STAMPS.contains(property.name())) {
                plain.merge(property.name(), property.line(), (one, other) -> one + "\n" + other);
            }
        }
        plain.put("", item.parts());
        return plain;
    }

    private RawComponent merged() {
        boolean hasSmallDrift = !before.isChanged(Written.DAYS, ours)
                && Drift.isSmall(lineBefore.rest(), ours.value(DESCRIPTION).orElse(""));
        List<RawProperty> taken = new ArrayList<>();
        for (String group : Written.GROUPS.keySet()) {
            if (!group.equals(DESCRIPTION)) {
                taken.addAll(of(takesOurs(group) ? ours : server, Written.names(group)));
            }
        }
        boolean takesText = !hasSmallDrift && takesOurs(DESCRIPTION);
        Written marks = Written.of(ours);
        if (hasSmallDrift) { before.markOf(DESCRIPTION).ifPresent(kept -> marks.marks().put(DESCRIPTION, kept)); }
        String text = takesText ? ours.value(DESCRIPTION).orElse("") : lineBefore.rest();
        String whole = PlanLine.of(inLine).addedTo(text);
        if (!whole.isEmpty()) {
            taken.add(server.first(DESCRIPTION).filter(there -> there.value().strip().equals(whole))
                    .orElseGet(() -> RawProperty.of(DESCRIPTION + ":" + whole)));
        }
        boolean isMoved = !Written.text(taken, Written.DAYS).equals(Written.text(server.properties(), Written.DAYS));
        RawComponent merged = RawComponent.named(ours.name());
        stamps(isMoved).forEach(merged.properties()::add);
        merged.properties().add(marks.property());
        merged.properties().addAll(taken);
        merged.properties().addAll(of(keepsProgress() ? server : ours, PROGRESS));
        server.properties().stream().filter(this::isOfOthers).forEach(merged.properties()::add);
        merged.parts().addAll(Alarms.of(server, ours, merged));
        return merged;
    }

    private static List<RawProperty> of(RawComponent item, Set<String> names) {
        return item.properties().stream().filter(p -> names.contains(p.name())).toList();
    }

    private boolean isOfOthers(RawProperty property) {
        String name = property.name();
        return !name.equals("UID") && !STAMPS.contains(name) && !PROGRESS.contains(name) && !name.equals(DESCRIPTION)
                && Written.GROUPS.keySet().stream().noneMatch(group -> Written.names(group).contains(name));
    }

    /** Whether the plan's version of some properties goes out; notes what the person's version keeps out. */
    private boolean takesOurs(String group) {
        String theirs = group.equals(DESCRIPTION) ? lineBefore.rest() : Written.text(server.properties(), group);
        String plan = Written.text(ours.properties(), group);
        if (Written.mark(theirs).equals(Written.mark(plan))) { return true; }
        if (!before.isKnown()) {
            told.add("its " + Written.GROUPS.get(group)
                    + " on the server, whose origin is not known, gave way to the plan's: " + Written.inWords(theirs));
            return true;
        }
        if (!before.isChanged(group, theirs)) { return true; }
        String word = Written.GROUPS.getOrDefault(group, group);
        boolean isNews = before.isChanged(group, plan);
        if (isNews || lineBefore.names(word)) { inLine.put(word, Written.inWords(plan)); }
        if (isNews) {
            told.add("its " + word + " were changed on the server and stay; the plan says: " + Written.inWords(plan));
        }
        return false;
    }

    /** RFC 5545, 3.8.7.4: clients raise SEQUENCE too, so ours goes past theirs. */
    private List<RawProperty> stamps(boolean isMoved) {
        List<RawProperty> stamps = new ArrayList<>();
        stamps.add(RawProperty.of("UID:" + ours.uid()));
        int theirs = number(server) + (isMoved || isStatusChanged() ? 1 : 0);
        stamps.add(RawProperty.of("SEQUENCE:" + Math.max(number(ours), theirs)));
        List.of("DTSTAMP", "LAST-MODIFIED").forEach(name -> ours.first(name).map(this::later).ifPresent(stamps::add));
        ours.first(CONTENT).ifPresent(stamps::add);
        return stamps;
    }

    private boolean isStatusChanged() {
        return !keepsProgress() && !server.value("STATUS").equals(ours.value("STATUS"));
    }

    private static int number(RawComponent item) { return item.count("SEQUENCE", Integer.MAX_VALUE - 1); }

    /** UTC times of one length compare as text. */
    private RawProperty later(RawProperty property) {
        String theirs = server.value(property.name()).orElse("");
        boolean isTheirs = theirs.length() == property.value().length() && theirs.compareTo(property.value()) > 0;
        return isTheirs ? RawProperty.of(property.name() + ":" + theirs) : property;
    }

    /** Work that was begun or called off on the server is not reopened; an event keeps a status of the person's. */
    private boolean keepsProgress() {
        String here = ours.value("STATUS").orElse("");
        if (ours.isEvent()) { return !server.value("STATUS").orElse("CONFIRMED").equals("CONFIRMED"); }
        ReadItem there = ItemReader.plain(server);
        boolean isOpenHere = here.equals("NEEDS-ACTION") || here.equals("IN-PROCESS");
        boolean isCancelledThere = there.status().equals("CANCELLED") && !Title.isOfCancelled(there.title());
        return isOpenHere && (there.isUnderWay() || isCancelledThere);
    }
}

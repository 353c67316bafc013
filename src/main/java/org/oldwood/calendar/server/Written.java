package org.oldwood.calendar.server;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;

/**
 * Marks of what we last wrote into an item, one for each group of properties that change together. They stand in the
 * item itself, as {@value #NAME}, so that they are there whichever machine publishes, and after a lost state.
 */
record Written(Map<String, String> marks) {
    static final String NAME = "X-OLDWOOD-WRITTEN";
    static final String DAYS = "DAYS";

    /** The groups, and what people call them. */
    static final Map<String, String> GROUPS = new LinkedHashMap<>();

    static {
        GROUPS.put(DAYS, "dates");
        GROUPS.put("SUMMARY", "words of the title");
        GROUPS.put("CATEGORIES", "categories");
        GROUPS.put("LOCATION", "words of the place");
        GROUPS.put("COLOR", "colours");
        GROUPS.put("TRANSP", "free or busy times");
        GROUPS.put("DESCRIPTION", "words");
    }

    static Set<String> names(String group) {
        return group.equals(DAYS) ? Set.of("DTSTART", "DTEND", "DUE", "DURATION") : Set.of(group);
    }

    static Written of(RawComponent item) {
        Map<String, String> marks = new LinkedHashMap<>();
        GROUPS.keySet().forEach(group -> marks.put(group, mark(text(item.properties(), group))));
        return new Written(marks);
    }

    /** What an item says of itself; empty if a client dropped it, or an earlier version wrote the item. */
    static Written in(RawComponent item) {
        Map<String, String> marks = new LinkedHashMap<>();
        for (String part : item.value(NAME).orElse("").split(" ", -1)) {
            String[] pair = part.split("=", 2);
            if (pair.length == 2 && GROUPS.containsKey(pair[0])) { marks.put(pair[0], pair[1]); }
        }
        return new Written(marks);
    }

    RawProperty property() {
        return RawProperty.of(NAME + ":" + marks.entrySet().stream().map(mark -> mark.getKey() + "=" + mark.getValue())
                .collect(Collectors.joining(" ")));
    }

    Optional<String> markOf(String group) { return Optional.ofNullable(marks.get(group)); }

    boolean isKnown() { return !marks.isEmpty(); }

    boolean isChanged(String group, RawComponent item) { return isChanged(group, text(item.properties(), group)); }

    /** Whether a text is another one than we wrote. */
    boolean isChanged(String group, String text) {
        return !mark(text).equals(marks.get(group));
    }

    /** The values of a group's properties. */
    static String text(List<RawProperty> properties, String group) {
        Set<String> names = names(group);
        return properties.stream().filter(property -> names.contains(property.name()))
                .map(property -> (group.equals(DAYS) ? property.name() + " " : "") + property.value().strip()).sorted()
                .collect(Collectors.joining(" "));
    }

    /** Servers escape commas and semicolons or not; both say the same. */
    static String mark(String text) {
        String plain = text.replace("\\N", "\\n").replace("\\,", ",").replace("\\;", ";").strip();
        return Integer.toHexString(plain.hashCode());
    }

    /** On one line, for people: as it stands in the calendar, but for what is only notation. */
    static String inWords(String text) {
        return text.replace("\\n", " / ").replace("\\N", " / ").replace("\\,", ",").replace("\\;", ";")
                .replace("DTSTART ", "from ").replace("DTEND ", "to before ").replace("DUE ", "due ");
    }
}

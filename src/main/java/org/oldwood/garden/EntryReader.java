package org.oldwood.garden;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.oldwood.crop.Stage;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * Reads one journal entry and checks it against its kind: known keys, right types and ranges. Whether the plants and
 * beds it names exist is checked when the journal is added up ({@link GardenState}).
 */
public final class EntryReader {
    private static final int MOST_STEMS = 500;

    /** After the digits a + where older ones were lumped with them. */
    private static final Pattern AGE = Pattern.compile("[0-9]{1,2}\\+?");

    private EntryReader() {}

    /** The entry, or nothing where it has problems; all of them go to {@code problems}. */
    public static Optional<Entry> read(Json json, Problems problems) {
        return read(json, new HashMap<>(), problems);
    }

    /** One of many entries; counts of stems that come again are kept once in {@code alike}. */
    static Optional<Entry> read(Json json, Map<String, Map<String, Json>> alike, Problems problems) {
        int before = problems.count();
        Fields fields = Fields.of(json, problems);
        String id = fields.text("id");
        LocalDate date = fields.date("date");
        String kindKey = fields.text("entry");
        EntryKind kind = EntryKind.find(kindKey).orElse(null);
        if (kind == null) {
            if (!kindKey.isEmpty()) {
                fields.tell("entry", "unknown-entry", kindKey, Nearest.hint(kindKey, EntryKind.keys()));
            }
            return Optional.empty();
        }
        Map<String, Json> said = values(fields, kind, alike);
        needOne(fields, kind, said);
        String note = fields.text("note", "");
        fields.done();
        if (problems.count() > before) { return Optional.empty(); }
        Entry entry = new Entry(id, date, kind, said, note, fields.place());
        for (EntryField field : kind.fields()) {
            if (!field.of().isEmpty()) { checkPart(entry, field, entry.placeOf(field.key()), problems); }
        }
        return problems.count() == before ? Optional.of(entry) : Optional.empty();
    }

    private static Map<String, Json> values(Fields fields, EntryKind kind, Map<String, Map<String, Json>> alike) {
        Map<String, Json> values = new HashMap<>();
        kind.fields().forEach(
                field -> read(fields, field, kind).ifPresent(value -> values.put(field.key(), kept(value, alike))));
        // a large garden keeps half a million of these, and nobody asks for their order
        return Map.copyOf(values);
    }

    private static Json kept(Json value, Map<String, Map<String, Json>> alike) {
        if (!(value instanceof Json.Obj stems)) { return value; }
        StringBuilder written = new StringBuilder();
        stems.members().forEach((age, count) -> written.append(age).append(':').append(count.shown()).append(' '));
        return new Json.Obj(stems.place(), alike.computeIfAbsent(written.toString(), any -> stems.members()));
    }

    private static void needOne(Fields fields, EntryKind kind, Map<String, Json> values) {
        List<String> needed = kind.oneNeeded();
        if (!needed.isEmpty() && Collections.disjoint(needed, values.keySet())) {
            String others = String.join(" or ", needed.subList(1, needed.size()));
            String message = "or %s is missing: %s must say at least one".formatted(others, kind.key());
            fields.tell(needed.get(0), "missing-key one-of", message);
        }
    }

    private static Optional<Json> read(Fields fields, EntryField field, EntryKind kind) {
        Optional<Json> raw = fields.raw(field.key());
        if (raw.isEmpty()) {
            if (field.required()) { fields.tell(field.key(), "missing-key of-entry", kind.key(), field.help()); }
            return raw;
        }
        check(fields, field);
        return raw;
    }

    private static void check(Fields fields, EntryField field) {
        String key = field.key();
        switch (field.type()) {
            case NUMBER -> fields.optionalNumber(key, field.least(), field.most());
            case COUNT -> fields.count(key, (int) field.least(), (int) field.most());
            case WORD -> fields.optionalOneOf(key, field.words());
            case FLAG -> fields.flag(key, false);
            case STAGE -> stage(fields, key);
            case STEMS -> stems(fields, key);
            case SOME_STEMS -> someStems(fields, field);
            case NEW_ID -> id(fields, key, fields.text(key));
            case NEW_IDS, PLANTS -> fields.texts(key).forEach(text -> id(fields, key, text));
            case PLANT, BED, LOT, CROP, MATERIAL, TEXT, TASK, ENTRY -> fields.optionalText(key);
        }
    }

    private static void stage(Fields fields, String key) {
        String text = fields.text(key);
        if (!text.isEmpty() && Stage.find(text).isEmpty()) {
            fields.tell(key, "unknown-stage", text, Nearest.hint(text, Stage.keys()));
        }
    }

    private static void someStems(Fields fields, EntryField field) {
        if (fields.raw(field.key()).orElse(null) instanceof Json.Obj) {
            stems(fields, field.key());
        } else {
            fields.count(field.key(), (int) field.least(), (int) field.most());
        }
    }

    private static void stems(Fields fields, String key) {
        fields.counts(key, 0, MOST_STEMS).forEach((age, count) -> {
            if (!AGE.matcher(age).matches()) { fields.tell(key, "not-an-age", age); }
        });
    }

    private static void id(Fields fields, String key, String text) {
        if (!text.isEmpty() && !GardenReader.isId(text)) { fields.tell(key, "not-an-id", GardenReader.idRule(text)); }
    }

    /** A part is no more than its whole; one told by age names only classes that were counted, and no more of each. */
    private static void checkPart(Entry entry, EntryField part, Place place, Problems problems) {
        Stems counted = entry.stems(part.of());
        int most = entry.count(part.of()).orElse(counted.total());
        int said = entry.count(part.key()).orElse(0);
        if (said > most) { problems.tell("part-above-whole", place, most, part.whole(), said); }
        Stems ages = entry.stems(part.key());
        boolean sameClasses = ages.openFrom().isEmpty() || ages.openFrom().equals(counted.openFrom());
        ages.byAge().forEach((age, number) -> {
            int there = sameClasses ? counted.at(age) : 0;
            if (number > there) { problems.tell("part-above-whole by-age", place, number, age, there, part.of()); }
        });
    }
}

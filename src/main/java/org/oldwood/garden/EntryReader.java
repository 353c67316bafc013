package org.oldwood.garden;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Stage;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Members;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/**
 * Reads one journal entry and checks it against its kind: known keys, right types and ranges. Whether the plants and
 * beds it names exist is checked when the journal is added up ({@link GardenState}).
 */
public final class EntryReader {
    private static final int MOST_STEMS = 500;

    private final Problems problems;
    private final Members.Gathering values = new Members.Gathering();

    /** Days that came before; most entries share theirs with others. */
    private final Map<String, LocalDate> days = new HashMap<>();

    EntryReader(Problems problems) {
        this.problems = problems;
    }

    /** The entry, or nothing where it has problems; all of them go to {@code problems}. */
    public static Optional<Entry> read(Json json, Problems problems) {
        return new EntryReader(problems).read(json);
    }

    /** The next entry, or nothing where it has problems. */
    Optional<Entry> read(Json json) {
        int before = problems.count();
        Fields fields = Fields.of(json, problems);
        String id = fields.text("id");
        LocalDate date = date(fields);
        String kindKey = fields.text("entry");
        EntryKind kind = EntryKind.find(kindKey).orElse(null);
        if (kind == null) {
            if (!kindKey.isEmpty()) {
                fields.wrong(
                        "entry",
                        "unknown-entry",
                        "is no kind of entry: \"" + kindKey + "\"",
                        Nearest.hint(kindKey, EntryKind.keys()));
            }
            return Optional.empty();
        }
        Map<String, Json> said = values(fields, kind);
        needOne(fields, kind, said);
        String note = fields.text("note", "");
        fields.done();
        if (problems.count() > before) {
            return Optional.empty();
        }
        Entry entry = new Entry(id, date, kind, said, note, fields.place());
        EntryLimits.check(entry, problems);
        return problems.count() == before ? Optional.of(entry) : Optional.empty();
    }

    private LocalDate date(Fields fields) {
        String written = fields.raw("date").orElse(null) instanceof Json.Text text ? text.value() : "";
        LocalDate known = days.get(written);
        if (known != null) {
            return known;
        }
        LocalDate date = fields.date("date");
        if (fields.ok()) {
            days.put(written, date);
        }
        return date;
    }

    private Map<String, Json> values(Fields fields, EntryKind kind) {
        for (EntryField field : kind.fields()) {
            Json value = read(fields, field, kind).orElse(null);
            if (value != null) {
                values.put(field.key(), value);
            }
        }
        return values.take();
    }

    private static void needOne(Fields fields, EntryKind kind, Map<String, Json> values) {
        List<String> needed = kind.oneNeeded();
        if (!needed.isEmpty() && Collections.disjoint(needed, values.keySet())) {
            fields.wrong(
                    needed.get(0),
                    "missing-key",
                    "or "
                            + String.join(" or ", needed.subList(1, needed.size()))
                            + " is missing: "
                            + kind.key()
                            + " must say at least one",
                    "");
        }
    }

    private static Optional<Json> read(Fields fields, EntryField field, EntryKind kind) {
        Optional<Json> raw = fields.raw(field.key());
        if (raw.isEmpty()) {
            if (field.required()) {
                fields.wrong(field.key(), "missing-key", "is missing: " + kind.key() + " must say " + field.help(), "");
            }
            return raw;
        }
        if (!isPlain(raw.get(), field)) {
            check(fields, field);
        }
        return raw;
    }

    /**
     * Whether the value of one of the commonest fields is plainly right. Where it is not, {@link #check} looks at it
     * again and words what is wrong.
     */
    private static boolean isPlain(Json value, EntryField field) {
        return switch (field.type()) {
            case PLANT, BED, LOT, CROP, TASK ->
                value instanceof Json.Text text && !text.value().isBlank();
            case NEW_ID -> value instanceof Json.Text text && GardenReader.isId(text.value());
            case WORD -> value instanceof Json.Text text && field.words().contains(text.value());
            case COUNT -> isCount(value, field.least(), field.most());
            case STEMS -> value instanceof Json.Obj stems && areStems(stems);
            default -> false;
        };
    }

    private static boolean isCount(Json value, double least, double most) {
        return value instanceof Json.Num number
                && number.value() >= least
                && number.value() <= most
                && number.value() == Math.rint(number.value());
    }

    private static boolean areStems(Json.Obj stems) {
        for (Map.Entry<String, Json> each : stems.members().entrySet()) {
            if (!isAge(each.getKey()) || !isCount(each.getValue(), 0, MOST_STEMS)) {
                return false;
            }
        }
        return true;
    }

    /** One or two digits; after them a + where older ones were lumped with them. */
    private static boolean isAge(String key) {
        int digits = key.endsWith("+") ? key.length() - 1 : key.length();
        return (digits == 1 || digits == 2) && isDigit(key.charAt(0)) && isDigit(key.charAt(digits - 1));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
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
            fields.wrong(key, "unknown-stage", "is no stage: \"" + text + "\"", Nearest.hint(text, Stage.keys()));
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
            if (!isAge(age)) {
                fields.wrong(
                        key,
                        "not-an-age",
                        "must have ages as its keys, 0 to 99, the oldest with + if you lumped them, but has \""
                                + age
                                + "\"",
                        "Write for example: \"stems\": {\"1\": 5, \"2\": 4, \"3\": 4, \"4+\": 3}");
            }
        });
    }

    private static void id(Fields fields, String key, String text) {
        if (!text.isEmpty() && !GardenReader.isId(text)) {
            fields.wrong(key, "not-an-id", GardenReader.idRule(text), "");
        }
    }
}

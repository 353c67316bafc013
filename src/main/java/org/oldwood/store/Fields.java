package org.oldwood.store;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads the keys of one JSON object. Each key asked for is remembered; {@link #done()} then reports the keys that
 * nobody asked for. A wrong or missing value adds a problem and gives a harmless stand-in, so that one run finds every
 * problem; {@link #ok()} tells whether what was read may be used.
 */
public final class Fields {
    private final Json.Obj object;
    private final Problems problems;
    private final Set<String> asked = new HashSet<>();
    private boolean ok = true;

    public Fields(Json.Obj object, Problems problems) {
        this.object = object;
        this.problems = problems;
    }

    public Place place() { return object.place(); }

    public Problems problems() { return problems; }

    public boolean ok() { return ok; }

    public boolean has(String key) { return object.members().containsKey(key); }

    /** The keys in the order of the file. */
    public List<String> keys() {
        return List.copyOf(object.members().keySet());
    }

    /** The value as it stands, if the key is there. */
    public Optional<Json> raw(String key) {
        asked.add(key);
        return Optional.ofNullable(object.members().get(key));
    }

    /** Says that something about this object is wrong. */
    public void wrong(String key, String name, String message, String remedy) {
        ok = false;
        problems.add(name, at(key), message, remedy);
    }

    /** Says that something about this object is wrong, where it holds. */
    public void tellIf(boolean holds, String key, String words, Object... said) {
        if (holds) { tell(key, words, said); }
    }

    /** Says that something about this object is wrong, in the words of {@code words/problems.txt}. */
    public void tell(String key, String words, Object... said) {
        tell(at(key), words, said);
    }

    private void tell(Place place, String words, Object... said) {
        ok = false;
        problems.tell(words, place, said);
    }

    private Place at(String key) {
        Json value = object.members().get(key);
        return value == null ? object.place().at(key) : value.place();
    }

    private <T> T missing(String key, String wanted, T standIn) {
        tell(object.place().at(key), "missing-key", wanted);
        return standIn;
    }

    /** Reports every key that was never asked for. Call it once, when all keys have been read. */
    public void done() {
        object.members().forEach((key, value) -> {
            if (!asked.contains(key)) { tell(value.place(), "unknown-key", Nearest.hint(key, asked)); }
        });
    }

    /** The keys of {@code value} if it is an object; otherwise a problem, and an empty object. */
    public static Fields of(Json value, Problems problems) {
        if (value instanceof Json.Obj object) { return new Fields(object, problems); }
        Fields none = new Fields(new Json.Obj(value.place(), Map.of()), problems);
        none.tell(value.place(), "not-an-object", value.shown());
        return none;
    }

    /** The keys of an object that is not there. */
    public Fields none() {
        return new Fields(new Json.Obj(object.place(), Map.of()), problems);
    }

    /** These keys, and where one is not here that of another object, but for some. */
    public Fields orOf(Fields other, Set<String> butFor) {
        Map<String, Json> members = new LinkedHashMap<>(other.object.members());
        members.keySet().removeAll(butFor);
        members.putAll(object.members());
        return new Fields(new Json.Obj(object.place(), members), problems);
    }

    /** A text that must be there and must not be blank. */
    public String text(String key) {
        Optional<String> there = optionalText(key);
        return there.isPresent() ? there.get() : missing(key, "a text", "");
    }

    public String text(String key, String otherwise) { return optionalText(key).orElse(otherwise); }

    /** A text that may be absent; when there, it must not be blank. */
    public Optional<String> optionalText(String key) {
        Json value = raw(key).orElse(null);
        if (value == null) { return Optional.empty(); }
        if (value instanceof Json.Text text && !text.value().isBlank()) { return Optional.of(text.value()); }
        tell(value.place(), "not-a-text", value.shown(), key);
        return Optional.of("");
    }

    /** A number that must be there, from {@code least} to {@code most}, both included. */
    public double number(String key, double least, double most) {
        return optionalNumber(key, least, most)
                .orElseGet(() -> missing(key, "a number from " + plain(least) + " to " + plain(most), least));
    }

    public double number(String key, double least, double most, double otherwise) {
        return optionalNumber(key, least, most).orElse(otherwise);
    }

    /** A number that may be absent, from {@code least} to {@code most}, both included. */
    public OptionalDouble optionalNumber(String key, double least, double most) {
        Json value = raw(key).orElse(null);
        if (value == null) { return OptionalDouble.empty(); }
        if (value instanceof Json.Num num && num.value() >= least && num.value() <= most) {
            return OptionalDouble.of(num.value());
        }
        tell(value.place(), "number-out-of-range", plain(least), plain(most), value.shown(), key,
                plain(Math.max(least, Math.min(most, 1))));
        return OptionalDouble.of(least);
    }

    /** A whole number that must be there, from {@code least} to {@code most}, both included. */
    public int count(String key, int least, int most) {
        return (int) whole(key, number(key, least, most));
    }

    public int count(String key, int least, int most, int otherwise) {
        return (int) whole(key, number(key, least, most, otherwise));
    }

    private double whole(String key, double value) {
        if (value != Math.rint(value)) { tell(at(key), "not-whole", value); }
        return Math.rint(value);
    }

    public boolean flag(String key, boolean otherwise) {
        Optional<Json> value = raw(key);
        if (value.orElse(null) instanceof Json.Bool bool) { return bool.value(); }
        value.ifPresent(it -> tell(it.place(), "not-true-or-false", it.shown()));
        return otherwise;
    }

    /** An ISO date that must be there. */
    public LocalDate date(String key) {
        return optionalDate(key).orElseGet(() -> missing(key, "a date such as 2026-11-20", LocalDate.EPOCH));
    }

    public Optional<LocalDate> optionalDate(String key) {
        return raw(key).map(value -> IsoDate.find(value instanceof Json.Text text ? text.value() : "").orElseGet(() -> {
            tell(value.place(), "not-a-date", IsoDate.RULE, value.shown(), key);
            return LocalDate.EPOCH;
        }));
    }

    /** One of the {@code allowed} words; must be there. */
    public String oneOf(String key, List<String> allowed) {
        return optionalOneOf(key, allowed)
                .orElseGet(() -> missing(key, "one of " + String.join(", ", allowed), allowed.get(0)));
    }

    public Optional<String> optionalOneOf(String key, List<String> allowed) {
        Optional<String> value = optionalText(key);
        if (value.isPresent() && !allowed.contains(value.get())) {
            tell(at(key), "unknown-word", String.join(", ", allowed), value.get(), Nearest.hint(value.get(), allowed));
            return Optional.of(allowed.get(0));
        }
        return value;
    }

    /** The objects of a list; empty where the key is absent. */
    public List<Fields> objects(String key) {
        return items(key).stream().map(this::inner).toList();
    }

    /** The object under a key, if the key is there. */
    public Optional<Fields> object(String key) {
        return raw(key).map(this::inner);
    }

    /** The object under a key that must be there. */
    public Fields part(String key) {
        return object(key).orElseGet(() -> missing(key, "an object {…}", none()));
    }

    private Fields inner(Json value) {
        Fields fields = of(value, problems);
        ok &= fields.ok;
        return fields;
    }

    /** The texts of a list, or one text alone; empty where the key is absent. */
    public List<String> texts(String key) {
        if (object.members().get(key) instanceof Json.Text) { return List.of(text(key)); }
        return all(key, Json.Text.class, "not-a-text in-list").stream().map(Json.Text::value).toList();
    }

    /** The numbers of a list; empty where the key is absent. */
    public List<Double> numbers(String key) {
        return all(key, Json.Num.class, "not-a-number").stream().map(Json.Num::value).toList();
    }

    private <T extends Json> List<T> all(String key, Class<T> kind, String words) {
        List<Json> items = items(key);
        items.stream().filter(item -> !kind.isInstance(item)).forEach(item -> tell(item.place(), words, item.shown()));
        return items.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The whole numbers under the keys of an object, in the order of the file; empty where the key is absent. */
    public Map<String, Integer> counts(String key, int least, int most) {
        Map<String, Integer> all = new LinkedHashMap<>();
        object(key).ifPresent(inner -> {
            inner.keys().forEach(name -> all.put(name, inner.count(name, least, most)));
            ok &= inner.ok;
        });
        return all;
    }

    private List<Json> items(String key) {
        Optional<Json> value = raw(key);
        if (value.orElse(null) instanceof Json.Arr array) { return array.items(); }
        value.ifPresent(it -> tell(it.place(), "not-a-list", it.shown()));
        return List.of();
    }

    static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
                : Double.toString(value);
    }
}

package org.oldwood.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oldwood.crop.Stems;
import org.oldwood.store.Json;
import org.oldwood.store.Place;

/**
 * One dated thing that happened. Never changed; a later entry may take it back.
 *
 * @param id unique in the journal
 * @param date the day it happened, in the garden's own time zone
 * @param values what it says, by key; the values have been checked against the kind's fields
 * @param note free words; may be empty
 * @param place where it stands
 */
public record Entry(String id, LocalDate date, EntryKind kind, Map<String, Json> values, String note, Place place) {

    /** The text under a key, a plant's or a bed's id for example. */
    public Optional<String> text(String key) {
        return values.get(key) instanceof Json.Text text ? Optional.of(text.value()) : Optional.empty();
    }

    /** Whether it has this text under a key. */
    public boolean names(String key, String what) {
        return text(key).filter(what::equals).isPresent();
    }

    /** The text under a key that this kind of entry must have. */
    public String needed(String key) {
        return text(key).orElseThrow(() -> new IllegalStateException(kind + " " + id + " has no " + key));
    }

    public OptionalDouble number(String key) {
        return values.get(key) instanceof Json.Num num ? OptionalDouble.of(num.value()) : OptionalDouble.empty();
    }

    public OptionalInt count(String key) {
        return values.get(key) instanceof Json.Num num ? OptionalInt.of((int) Math.rint(num.value()))
                : OptionalInt.empty();
    }

    public boolean flag(String key) { return values.get(key) instanceof Json.Bool bool && bool.value(); }

    /** Where what it says under a key stands; its own place where it says nothing there. */
    public Place placeOf(String key) {
        Json value = values.get(key);
        return value == null ? place : value.place();
    }

    /** Whether its figures are those of the plan, booked by a tick and measured by nobody. */
    public boolean planned() {
        return flag("planned");
    }

    /** That its figures were booked by a tick; empty where they were measured, or stand in a plan alone. */
    public Optional<String> unmeasured() {
        return planned() && text("tick").isPresent()
                ? Optional.of("what was %s on %s is as planned, not measured".formatted(kind.key(), date))
                : Optional.empty();
    }

    /** The ids under a key that holds a list. */
    public List<String> ids(String key) {
        return values.get(key) instanceof Json.Arr array
                ? array.items().stream().map(item -> ((Json.Text) item).value()).toList()
                : text(key).map(List::of).orElse(List.of());
    }

    /** The stems by age under {@code stems}; empty where the entry gives none. */
    public Stems stems() {
        return stems("stems");
    }

    /** The stems by age under a key; empty where the entry gives none, or only their number. */
    public Stems stems(String key) {
        if (!(values.get(key) instanceof Json.Obj object)) { return Stems.NONE; }
        SortedMap<Integer, Integer> byAge = new TreeMap<>();
        OptionalInt open = OptionalInt.empty();
        for (Map.Entry<String, Json> member : object.members().entrySet()) {
            String name = member.getKey();
            boolean lumped = name.endsWith("+");
            int age = Integer.parseInt(lumped ? name.substring(0, name.length() - 1) : name);
            open = lumped ? OptionalInt.of(age) : open;
            byAge.put(age, (int) ((Json.Num) member.getValue()).value());
        }
        return Stems.from(byAge, open);
    }
}

package org.oldwood.store;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where in its file it stands. Immutable. */
public sealed interface Json {
    Place place();

    /** An object; keys keep the order of the file. */
    record Obj(Place place, Map<String, Json> members) implements Json {}

    record Arr(Place place, List<Json> items) implements Json {}

    record Text(Place place, String value) implements Json {}

    /** A number, with the digits as they were written. */
    record Num(Place place, double value, String written) implements Json {}

    /** {@code true} or {@code false}. */
    record Bool(Place place, boolean value) implements Json {}

    /** {@code null}. */
    record Nothing(Place place) implements Json {}

    /** The value as a person would write it, shortened, for a message. */
    default String shown() {
        if (this instanceof Text text) {
            return '"' + (text.value.length() > 40 ? text.value.substring(0, 40) + "…" : text.value) + '"';
        }
        if (this instanceof Num num) { return num.written; }
        if (this instanceof Bool bool) { return Boolean.toString(bool.value); }
        if (this instanceof Obj) { return "an object {…}"; }
        return this instanceof Arr ? "a list […]" : "null";
    }
}

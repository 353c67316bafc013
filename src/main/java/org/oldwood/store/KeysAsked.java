package org.oldwood.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The keys of one JSON object, which of them were asked for, and whether all was right so far. */
abstract class KeysAsked {
    final Json.Obj object;
    final Problems problems;
    private final List<String> asked = new ArrayList<>();
    private final @Nullable Members few;

    /** Which of the few members were asked for, a bit each. */
    private int seen;

    boolean ok = true;

    KeysAsked(Json.Obj object, Problems problems) {
        this.object = object;
        this.problems = problems;
        this.few = object.members() instanceof Members members && members.isSmall() ? members : null;
    }

    public final Place place() {
        return object.place();
    }

    public final Problems problems() {
        return problems;
    }

    /** True as long as every value read was right. */
    public final boolean ok() {
        return ok;
    }

    public final boolean has(String key) {
        return object.members().containsKey(key);
    }

    /** The keys in the order of the file. */
    public final List<String> keys() {
        return List.copyOf(object.members().keySet());
    }

    /** The value as it stands, if the key is there. */
    public final Optional<Json> raw(String key) {
        asked.add(key);
        if (few == null) {
            return Optional.ofNullable(object.members().get(key));
        }
        int at = few.position(key);
        if (at < 0) {
            return Optional.empty();
        }
        seen |= 1 << at;
        return Optional.of(few.value(at));
    }

    /** Says that something about this object is wrong. */
    public final void wrong(String key, String name, String message, String remedy) {
        wrong(at(key), name, message, remedy);
    }

    final void wrong(Place place, String name, String message, String remedy) {
        ok = false;
        problems.add(name, place, message, remedy);
    }

    final Place at(String key) {
        Json value = object.members().get(key);
        return value == null ? object.place().at(key) : value.place();
    }

    final <T extends @Nullable Object> T missing(String key, String wanted, T standIn) {
        wrong(object.place().at(key), "missing-key", "is missing; it must be " + wanted, "");
        return standIn;
    }

    /** Reports every key that was never asked for. Call it once, when all keys have been read. */
    public final void done() {
        if (few != null
                ? seen == (1 << few.size()) - 1
                : asked.containsAll(object.members().keySet())) {
            return;
        }
        for (Map.Entry<String, Json> member : object.members().entrySet()) {
            if (!asked.contains(member.getKey())) {
                wrong(
                        member.getValue().place(),
                        "unknown-key",
                        "is not a key that is known here",
                        Nearest.hint(member.getKey(), new HashSet<>(asked)));
            }
        }
    }
}

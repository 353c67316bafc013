package org.oldwood.store;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The members of an object among the packed documents; a value is made when it is asked for. */
final class PackedMembers extends Members {
    private final Packed packed;
    private final int at;
    private final Place place;

    /** Where each key stands, once there are too many to look through. */
    private @Nullable Map<String, Integer> positions;

    PackedMembers(Packed packed, int at, Place place) {
        super(keys(packed, at));
        this.packed = packed;
        this.at = at;
        this.place = place;
    }

    private static Object[] keys(Packed packed, int at) {
        int count = packed.small(at);
        Object[] keysAndValues = new Object[2 * count];
        int from = at + 2;
        for (int i = 0; i < count; i++) {
            keysAndValues[2 * i] = packed.key(packed.small(from));
            from += Packed.MEMBER;
        }
        return keysAndValues;
    }

    @Override
    Json value(int position) {
        Json known = made(position);
        if (known != null) {
            return known;
        }
        int member = at + 2 + Packed.MEMBER * position;
        Json value = packed.member(packed.number(member + 2), place, key(position));
        keep(position, value);
        return value;
    }

    @Override
    int position(String key) {
        if (isSmall()) {
            return super.position(key);
        }
        if (positions == null) {
            positions = new HashMap<>(2 * size());
            for (int i = 0; i < size(); i++) {
                positions.put(key(i), i);
            }
        }
        return positions.getOrDefault(key, -1);
    }
}

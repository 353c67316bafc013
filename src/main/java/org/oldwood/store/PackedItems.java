package org.oldwood.store;

import java.util.AbstractList;
import java.util.RandomAccess;
import org.jspecify.annotations.Nullable;

/** The items of a list among the packed documents; each is made when it is asked for. */
final class PackedItems extends AbstractList<Json> implements RandomAccess {
    private final Packed packed;
    private final int at;
    private final Place place;
    private final @Nullable Json[] made;

    PackedItems(Packed packed, int at, Place place) {
        this.packed = packed;
        this.at = at;
        this.place = place;
        this.made = new Json[packed.small(at)];
    }

    @Override
    public Json get(int index) {
        Json known = made[index];
        if (known == null) {
            known = packed.item(packed.number(at + 2 + 4 * index), place, index);
            made[index] = known;
        }
        return known;
    }

    @Override
    public int size() {
        return made.length;
    }
}

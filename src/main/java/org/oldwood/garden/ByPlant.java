package org.oldwood.garden;

import java.util.IdentityHashMap;
import java.util.function.Function;

/**
 * What was made of each plant, by the very plant: comparing whole records would take longer than the making. Forgets
 * all when it is full, so that a large garden costs no more memory than its largest beds.
 */
public final class ByPlant<T> {
    private static final int MOST = 2000;

    private final IdentityHashMap<PlantState, T> known = new IdentityHashMap<>();

    /** What {@code make} made of the plant. */
    public T get(PlantState plant, Function<PlantState, T> make) {
        T found = known.get(plant);
        if (found == null) {
            if (known.size() >= MOST) { known.clear(); }
            found = make.apply(plant);
            known.put(plant, found);
        }
        return found;
    }
}

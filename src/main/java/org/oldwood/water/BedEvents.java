package org.oldwood.water;

import java.util.HashMap;
import java.util.Map;

/** What the grower gave a bed and noted of it, by days after the first day of the weather. */
public final class BedEvents {
    private final Map<Integer, Double> watered = new HashMap<>();
    private final Map<Integer, MoistureNote> notes = new HashMap<>();

    /** Adds a watering, mm; several on a day add up. */
    public void water(int day, double mm) {
        if (!(mm >= 0)) {
            throw new IllegalArgumentException("a watering cannot be below 0 mm but is " + mm);
        }
        watered.merge(day, mm, Double::sum);
    }

    /** Adds a moisture note; the last of a day counts. */
    public void note(int day, MoistureNote note) {
        notes.put(day, note);
    }

    double wateredMm(int day) {
        return watered.isEmpty() ? 0 : watered.getOrDefault(day, 0.0);
    }

    MoistureNote note(int day) {
        return notes.isEmpty() ? MoistureNote.NONE : notes.getOrDefault(day, MoistureNote.NONE);
    }
}

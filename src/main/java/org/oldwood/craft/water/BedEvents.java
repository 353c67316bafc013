package org.oldwood.craft.water;

import java.util.HashMap;
import java.util.Map;

/** What the grower gave a bed and noted of it, by days after the first day of the weather. */
public final class BedEvents {
    private final Map<Integer, Double> watered = new HashMap<>();
    private final Map<Integer, MoistureNote> notes = new HashMap<>();
    private int first = Integer.MAX_VALUE;
    private int last = Integer.MIN_VALUE;

    /** Adds a watering, mm; several on a day add up. */
    public void water(int day, double mm) {
        if (!(mm >= 0)) { throw new IllegalArgumentException("a watering cannot be below 0 mm but is " + mm); }
        watered.merge(day, mm, Double::sum);
        reaches(day);
    }

    /** Adds a moisture note; the last of a day counts. */
    public void note(int day, MoistureNote note) {
        notes.put(day, note);
        reaches(day);
    }

    private void reaches(int day) {
        first = Math.min(first, day);
        last = Math.max(last, day);
    }

    /** Whether there may be anything on a day: most of the days of an account have nothing. */
    private boolean isAmong(int day) {
        return day >= first && day <= last;
    }

    double wateredMm(int day) { return isAmong(day) ? watered.getOrDefault(day, 0.0) : 0; }

    MoistureNote note(int day) { return isAmong(day) ? notes.getOrDefault(day, MoistureNote.NONE) : MoistureNote.NONE; }
}

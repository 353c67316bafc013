package org.oldwood.craft.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A bed's account, day by day; every series in mm. Days are counted from 0. */
public final class WaterDays {
    private final BedWater bed;
    private final WeatherSeries weather;
    private final double[] gain;
    private final double[] demand;
    private final double[] drained;
    private final double[] depletion;
    private final List<Correction> corrections = new ArrayList<>();

    /**
     * What a moisture note did.
     *
     * @param foundMm depletion that the note means
     * @param modelledMm depletion by the account before the note
     * @param weight how far the account moved
     */
    public record Correction(int day, double foundMm, double modelledMm, double weight) {
        /** Depletion found beyond that modelled: above 0 where the bed was drier than thought. */
        public double drierMm() {
            return foundMm - modelledMm;
        }

        /** How far the account was moved; above 0 towards dry. */
        public double movedMm() { return weight * drierMm(); }
    }

    WaterDays(BedWater bed, WeatherSeries weather, double startMm) {
        if (!(startMm >= 0 && startMm <= bed.totalAvailableMm())) {
            throw new IllegalArgumentException(
                    "the depletion at the start must be from 0 to " + bed.totalAvailableMm() + " mm but is " + startMm);
        }
        this.bed = bed;
        this.weather = weather;
        gain = new double[weather.days()];
        demand = new double[weather.days()];
        drained = new double[weather.days()];
        depletion = new double[weather.days()];
    }

    void set(int day, double gained, double wanted, double lost, double evening) {
        gain[day] = gained;
        demand[day] = wanted;
        drained[day] = lost;
        depletion[day] = evening;
    }

    double correct(int day, MoistureNote note) {
        double found = (1 - note.nearest(heldShare(day))) * bed.totalAvailableMm();
        Correction correction = new Correction(day, found, depletion[day], note.weight());
        corrections.add(correction);
        depletion[day] += correction.movedMm();
        return depletion[day];
    }

    public BedWater bed() { return bed; }

    public int days() { return depletion.length; }

    public LocalDate date(int day) { return weather.first().plusDays(day); }

    public int index(LocalDate date) { return weather.index(date); }

    /** Depletion in the evening, after any note. */
    public double depletion(int day) { return depletion[day]; }

    /** Share of the available water held in the evening, 0 to 1. */
    public double heldShare(int day) {
        return bed.heldShare(depletion[day]);
    }

    /** Rain that soaked in, roof water and watering. */
    public double gain(int day) { return gain[day]; }

    /** What the bed's own plants and soil would use if they had enough. */
    public double demand(int day) {
        return demand[day];
    }

    /** What ran through below the roots. */
    public double drained(int day) { return drained[day]; }

    /** Whether the bed was short in the evening: more drawn than the plants can without stress. */
    public boolean isShort(int day) {
        double fraction = RootZone.fraction(bed.fraction(), demand[day]);
        return depletion[day] > fraction * bed.totalAvailableMm();
    }

    /** What the notes did, oldest first. */
    public List<Correction> corrections() { return List.copyOf(corrections); }

    /**
     * Days until the water is gone that stands on the last of some days: what runs beyond field capacity must sink away.
     *
     * @param back how many days to look back
     * @param intakeMmPerHour what the soil takes in, mm an hour, more than 0
     */
    public double standing(int lastDay, int back, double intakeMmPerHour) {
        double sinks = intakeMmPerHour * 24;
        double stands = 0;
        for (int day = Math.max(0, lastDay - back + 1); day <= lastDay; day++) {
            stands = Math.max(0, stands + drained[day] - (day == lastDay ? 0 : sinks));
        }
        return stands / sinks;
    }
}

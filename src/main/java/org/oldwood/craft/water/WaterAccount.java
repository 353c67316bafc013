package org.oldwood.craft.water;

/**
 * The daily account of a bed's root zone: depletion in the evening = depletion in the morning − rain − roof water −
 * watering + use by the plants and by neighbours' roots + drainage − what a moisture note corrected.
 *
 * <p>Source: FAO-56, equations 81 to 88; no capillary rise and no run-off from the bed. Rain and watering come before
 * the use of the day, but a day's use is never more than the ground held in the morning, so that more rain can never
 * leave less water. Checked against {@code reference/account-*.csv}.
 *
 * <p>Works on arrays and makes nothing per day.
 */
public final class WaterAccount {
    private final BedWater bed;
    private final Convention convention;
    private final double roofMmPerMm;

    public WaterAccount(BedWater bed) { this(bed, Convention.FAO_56); }

    public WaterAccount(BedWater bed, Convention convention) {
        this.bed = bed;
        this.convention = convention;
        roofMmPerMm = bed.roof().areaM2() * bed.roof().coefficient() / bed.areaM2();
    }

    /**
     * Runs the account over all days of the weather.
     *
     * @param weather what the beds share
     * @param coefficient the bed's coefficient on the reference evapotranspiration, each day
     * @param events what the grower gave and noted
     * @param startMm depletion before the first day, 0 to the total available, mm
     */
    public WaterDays run(WeatherSeries weather, double[] coefficient, BedEvents events, double startMm) {
        WaterDays days = new WaterDays(bed, weather, startMm);
        double depletion = startMm;
        for (int i = 0; i < weather.days(); i++) {
            double demand = coefficient[i] * weather.et0(i);
            double gain = gain(weather, i) + events.wateredMm(i);
            double used = convention == Convention.FAO_56 ? used(depletion, demand) : demand / (1 - bed.competing());
            double drained = RootZone.drainage(gain, used, depletion);
            days.set(i, gain, demand, drained, within(depletion - gain + used + drained));
            MoistureNote note = events.note(i);
            depletion = note.weight() == 0 ? days.depletion(i) : days.correct(i, note);
        }
        return days;
    }

    private double gain(WeatherSeries weather, int day) {
        double rain = weather.rain(day);
        return bed.open() * weather.soaked(day) + roofMmPerMm * Math.max(0, rain - bed.roof().firstFlushMm());
    }

    private double used(double depletion, double demand) {
        double fraction = RootZone.fraction(bed.fraction(), demand);
        double stress = RootZone.stress(depletion, bed.totalAvailableMm(), fraction);
        return Math.min(stress * demand / (1 - bed.competing()), bed.totalAvailableMm() - depletion);
    }

    /** Floating point may leave the bounds by a hair; the full demand leaves them by more. */
    private double within(double depletion) {
        return Math.max(0, Math.min(depletion, bed.totalAvailableMm()));
    }
}

package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.water.BedDemand;
import org.oldwood.craft.water.BedEvents;
import org.oldwood.craft.water.BedWater;
import org.oldwood.craft.water.CropCurves;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.WaterAccount;
import org.oldwood.craft.water.WaterDays;
import org.oldwood.craft.water.WeatherSeries;
import org.oldwood.crop.Crop;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.season.Season;
import org.oldwood.season.weather.Weather;

/**
 * How the beds would fare with one and the same full-grown crop in them, without watering and without mulch: in each
 * past summer whose rain was measured, or in a mean summer where none was. So beds can be set side by side, whatever
 * stands in them now. A summer runs from the day on which the crop's growth begins to raise its need to the day on
 * which its leaves decline.
 */
public final class Summers {
    private final GardenWater water;
    private final Crop crop;
    private final CropWater needs;
    private final boolean measured;
    private final List<Season> seasons;

    /**
     * A bed over the summers.
     *
     * @param water what it holds for the crop's roots
     * @param summers how it fared, in the order of the summers
     */
    public record BedSummers(BedGround ground, BedWater water, List<Fared> summers) {

        public double meanDaysShort() { return summers.stream().mapToInt(Fared::daysShort).average().orElse(0); }

        /** Mean share of the available water held. */
        public double meanHeld() {
            return summers.stream().mapToDouble(Fared::meanHeld).average().orElse(0);
        }

        /** Mean of the litres that a roof shed onto it in a summer. */
        public double meanRoofLitres() {
            return summers.stream().mapToDouble(Fared::roofLitres).average().orElse(0);
        }

        /** The summer in which it was short longest; of several the last. */
        public Fared worst() {
            return summers.stream().reduce((one, other) -> other.daysShort() >= one.daysShort() ? other : one)
                    .orElseThrow();
        }
    }

    /**
     * One bed's summer.
     *
     * @param daysShort days on which the plants lacked water
     * @param meanHeld mean share of the available water held
     * @param roofLitres litres that a roof shed onto the bed
     * @param drainedMm what ran through below the roots, mm
     */
    public record Fared(Season season, int daysShort, double meanHeld, double roofLitres, double drainedMm) {}

    private Summers(GardenWater water, Crop crop, CropWater needs) {
        this.water = water;
        this.crop = crop;
        this.needs = needs;
        List<Season> past = pastSummers();
        measured = !past.isEmpty();
        seasons = measured ? past : List.of(water.state().season().plus(1));
    }

    /** Prepares the summers; empty where it is not known how the crop draws water. */
    public static Optional<Summers> of(GardenWater water, Crop crop) {
        return water.data().water(crop.id()).map(needs -> new Summers(water, crop, needs));
    }

    public Crop crop() { return crop; }

    /** Whether the summers were measured; else there is one, in mean weather. */
    public boolean measured() {
        return measured;
    }

    /** The summers, oldest first. */
    public List<Season> seasons() { return seasons; }

    private List<Season> pastSummers() {
        Weather days = water.measured();
        List<Season> past = new ArrayList<>();
        if (days.isEmpty()) { return past; }
        double least = water.data().figures().figure("fullSummer").is();
        Season last = Season.containing(days.last(), water.state().garden().hemisphere());
        Season season = Season.containing(days.first(), water.state().garden().hemisphere());
        for (; season.compareTo(last) <= 0; season = season.plus(1)) {
            long length = Math.max(1, to(season).toEpochDay() - from(season).toEpochDay() + 1);
            long rainDays = days.between(from(season), to(season)).stream().filter(day -> day.rainMm().isPresent())
                    .count();
            if (rainDays >= least * length) { past.add(season); }
        }
        return past;
    }

    private LocalDate from(Season season) { return needs.growth().begins().in(season, crop, water.stages()); }

    private LocalDate to(Season season) { return needs.growth().declines().in(season, crop, water.stages()); }

    /** All beds, the one that is short least first. */
    public List<BedSummers> beds() {
        List<BedSummers> beds = new ArrayList<>();
        List<BedState> all = List.copyOf(water.state().beds().values());
        for (boolean windy : List.of(false, true)) {
            List<Bed> alike = all.stream().map(BedState::bed).filter(bed -> bed.windy() == windy).toList();
            if (!alike.isEmpty()) { fared(alike, curves(windy), beds); }
        }
        beds.sort(Comparator.comparingDouble(BedSummers::meanDaysShort)
                .thenComparing(Comparator.comparingDouble(BedSummers::meanHeld).reversed())
                .thenComparing(one -> one.ground().bed().id()));
        return beds;
    }

    /** The ground is taken to be full at the start, which is a leaf fall. */
    private CropCurves curves(boolean windy) {
        Weather days = measured ? water.measured() : Weather.none();
        Season last = seasons.get(seasons.size() - 1);
        return water.curves(seasons.get(0).start(), to(last), days, windy);
    }

    private void fared(List<Bed> beds, CropCurves curves, List<BedSummers> into) {
        double cut = water.data().figures().figure("shadeCut").is();
        for (Bed bed : beds) {
            BedGround ground = BedGround.of(bed, water.data());
            BedWater holds = holds(ground);
            double light = BedDemand.shadeFactor(bed.shade(), cut);
            double[] coefficient = Arrays.stream(curves.of(crop, needs).single).map(each -> light * each).toArray();
            WaterDays days = new WaterAccount(holds).run(curves.weather(), coefficient, new BedEvents(), 0);
            into.add(new BedSummers(ground, holds,
                    seasons.stream().map(season -> fared(season, days, curves.weather())).toList()));
        }
    }

    private Fared fared(Season season, WaterDays days, WeatherSeries weather) {
        BedWater holds = days.bed();
        double held = 0;
        double shed = 0;
        double drained = 0;
        int isShort = 0;
        int from = days.index(from(season));
        int to = days.index(to(season));
        for (int day = from; day <= to; day++) {
            isShort += days.isShort(day) ? 1 : 0;
            held += days.heldShare(day);
            drained += days.drained(day);
            shed += holds.roof().litres(weather.rain(day));
        }
        return new Fared(season, isShort, held / (to - from + 1), shed, drained);
    }

    /** As deep as the deep roots go: in dry weeks without watering they count (table 22, note 1). */
    private BedWater holds(BedGround ground) {
        double depth = ground.rootDepthM(needs.group().rootDepth().is());
        return ground.water(depth, needs.group().depletion().is());
    }
}

package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.oldwood.craft.water.BedEvents;
import org.oldwood.craft.water.RootZone;
import org.oldwood.craft.water.WaterData;
import org.oldwood.craft.water.WeatherSeries;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;

/**
 * What a bed was watered, by the bed's entries and its plants'. The account is one for the whole bed, so what one plant
 * got counts by its share of the ground that roots hold; of it, no more than that share can hold, for the rest ran
 * through under that plant and helps no other.
 */
record Waterings(Bed bed, double groundM2, WeatherSeries weather, BedEvents events, List<LocalDate> notCounted,
        List<String> unmeasured) {

    /**
     * Adds them to the events.
     *
     * @return what could not be counted or was not measured, for people
     */
    public static List<String> add(BedState state, BedSoil soil, WaterData data, WeatherSeries weather,
            BedEvents events) {
        Waterings all = new Waterings(state.bed(), soil.groundM2(), weather, events, new ArrayList<>(),
                new ArrayList<>());
        state.entries().forEach(entry -> all.add(entry, Double.POSITIVE_INFINITY));
        for (PlantState plant : state.plants()) {
            double share = BedSoil.groundM2(plant, data.figures());
            double most = RootZone.litres(soil.water().totalAvailableMm(), share);
            plant.entries().forEach(entry -> all.add(entry, most));
        }
        return all.remarks();
    }

    private void add(Entry entry, double mostLitres) {
        if (entry.kind() != EntryKind.WATERED || entry.date().isBefore(weather.first())) { return; }
        OptionalDouble litres = litres(entry);
        if (litres.isEmpty()) {
            notCounted.add(entry.date());
            return;
        }
        entry.unmeasured().ifPresent(unmeasured::add);
        double counted = Math.min(mostLitres, litres.getAsDouble());
        events.water(weather.index(entry.date()), RootZone.millimetres(counted, groundM2));
    }

    private OptionalDouble litres(Entry entry) {
        OptionalDouble litres = entry.number("litres");
        OptionalDouble minutes = entry.number("minutes");
        if (litres.isPresent() || minutes.isEmpty() || bed.tapLitresPerMinute().isEmpty()) { return litres; }
        return OptionalDouble.of(bed.tapLitresPerMinute().getAsDouble() * minutes.getAsDouble());
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (!unmeasured.isEmpty()) { remarks.add(unmeasured.get(unmeasured.size() - 1)); }
        if (!notCounted.isEmpty()) {
            remarks.add(
                    "waterings noted in minutes are left out, %s of them, the last on %s, because the flow is not known: add \"tapLitresPerMinute\" to the bed in garden.json, or note litres"
                            .formatted(notCounted.size(), Collections.max(notCounted)));
        }
        return remarks;
    }
}

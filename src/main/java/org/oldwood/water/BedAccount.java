package org.oldwood.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;

/**
 * One bed's account over the days that {@link GardenWater} looks at.
 *
 * @param soil its ground and plants
 * @param days the account; past days on what was noted, the days ahead on means and without
 *     watering
 * @param today the day up to which things were noted
 */
public record BedAccount(BedState state, BedSoil soil, WaterDays days, LocalDate today) {
    static BedAccount of(
            BedState state, BedSoil soil, CropCurves curves, BedSoil.Data data, LocalDate today) {
        WeatherSeries weather = curves.weather();
        WaterFigures figures = data.figures();
        double shade = Demand.shadeFactor(state.bed().shade(), figures.figure("shadeCut").is());
        double[] coefficient =
                BedDemand.series(
                        curves, soil.plantings(), Mulch.of(figures), laid(state, weather), shade);
        WaterDays days =
                new WaterAccount(soil.water())
                        .run(weather, coefficient, events(state, soil, weather, data), 0);
        return new BedAccount(state, soil, days, today);
    }

    private static List<BedDemand.Laid> laid(BedState state, WeatherSeries weather) {
        List<BedDemand.Laid> laid = new ArrayList<>();
        for (Entry entry : state.entries()) {
            if (entry.kind() == EntryKind.MULCHED) {
                laid.add(
                        new BedDemand.Laid(
                                weather.index(entry.date()), entry.number("depthCm").orElse(0)));
            }
        }
        return laid;
    }

    private static BedEvents events(
            BedState state, BedSoil soil, WeatherSeries weather, BedSoil.Data data) {
        BedEvents events = new BedEvents();
        for (Entry entry : state.entries()) {
            int day = weather.index(entry.date());
            if (entry.kind() == EntryKind.WATERED) {
                litres(state, entry)
                        .ifPresent(
                                litres ->
                                        events.water(
                                                day,
                                                RootZone.millimetres(litres, soil.groundM2())));
            } else if (entry.kind() == EntryKind.MOISTURE) {
                note(entry, soil, data).ifPresent(note -> events.note(day, note));
            }
        }
        return events;
    }

    private static Optional<Double> litres(BedState state, Entry entry) {
        if (entry.number("litres").isPresent()) {
            return Optional.of(entry.number("litres").getAsDouble());
        }
        return state.bed().tapLitresPerMinute().isPresent() && entry.number("minutes").isPresent()
                ? Optional.of(
                        state.bed().tapLitresPerMinute().getAsDouble()
                                * entry.number("minutes").getAsDouble())
                : Optional.empty();
    }

    /** What a moisture entry tells the account; empty where it says nothing that it understands. */
    static Optional<MoistureNote> note(Entry entry, BedSoil soil, BedSoil.Data data) {
        double spread = data.figures().figure("accountSpread").is();
        if (entry.number("percent").isPresent()) {
            double held = soil.soil().heldShare(entry.number("percent").getAsDouble() / 100);
            double probe = data.figures().figure("probeSpread").is() / soil.soil().availableShare();
            return Optional.of(MoistureNote.weighed(held, probe, spread));
        }
        double hand = data.figures().figure("feelSpread").is();
        return entry.text("feel")
                .flatMap(word -> data.soils().guide(soil.soil()).find(word))
                .map(
                        one -> {
                            double width = MoistureNote.spreadOfClass(one.high() - one.low());
                            return MoistureNote.weighed(
                                    one.middle(), Math.hypot(hand, width), spread);
                        });
    }

    /** The day's place in the account, held to the days it covers. */
    public int index(LocalDate day) {
        return Math.max(0, Math.min(days.days() - 1, days.index(day)));
    }

    /** The first day from {@code from} to {@code to}, both included, on which the bed is short. */
    public Optional<LocalDate> firstShort(LocalDate from, LocalDate to) {
        int last = index(to);
        for (int day = index(from); day <= last; day++) {
            if (days.isShort(day)) {
                return Optional.of(days.date(day));
            }
        }
        return Optional.empty();
    }

    /** How many days from {@code from} to {@code to}, both included, it is short. */
    public int daysShort(LocalDate from, LocalDate to) {
        int count = 0;
        for (int day = index(from); day <= index(to); day++) {
            count += days.isShort(day) ? 1 : 0;
        }
        return count;
    }

    /** Mean share held from {@code from} to {@code to}, both included. */
    public double meanHeld(LocalDate from, LocalDate to) {
        double sum = 0;
        for (int day = index(from); day <= index(to); day++) {
            sum += days.heldShare(day);
        }
        return sum / (index(to) - index(from) + 1);
    }

    /** What refills the bed on a day. */
    public Dose refill(LocalDate day) {
        return Dose.toRefill(days.depletion(index(day)), soil.groundM2(), soil.plants());
    }

    /** What refills it once the water that is drawn easily is gone, at a demand of 5 mm a day. */
    public Dose refillWhenShort() {
        double ready =
                RootZone.readilyAvailable(soil.water().totalAvailableMm(), soil.water().fraction());
        return Dose.toRefill(ready, soil.groundM2(), soil.plants());
    }

    /** When it will run short from tomorrow on: in mean weather, and without any rain. */
    public Outlook outlook(LocalDate until) {
        int from = index(today) + 1;
        int count = Math.max(1, Math.min(index(until), days.days() - 1) - from + 1);
        double[] demand = new double[count];
        double[] gain = new double[count];
        double[] ones = new double[count];
        for (int i = 0; i < count; i++) {
            demand[i] = days.demand(from + i);
            gain[i] = days.gain(from + i);
            ones[i] = 1;
        }
        BedWater bed = soil.water();
        BedWater roofCounted =
                new BedWater(
                        bed.totalAvailableMm(),
                        bed.fraction(),
                        bed.areaM2(),
                        RoofWater.NONE,
                        bed.competing());
        return Outlook.of(
                roofCounted,
                new WeatherSeries(days.date(from), demand, gain, gain),
                ones,
                days.depletion(from - 1));
    }

    /** What the notes say of the account. */
    public Optional<Drift> drift(WaterFigures figures) {
        double noise = figures.figure("feelSpread").is() * soil.water().totalAvailableMm();
        return Drift.of(days.corrections(), (int) figures.figure("driftNotes").is(), noise);
    }

    /** Days until standing water is gone; 0 where none stands. */
    public double standingDays() {
        return StandingWater.days(days, index(today), 14, soil.soil().intake().low());
    }
}

package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.oldwood.craft.water.BedDemand;
import org.oldwood.craft.water.BedEvents;
import org.oldwood.craft.water.CropCurves;
import org.oldwood.craft.water.Dose;
import org.oldwood.craft.water.MoistureNote;
import org.oldwood.craft.water.MoistureTrend;
import org.oldwood.craft.water.MulchCover;
import org.oldwood.craft.water.NextShort;
import org.oldwood.craft.water.NextShort.Depletion;
import org.oldwood.craft.water.RootZone;
import org.oldwood.craft.water.WaterAccount;
import org.oldwood.craft.water.WaterData;
import org.oldwood.craft.water.WaterDays;
import org.oldwood.craft.water.WaterFigures;
import org.oldwood.craft.water.WeatherSeries;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;

/**
 * One bed's account over the days that {@link GardenWater} looks at.
 *
 * @param soil its ground and plants
 * @param days the account; past days on what was noted, the days ahead on means and without watering
 * @param today the day up to which things were noted
 * @param now what is missing this evening
 * @param weather the weather of its days, known and mean
 * @param rainSpread by what share of the mean the rain of some weeks commonly misses it
 * @param remarks what was taken for granted, for people
 */
public record BedAccount(BedState state, BedSoil soil, WaterDays days, LocalDate today, Depletion now,
        WeatherSeries weather, double rainSpread, List<String> remarks) {

    public static BedAccount of(BedState state, BedSoil soil, CropCurves curves, WaterData data, Weather measured,
            LocalDate today) {
        WeatherSeries weather = curves.weather();
        WaterFigures figures = data.figures();
        double shade = BedDemand.shadeFactor(state.bed().shade(), figures.figure("shadeCut").is());
        List<BedDemand.Laid> laid = state.entries().stream().filter(entry -> entry.kind() == EntryKind.MULCHED)
                .map(entry -> new BedDemand.Laid(weather.index(entry.date()), entry.number("depthCm").orElse(0)))
                .toList();
        double[] coefficient = BedDemand.series(curves, soil.plantings(), MulchCover.of(figures), laid, shade);
        BedEvents events = new BedEvents();
        List<String> remarks = new ArrayList<>(soil.remarks());
        remarks.addAll(Waterings.add(state, soil, data, weather, events));
        state.entries().stream().filter(entry -> entry.kind() == EntryKind.MOISTURE).forEach(
                entry -> note(entry, soil, data).ifPresent(note -> events.note(weather.index(entry.date()), note)));
        double spread = figures.figure("rainSpread").is();
        double use = figures.figure("useSpread").is();
        int last = weather.index(today);
        IntPredicate noRain = day -> day <= last
                && measured.on(weather.first().plusDays(day)).filter(each -> each.rainMm().isPresent()).isEmpty();
        IntPredicate noWarmth = day -> day <= last
                && measured.on(weather.first().plusDays(day)).filter(WeatherDay::hasTemperatures).isEmpty();
        WaterAccount account = new WaterAccount(soil.water());
        WaterDays days = account.run(weather, coefficient, events, 0);
        WaterDays drier = account.run(weather.withRainTimes(1 - spread, noRain).withUseTimes(1 + use, noWarmth),
                coefficient, events, 0);
        WaterDays wetter = account.run(weather.withRainTimes(1 + spread, noRain).withUseTimes(1 - use, noWarmth),
                coefficient, events, 0);
        Depletion now = new Depletion(days.depletion(last), drier.depletion(last), wetter.depletion(last));
        return new BedAccount(state, soil, days, today, now, weather, spread, List.copyOf(remarks));
    }

    /** What a moisture entry tells the account; empty where it says nothing that it understands. */
    public static Optional<MoistureNote> note(Entry entry, BedSoil soil, WaterData data) {
        double spread = data.figures().figure("accountSpread").is();
        if (entry.number("percent").isPresent()) {
            double held = soil.soil().heldShare(entry.number("percent").getAsDouble() / 100);
            double probe = data.figures().figure("probeSpread").is() / soil.soil().availableShare();
            return Optional.of(MoistureNote.weighed(held, held, probe, spread));
        }
        double hand = data.figures().figure("feelSpread").is();
        return entry.text("feel").flatMap(word -> data.soils().guide(soil.soil()).find(word))
                .map(one -> MoistureNote.weighed(one.low(), one.high(), hand, spread));
    }

    /** The day's place in the account, held to the days it covers. */
    public int index(LocalDate day) {
        return Math.max(0, Math.min(days.days() - 1, days.index(day)));
    }

    /** The first day from {@code from} to {@code to}, both included, on which the bed is short. */
    public Optional<LocalDate> firstShort(LocalDate from, LocalDate to) {
        return shortDays(from, to).mapToObj(days::date).findFirst();
    }

    /** The last day from {@code from} to {@code to}, both included, on which the bed is short. */
    public Optional<LocalDate> lastShort(LocalDate from, LocalDate to) {
        return shortDays(from, to).mapToObj(days::date).reduce((one, other) -> other);
    }

    /** How many days from {@code from} to {@code to}, both included, it is short. */
    public int daysShort(LocalDate from, LocalDate to) {
        return (int) shortDays(from, to).count();
    }

    private IntStream shortDays(LocalDate from, LocalDate to) {
        return IntStream.rangeClosed(index(from), index(to)).filter(days::isShort);
    }

    public Dose refill(LocalDate day) {
        return Dose.toRefill(days.depletion(index(day)), soil.groundM2(), soil.plants());
    }

    /** What refills it once the water that is drawn easily is gone, at a demand of 5 mm a day. */
    public Dose refillWhenShort() {
        double ready = RootZone.readilyAvailable(soil.water().totalAvailableMm(), soil.water().fraction());
        return Dose.toRefill(ready, soil.groundM2(), soil.plants());
    }

    /** When it will run short from tomorrow on. Roof water is in what the days gain. */
    public NextShort outlook(LocalDate until) {
        int from = index(today) + 1;
        int count = Math.max(1, Math.min(index(until), days.days() - 1) - from + 1);
        double[] demand = IntStream.range(from, from + count).mapToDouble(days::demand).toArray();
        double[] gain = IntStream.range(from, from + count).mapToDouble(days::gain).toArray();
        double[] ones = DoubleStream.generate(() -> 1).limit(count).toArray();
        WeatherSeries ahead = new WeatherSeries(days.date(from), demand, gain, gain);
        return NextShort.of(soil.water().withoutRoof(), ahead, ones, now, rainSpread);
    }

    /** What the notes say of the account. */
    public Optional<MoistureTrend> drift(WaterFigures figures) {
        double noise = figures.figure("feelSpread").is() * soil.water().totalAvailableMm();
        return MoistureTrend.of(days.corrections(), (int) figures.figure("driftNotes").is(), noise);
    }

    /** Days until standing water is gone; 0 where none stands. */
    public double standingDays() {
        return days.standing(index(today), 14, soil.soil().intake().low());
    }
}

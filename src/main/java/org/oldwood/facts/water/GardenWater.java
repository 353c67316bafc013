package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.water.CropCurves;
import org.oldwood.craft.water.WaterData;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Months;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

/**
 * The water of a garden's beds: one weather series for all that lie alike, an account for each bed when it is asked
 * for. Covers the season before today's, in which the account settles from full ground, to the end of the season after
 * it.
 */
public final class GardenWater {
    private final GardenState state;
    private final Stages stages;
    private final WaterData data;
    private final Weather measured;
    private final Optional<MeanWeather> weather;
    private final Optional<String> lacking;
    private final Map<String, Optional<BedAccount>> accounts = new HashMap<>();

    /** Of beds that lie open to the wind, and of those that do not. */
    private final Map<Boolean, CropCurves> curves = new HashMap<>();

    /** Prepares a garden with the climate and the weather that its stage dates rest on. */
    public GardenWater(GardenState state, Stages stages, Crops crops, Documents documents) {
        this.state = state;
        this.stages = stages;
        measured = stages.climate().map(GardenClimate::weather).orElse(Weather.none());
        data = WaterData.read(crops, documents);
        Optional<Climate> climate = stages.climate().map(GardenClimate::climate);
        Optional<Months> rain = climate.flatMap(Climate::rainMm);
        lacking = lacking(climate, rain);
        weather = lacking.isEmpty()
                ? Optional.of(new MeanWeather(state.garden().site(), climate.orElseThrow(), rain.orElseThrow()))
                : Optional.empty();
    }

    private static Optional<String> lacking(Optional<Climate> climate, Optional<Months> rain) {
        if (climate.isEmpty()) {
            return Optional.of("the garden's climate is not known: give garden.json a \"climate\", the name of"
                    + " a bundled one or twelve monthly means of meanMinC, meanMaxC and rainMm; or"
                    + " some years of your own daily weather, oldwood weather add FILE");
        }
        return rain.isPresent() ? Optional.empty()
                : Optional.of("the rain of this climate is not known: give garden.json twelve monthly means of rainMm");
    }

    /** What must be given before an account can be kept; empty where nothing is lacking. */
    public Optional<String> lacking() {
        return lacking;
    }

    public GardenState state() { return state; }

    /** The garden's stage dates. */
    public Stages stages() { return stages; }

    public WaterData data() { return data; }

    /** What the measured days leave open in the quarter of a year to today, for people. */
    public List<String> weatherLacks() {
        List<String> lacks = new ArrayList<>(measured.lacks(state.date().minusDays(90), state.date()));
        if (stages.climate().filter(each -> each.climate().hasOthersRain()).isPresent()) {
            lacks.add("mean rain is not known here and is taken from the weather stations around");
        }
        return lacks;
    }

    /** The days that were measured. */
    public Weather measured() { return measured; }

    /**
     * The crops' curves on the weather of some days; nothing must be {@link #lacking()}.
     *
     * @param days the measured ones among them
     * @param windy for beds that lie open to the wind
     */
    public CropCurves curves(LocalDate first, LocalDate last, Weather days, boolean windy) {
        double wind = windy ? data.figures().figure("windyWind").is() : DayWeather.WIND_NOT_KNOWN;
        return new CropCurves(weather.orElseThrow().days(first, last, days, wind), state.garden().hemisphere(), stages,
                wind);
    }

    private CropCurves curves(boolean windy) {
        return curves.computeIfAbsent(windy,
                open -> curves(state.season().plus(-1).start(), state.season().plus(1).end(), measured, open));
    }

    /** A bed's ground and plants in a season; empty where no plant stands in it. */
    public Optional<BedSoil> soil(BedState bed, Season season) {
        return BedSoil.of(bed, season, data);
    }

    /**
     * The days of a season in which a bed's plants grow and draw.
     *
     * @param from the first day on which growth raises the need of any of them
     * @param to the last day before the leaves of the last of them decline
     */
    public record Growing(LocalDate from, LocalDate to) {}

    /** When a bed's plants grow in a season. */
    public Growing growing(BedSoil soil, Season season) {
        return new Growing(
                soil.plantings().stream().map(one -> one.water().growth().begins().in(season, one.crop(), stages))
                        .min(LocalDate::compareTo).orElse(season.end()),
                soil.plantings().stream().map(one -> one.water().growth().declines().in(season, one.crop(), stages))
                        .max(LocalDate::compareTo).orElse(season.start()));
    }

    /** A bed's account; empty where no plant stands in it or something is {@link #lacking()}. */
    public Optional<BedAccount> account(BedState bed) {
        return lacking.isPresent() ? Optional.empty()
                : accounts.computeIfAbsent(bed.bed().id(), id -> soil(bed, state.season()).map(
                        soil -> BedAccount.of(bed, soil, curves(bed.bed().windy()), data, measured, state.date())));
    }
}

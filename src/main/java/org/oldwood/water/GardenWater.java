package org.oldwood.water;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Season;
import org.oldwood.season.Climate;
import org.oldwood.season.Months;
import org.oldwood.season.Stages;
import org.oldwood.season.Weather;
import org.oldwood.store.Documents;

/**
 * The water of a garden's beds: one weather series for all, an account for each bed when it is
 * asked for. Covers the season before today's, in which the account settles from full ground, to
 * the end of the season after it.
 */
public final class GardenWater {
    private final GardenState state;
    private final Stages stages;
    private final BedSoil.Data data;
    private final Optional<CropCurves> curves;
    private final String lacking;
    private final Map<String, BedAccount> accounts = new HashMap<>();

    /**
     * Prepares a garden.
     *
     * @param climate its climate, if it is known
     * @param measured measured days; may be none
     */
    public GardenWater(
            GardenState state,
            Optional<Climate> climate,
            Weather measured,
            Stages stages,
            Crops crops,
            Documents documents) {
        this.state = state;
        this.stages = stages;
        data =
                new BedSoil.Data(
                        Soils.read(documents),
                        Surfaces.read(documents),
                        WaterFigures.read(documents),
                        crops);
        Optional<Months> rain = climate.flatMap(Climate::rainMm);
        lacking = lacking(climate, rain);
        curves =
                climate.isPresent() && rain.isPresent()
                        ? Optional.of(curves(climate.get(), rain.get(), measured))
                        : Optional.empty();
    }

    private static String lacking(Optional<Climate> climate, Optional<Months> rain) {
        if (climate.isEmpty()) {
            return "the garden's climate is not known: give garden.json a \"climate\", the name of"
                    + " a bundled one or twelve monthly means of meanMinC, meanMaxC and rainMm";
        }
        return rain.isPresent()
                ? ""
                : "the rain of this climate is not known: give garden.json twelve monthly means of"
                        + " rainMm";
    }

    private CropCurves curves(Climate climate, Months rain, Weather measured) {
        Season season = state.season();
        WeatherSeries weather =
                new MeanWeather(state.garden().site(), climate, rain)
                        .days(season.plus(-1).start(), season.plus(1).end(), measured);
        return new CropCurves(weather, state.garden().hemisphere(), stages);
    }

    /** What must be given before an account can be kept; empty where nothing is lacking. */
    public Optional<String> lacking() {
        return lacking.isEmpty() ? Optional.empty() : Optional.of(lacking);
    }

    /** The garden's stage dates. */
    public Stages stages() {
        return stages;
    }

    public BedSoil.Data data() {
        return data;
    }

    /** A bed's ground and plants in a season; empty where no plant stands in it. */
    public Optional<BedSoil> soil(BedState bed, Season season) {
        if (bed.plants().isEmpty()) {
            return Optional.empty();
        }
        BedSoil soil = BedSoil.of(bed, season, data);
        return soil.plantings().isEmpty() ? Optional.empty() : Optional.of(soil);
    }

    /** A bed's account; empty where no plant stands in it or something is {@link #lacking()}. */
    public Optional<BedAccount> account(BedState bed) {
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        BedAccount known = accounts.get(bed.bed().id());
        if (known != null) {
            return Optional.of(known);
        }
        Optional<BedAccount> made =
                soil(bed, state.season())
                        .map(soil -> BedAccount.of(bed, soil, curves.get(), data, state.date()));
        made.ifPresent(account -> accounts.put(bed.bed().id(), account));
        return made;
    }

    /** All beds' accounts, in the order of the record. */
    public List<BedAccount> accounts() {
        return state.beds().values().stream().map(this::account).flatMap(Optional::stream).toList();
    }
}

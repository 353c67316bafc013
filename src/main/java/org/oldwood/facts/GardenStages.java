package org.oldwood.facts;

import java.util.Optional;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Site;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Season;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.Sighting;
import org.oldwood.season.Sightings;
import org.oldwood.season.Stages;
import org.oldwood.season.place.PlaceClimate;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherMeans;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.Problems;

/** Makes a garden's stage dates from its record: climate, weather, and the stages noted as seen. */
public final class GardenStages {
    private GardenStages() {}

    /** What to give so that the garden's climate becomes known, without a full stop. */
    public static String lackingClimate() {
        return "give garden.json a \"climate\", the name of a bundled one near by or twelve monthly"
                + " means, or add some years of daily weather with oldwood weather add";
    }

    /**
     * The garden's stages: modelled by its climate, else by the calendar where none is known; moved by what was seen in
     * both cases. A climate that cannot be read is told in {@code problems} and left out.
     */
    public static Stages of(GardenState state, Weather weather, Documents documents, Problems problems) {
        return new ModelledStages(climate(state.garden(), weather, documents, problems), sightings(state), documents);
    }

    /**
     * The garden's climate: the one it declares, else the means of its own measured days where these are of enough
     * years, else that of its place; the rain of its place where the means have none.
     */
    public static Optional<GardenClimate> climate(Garden garden, Weather weather, Documents documents,
            Problems problems) {
        Json declared = garden.climate().orElse(null);
        double latitude = garden.site().latitude();
        if (declared == null) {
            return measured(weather, documents).or(() -> ofPlace(garden.site(), documents).map(PlaceClimate::climate))
                    .map(means -> of(garden.site(), means, weather, documents));
        }
        Optional<Climate> climate = Climate.of(declared, documents, problems);
        if (climate.flatMap(Climate::latitude).filter(its -> its * latitude < 0).isPresent()) {
            problems.tell("climate-of-the-other-half", declared.place(), climate.get().name(), latitude);
            return Optional.empty();
        }
        return climate.map(each -> of(garden.site(), each, weather, documents));
    }

    private static GardenClimate of(Site site, Climate means, Weather weather, Documents documents) {
        Climate whole = means.rainMm().isPresent() ? means
                : ofPlace(site, documents).map(around -> means.withRain(around.climate())).orElse(means);
        return new GardenClimate(site.latitude(), whole, weather, documents);
    }

    private static Optional<Climate> measured(Weather weather, Documents documents) {
        return weather.isEmpty() ? Optional.empty() : WeatherMeans.of(weather, SeasonMethods.read(documents)).climate();
    }

    /** Why a garden's own weather makes no climate yet; empty where it has none. */
    public static Optional<String> shortWeather(Weather weather, Documents documents) {
        return weather.isEmpty() ? Optional.empty()
                : Optional.of(WeatherMeans.of(weather, SeasonMethods.read(documents)).tooShort());
    }

    /** What the weather stations around a garden tell of its climate. */
    public static Optional<PlaceClimate> ofPlace(Site site, Documents documents) {
        return PlaceClimate.at(site.spot(), documents);
    }

    /** The stages that the journal says were seen. */
    static Sightings sightings(GardenState state) {
        return Sightings.of(state.entries().stream().filter(entry -> entry.kind() == EntryKind.SEEN)
                .flatMap(entry -> sighting(state, entry).stream()).toList());
    }

    private static Optional<Sighting> sighting(GardenState state, Entry entry) {
        Optional<Stage> stage = entry.text("stage").flatMap(Stage::find);
        Optional<String> crop = entry.text("crop")
                .or(() -> entry.text("plant").flatMap(state::plant).map(plant -> plant.plant().crop()));
        if (stage.isEmpty() || crop.isEmpty()) { return Optional.empty(); }
        Season season = Season.containing(entry.date(), state.garden().hemisphere());
        return Optional.of(Sighting.on(entry.date(), crop.get(), stage.get(), season));
    }
}

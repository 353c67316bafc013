package org.oldwood.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Season;
import org.oldwood.store.Documents;

/**
 * Stage dates of one garden: what was seen this season; else the crop's models on the garden's
 * weather and climate, moved by what was seen in past seasons and earlier in this one; else the
 * calendar. How: {@code docs/method-season.md}.
 */
public final class ModelledStages implements Stages {
    private final Stages calendar = new CalendarStages();
    private final Map<String, CropStages> crops = new HashMap<>();
    private final Map<Season, SeasonClimate> seasons = new HashMap<>();
    private final Map<String, Map<Stage, Modelled>> modelled = new HashMap<>();
    private final Map<String, Map<Stage, StageDate>> dates = new HashMap<>();
    private final GardenClimate climate;
    private final Sightings sightings;
    private final ChillModels chillModels;

    public ModelledStages(GardenClimate climate, Sightings sightings, Documents documents) {
        this.climate = climate;
        this.sightings = sightings;
        this.chillModels = ChillModels.read(documents);
    }

    @Override
    public StageDate date(Crop crop, Season season, Stage stage) {
        if (stage == Stage.DORMANT) {
            return dormant(crop, season);
        }
        String key = crop.id() + " " + season.year();
        Map<Stage, StageDate> found = dates.get(key);
        if (found == null) {
            found = new SeenStages(this, crop, season).dates();
            dates.put(key, found);
        }
        StageDate date = found.get(stage);
        if (date == null) {
            throw new IllegalStateException("no date for " + stage + " of " + crop.id());
        }
        return date;
    }

    private StageDate dormant(Crop crop, Season season) {
        StageDate before = date(crop, season.plus(-1), Stage.LEAF_FALL_DONE);
        return new StageDate(
                before.date(),
                before.plusMinusDays(),
                before.basis(),
                before.words().replaceFirst(Stage.LEAF_FALL_DONE.words(), Stage.DORMANT.words()),
                before.sources());
    }

    /** The models' dates of a season, before anything that was seen. */
    Map<Stage, Modelled> modelled(Crop crop, Season season) {
        String key = crop.id() + " " + season.year();
        Map<Stage, Modelled> found = modelled.get(key);
        if (found == null) {
            found = new CropSeason(crop, of(crop), season(season), calendar, chillModels).all();
            modelled.put(key, found);
        }
        return new EnumMap<>(found);
    }

    CropStages of(Crop crop) {
        CropStages found = crops.get(crop.id());
        if (found == null) {
            found = CropStages.of(crop);
            crops.put(crop.id(), found);
        }
        return found;
    }

    SeasonClimate season(Season season) {
        SeasonClimate found = seasons.get(season);
        if (found == null) {
            found = climate.season(season);
            seasons.put(season, found);
        }
        return found;
    }

    Sightings sightings() {
        return sightings;
    }

    SeasonMethods methods() {
        return climate.methods();
    }

    /** The chill of a crop in a season, and what it wants; empty where its need is not known. */
    public java.util.Optional<ChillReport> chill(Crop crop, Season season) {
        return of(crop).chill().map(need -> season(season).chill(need, chillModels));
    }

    /** The heat rule's day from another day on, for stages that follow one that was seen. */
    LocalDate after(Crop crop, Season season, StageRule.HeatAfter rule, LocalDate from) {
        return season(season)
                .model(of(crop).chill(), chillModels)
                .heatAfter(rule, rule.sum(), from);
    }
}

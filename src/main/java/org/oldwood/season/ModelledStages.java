package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillReport;
import org.oldwood.store.Documents;

/**
 * Stage dates of one garden: what was seen this season; else the crop's models on the garden's weather and climate,
 * moved by what was seen in past seasons and earlier in this one; else the calendar. How:
 * {@code docs/method-season.md}.
 */
public final class ModelledStages implements Stages {
    private final Stages calendar = new CalendarStages();
    private final Map<String, CropStages> crops = new HashMap<>();
    private final Map<Season, SeasonClimate> seasons = new HashMap<>();
    private final Map<String, Map<Integer, CropSeason>> modelled = new HashMap<>();
    private final Map<String, Map<Integer, SeenStages>> dates = new HashMap<>();
    private final Map<String, Map<Integer, Map<Stage, LocalDate>>> believed = new HashMap<>();
    private final Optional<GardenClimate> climate;
    private final Documents documents;
    private final SeasonMethods methods;
    private @Nullable ChillModels chillModels;
    private final Sightings sightings;

    public ModelledStages(GardenClimate climate, Sightings sightings, Documents documents) {
        this(Optional.of(climate), sightings, documents);
    }

    /** Without a climate the calendar takes the models' place; what was seen moves it all the same. */
    public ModelledStages(Optional<GardenClimate> climate, Sightings sightings, Documents documents) {
        this.climate = climate;
        this.sightings = sightings;
        this.documents = documents;
        this.methods = SeasonMethods.read(documents);
    }

    /** Read when first asked for: a garden without a climate does without. */
    private ChillModels chillModels() {
        ChillModels read = chillModels;
        if (read == null) {
            read = ChillModels.read(documents);
            chillModels = read;
        }
        return read;
    }

    @Override
    public StageDate date(Crop crop, Season season, Stage stage) {
        if (stage == Stage.DORMANT) {
            return dormant(crop, season);
        }
        return seen(crop, season).at(stage);
    }

    @Override
    public LocalDate day(Crop crop, Season season, Stage stage) {
        return stage == Stage.DORMANT
                ? seen(crop, season.plus(-1)).day(Stage.LEAF_FALL_DONE)
                : seen(crop, season).day(stage);
    }

    private SeenStages seen(Crop crop, Season season) {
        Map<Integer, SeenStages> seasons = ofCrop(dates, crop);
        SeenStages found = seasons.get(season.year());
        if (found == null) {
            found = new SeenStages(this, crop, season);
            seasons.put(season.year(), found);
        }
        return found;
    }

    private StageDate dormant(Crop crop, Season season) {
        StageDate before = date(crop, season.plus(-1), Stage.LEAF_FALL_DONE);
        return new StageDate(
                before.date(), before.plusMinusDays(), before.basis(), dormantWords(before.words()), before.sources());
    }

    private static String dormantWords(String leafFall) {
        String done = Stage.LEAF_FALL_DONE.words();
        int at = leafFall.indexOf(done);
        return at < 0
                ? leafFall
                : leafFall.substring(0, at) + Stage.DORMANT.words() + leafFall.substring(at + done.length());
    }

    /** What the models say of a stage, before anything that was seen. */
    Modelled modelled(Crop crop, Season season, Stage stage) {
        return climate.isEmpty()
                ? Modelled.of(calendar.date(crop, season, stage))
                : cropSeason(climate.get(), crop, season).at(stage);
    }

    /** The models' day of a stage alone. */
    LocalDate modelledDay(Crop crop, Season season, Stage stage) {
        return climate.isEmpty()
                ? calendar.date(crop, season, stage).date()
                : cropSeason(climate.get(), crop, season).day(stage);
    }

    private CropSeason cropSeason(GardenClimate at, Crop crop, Season season) {
        Map<Integer, CropSeason> years = ofCrop(modelled, crop);
        CropSeason found = years.get(season.year());
        if (found == null) {
            found = new CropSeason(crop, of(crop), season(at, season), calendar, chillModels());
            years.put(season.year(), found);
        }
        return found;
    }

    private static <T> Map<Integer, T> ofCrop(Map<String, Map<Integer, T>> all, Crop crop) {
        Map<Integer, T> found = all.get(crop.id());
        if (found == null) {
            found = new HashMap<>();
            all.put(crop.id(), found);
        }
        return found;
    }

    CropStages of(Crop crop) {
        CropStages found = crops.get(crop.id());
        if (found == null) {
            found = CropStages.of(crop);
            crops.put(crop.id(), found);
        }
        return found;
    }

    SeasonClimate season(GardenClimate at, Season season) {
        SeasonClimate found = seasons.get(season);
        if (found == null) {
            found = at.season(season);
            seasons.put(season, found);
        }
        return found;
    }

    Sightings sightings() {
        return sightings;
    }

    /** What was seen of a crop in a season, without what cannot be. */
    Map<Stage, LocalDate> believed(Crop crop, Season season) {
        return ofCrop(believed, crop).computeIfAbsent(season.year(), year -> {
            Map<Stage, LocalDate> seen = new EnumMap<>(Stage.class);
            seen.putAll(sightings.in(crop.id(), season));
            doubted(crop, season).forEach(seen::remove);
            return seen;
        });
    }

    @Override
    public List<String> doubts(Crop crop) {
        List<String> questions = new ArrayList<>();
        for (Season season : sightings.seasons(crop.id())) {
            for (Stage stage : doubted(crop, season)) {
                LocalDate seen =
                        Objects.requireNonNull(sightings.in(crop.id(), season).get(stage));
                questions.add(
                        "%s of %s cannot well be seen on %s: by the climate it comes about %s, and it must go with the other stages. Is it the right day and stage? As it stands it moves no date."
                                .formatted(stage.words(), crop.plural(), seen, modelledDay(crop, season, stage)));
            }
        }
        return questions;
    }

    /** Stages seen too far from their day, and of two in the wrong order the one farther from it. */
    private Set<Stage> doubted(Crop crop, Season season) {
        Set<Stage> doubted = EnumSet.noneOf(Stage.class);
        Map<Stage, LocalDate> seen = sightings.in(crop.id(), season);
        for (Stage stage : seen.keySet()) {
            double far = methods.sightings().farthest().is()
                    * modelled(crop, season, stage).plusMinus();
            if (off(crop, season, stage) > far) {
                doubted.add(stage);
            }
        }
        for (Stage early : seen.keySet()) {
            for (Stage late : seen.keySet()) {
                if (early.compareTo(late) < 0
                        && !doubted.contains(early)
                        && !doubted.contains(late)
                        && Objects.requireNonNull(seen.get(early)).isAfter(seen.get(late))) {
                    doubted.add(off(crop, season, early) > off(crop, season, late) ? early : late);
                }
            }
        }
        return doubted;
    }

    private long off(Crop crop, Season season, Stage stage) {
        LocalDate seen = Objects.requireNonNull(sightings.in(crop.id(), season).get(stage));
        return Math.abs(seen.toEpochDay() - modelledDay(crop, season, stage).toEpochDay());
    }

    SeasonMethods methods() {
        return methods;
    }

    @Override
    public Optional<GardenClimate> climate() {
        return climate;
    }

    @Override
    public Optional<ChillReport> chill(Crop crop, Season season) {
        return climate.map(at -> season(at, season).chill(of(crop).chill(), chillModels()));
    }

    /** The heat rule's day from another day on; empty where there is no climate. */
    Optional<LocalDate> after(Crop crop, Season season, StageRule.HeatAfter rule, LocalDate from) {
        return climate.map(
                at -> season(at, season).model(of(crop).chill(), chillModels()).heatAfter(rule, rule.sum(), from));
    }
}

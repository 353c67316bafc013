package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
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
    private final SeasonMethods methods;
    private final Sightings sightings;

    public ModelledStages(GardenClimate climate, Sightings sightings, Documents documents) {
        this(Optional.of(climate), sightings, documents);
    }

    /** Without a climate the calendar takes the models' place; what was seen moves it all the same. */
    public ModelledStages(Optional<GardenClimate> climate, Sightings sightings, Documents documents) {
        this.climate = climate;
        this.sightings = sightings;
        this.methods = SeasonMethods.read(documents);
    }

    @Override
    public StageDate date(Crop crop, Season season, Stage stage) {
        if (stage == Stage.DORMANT) { return dormant(crop, season); }
        return seen(crop, season).at(stage);
    }

    @Override
    public LocalDate day(Crop crop, Season season, Stage stage) {
        return stage == Stage.DORMANT ? seen(crop, season.plus(-1)).day(Stage.LEAF_FALL_DONE)
                : seen(crop, season).day(stage);
    }

    private SeenStages seen(Crop crop, Season season) {
        return ofCrop(dates, crop).computeIfAbsent(season.year(), year -> new SeenStages(this, crop, season));
    }

    private StageDate dormant(Crop crop, Season season) {
        StageDate before = date(crop, season.plus(-1), Stage.LEAF_FALL_DONE);
        return new StageDate(before.date(), before.plusMinusDays(), before.basis(), dormantWords(before.words()),
                before.sources());
    }

    private static String dormantWords(String leafFall) {
        String done = Stage.LEAF_FALL_DONE.words();
        int at = leafFall.indexOf(done);
        return at < 0 ? leafFall
                : leafFall.substring(0, at) + Stage.DORMANT.words() + leafFall.substring(at + done.length());
    }

    /** What the models say of a stage, before anything that was seen. */
    Modelled modelled(Crop crop, Season season, Stage stage) {
        return climate.isEmpty() ? Modelled.of(calendar.date(crop, season, stage), "")
                : cropSeason(climate.get(), crop, season).at(stage);
    }

    /** The models' day of a stage alone. */
    LocalDate modelledDay(Crop crop, Season season, Stage stage) {
        return climate.isEmpty() ? calendar.date(crop, season, stage).date()
                : cropSeason(climate.get(), crop, season).day(stage);
    }

    private CropSeason cropSeason(GardenClimate at, Crop crop, Season season) {
        return ofCrop(modelled, crop).computeIfAbsent(season.year(),
                year -> new CropSeason(crop, of(crop), season(at, season), calendar));
    }

    private static <T> Map<Integer, T> ofCrop(Map<String, Map<Integer, T>> all, Crop crop) {
        return all.computeIfAbsent(crop.id(), id -> new HashMap<>());
    }

    CropStages of(Crop crop) { return crops.computeIfAbsent(crop.id(), id -> CropStages.of(crop)); }

    SeasonClimate season(GardenClimate at, Season season) { return seasons.computeIfAbsent(season, at::season); }

    Sightings sightings() { return sightings; }

    /** What was seen of a crop in a season, without what cannot be. */
    Map<Stage, LocalDate> believed(Crop crop, Season season) {
        return ofCrop(believed, crop).computeIfAbsent(season.year(), year -> middle(standing(crop, season)));
    }

    /** A stage is reached when half the plants show it. */
    private static Map<Stage, LocalDate> middle(Map<Stage, List<LocalDate>> days) {
        Map<Stage, LocalDate> middle = new EnumMap<>(Stage.class);
        days.forEach((stage, all) -> middle.put(stage, all.get((all.size() - 1) / 2)));
        return middle;
    }

    /** The days that can be: near enough to the models', and of a stage out of order those that go with the others. */
    private Map<Stage, List<LocalDate>> standing(Crop crop, Season season) {
        Map<Stage, List<LocalDate>> near = new EnumMap<>(Stage.class);
        sightings.in(crop.id(), season).forEach((stage, days) -> near.put(stage,
                days.stream().filter(day -> !tooFar(crop, season, stage, day)).toList()));
        near.values().removeIf(List::isEmpty);
        Map<Stage, List<LocalDate>> sure = new EnumMap<>(near);
        Set<Stage> doubted = outOfOrder(crop, season, middle(near));
        sure.keySet().removeAll(doubted);
        for (Stage stage : doubted) {
            List<LocalDate> days = near.getOrDefault(stage, List.of()).stream()
                    .filter(day -> middle(sure).entrySet().stream()
                            .allMatch(each -> each.getKey().compareTo(stage) < 0 ? !each.getValue().isAfter(day)
                                    : !each.getValue().isBefore(day)))
                    .toList();
            if (!days.isEmpty()) { sure.put(stage, days); }
        }
        return sure;
    }

    @Override
    public List<String> doubts(Crop crop) {
        List<String> questions = new ArrayList<>();
        for (Season season : sightings.seasons(crop.id())) {
            Map<Stage, List<LocalDate>> standing = standing(crop, season);
            sightings.in(crop.id(), season)
                    .forEach((stage, days) -> days.stream()
                            .filter(day -> !standing.getOrDefault(stage, List.of()).contains(day)).distinct()
                            .forEach(day -> questions.add(question(crop, season, stage, day))));
        }
        return questions;
    }

    private String question(Crop crop, Season season, Stage stage, LocalDate seen) {
        return "%s of %s cannot well be seen on %s: by the climate it comes about %s, and it must go with the other stages. Is it the right day and stage? As it stands it moves no date."
                .formatted(stage.words(), crop.plural(), seen, modelledDay(crop, season, stage));
    }

    private boolean tooFar(Crop crop, Season season, Stage stage, LocalDate seen) {
        double most = methods.sightings().farthest().is() * modelled(crop, season, stage).plusMinus();
        return off(crop, season, stage, seen) > Math.max(most, methods.sightings().least().is());
    }

    /** Of two stages seen in the wrong order the one farther from its day. */
    private Set<Stage> outOfOrder(Crop crop, Season season, Map<Stage, LocalDate> seen) {
        Set<Stage> doubted = EnumSet.noneOf(Stage.class);
        for (Map.Entry<Stage, LocalDate> early : seen.entrySet()) {
            for (Map.Entry<Stage, LocalDate> late : seen.entrySet()) {
                if (early.getKey().compareTo(late.getKey()) < 0 && !doubted.contains(early.getKey())
                        && !doubted.contains(late.getKey()) && early.getValue().isAfter(late.getValue())) {
                    boolean first = off(crop, season, early.getKey(), early.getValue()) > off(crop, season,
                            late.getKey(), late.getValue());
                    doubted.add(first ? early.getKey() : late.getKey());
                }
            }
        }
        return doubted;
    }

    private long off(Crop crop, Season season, Stage stage, LocalDate seen) {
        return Math.abs(seen.toEpochDay() - modelledDay(crop, season, stage).toEpochDay());
    }

    SeasonMethods methods() { return methods; }

    @Override
    public Optional<GardenClimate> climate() { return climate; }

    @Override
    public Optional<ChillReport> chill(Crop crop, Season season) {
        return climate.map(at -> season(at, season).chill(of(crop).chill()));
    }

    /** How far the heat rule's sum is from another day on; empty where there is nothing to say. */
    Optional<String> far(Crop crop, Season season, StageRule.HeatAfter rule, LocalDate from) {
        return climate.map(at -> season(at, season).model(of(crop).chill()).far(rule, from))
                .filter(words -> !words.isEmpty());
    }

    /** The heat rule's day from another day on; empty where there is no climate. */
    Optional<LocalDate> after(Crop crop, Season season, StageRule.HeatAfter rule, LocalDate from) {
        return climate.map(at -> season(at, season).model(of(crop).chill()).heatAfter(rule, rule.sum(), from));
    }
}

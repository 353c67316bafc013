package org.oldwood.cuttings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;

/**
 * All lots of a garden on a day: their counts, forecasts, and what they teach. Reads each crop
 * once; linear in lots.
 */
public final class LotBook {
    private final GardenState state;
    private final Crops crops;
    private final Stages stages;
    private final Map<String, Optional<Propagation>> sections = new HashMap<>();
    private final Map<String, Optional<Course>> courses = new HashMap<>();
    private final Map<String, Setting> settings = new HashMap<>();
    private final Map<String, Survival> survivals = new HashMap<>();

    public LotBook(GardenState state, Crops crops, Stages stages) {
        this.state = state;
        this.crops = crops;
        this.stages = stages;
    }

    /** How a crop is raised; empty where it has no section for it. */
    public Optional<Propagation> propagation(String crop) {
        return sections.computeIfAbsent(crop, id -> Propagation.of(crops.get(id)));
    }

    /** The stage dates of a crop here, and the day. */
    public Setting setting(String cropId) {
        return settings.computeIfAbsent(
                cropId,
                id -> {
                    Crop crop = crops.get(id);
                    Map<Season, Map<Stage, StageDate>> known = new HashMap<>();
                    CropStages dates =
                            (season, stage) ->
                                    known.computeIfAbsent(season, any -> new HashMap<>())
                                            .computeIfAbsent(
                                                    stage, any -> stages.date(crop, season, stage));
                    return new Setting(state.garden().hemisphere(), dates, state.date());
                });
    }

    /** The form of bush that a lot's plants will have: the parent's, or the crop's default. */
    public String form(LotState lot) {
        return lot.parent()
                .flatMap(state::plant)
                .map(parent -> parent.plant().form())
                .filter(form -> crops.get(lot.crop()).forms().contains(form))
                .orElseGet(() -> crops.get(lot.crop()).form());
    }

    /**
     * The course of a crop, by method and the default cut; empty where the crop, the method or its
     * yields are not known.
     *
     * @param method the method's id; empty for the default of the form
     */
    public Optional<Course> course(String crop, String form, Optional<String> method) {
        return courses.computeIfAbsent(
                crop + " " + form + " " + method.orElse(""),
                key -> Course.of(crops.get(crop), form, method, Optional.empty()));
    }

    /** The course that a lot is on. */
    public Optional<Course> course(LotState lot) {
        return course(lot.crop(), form(lot), Optional.of(lot.method()));
    }

    /** The rates of a crop and method, after what all lots of the garden taught. */
    public Survival survival(String crop, Course course) {
        return survivals.computeIfAbsent(
                crop + " " + course.method().id(), key -> taught(crop, course));
    }

    private Survival taught(String crop, Course course) {
        List<PastLot> past = new ArrayList<>();
        for (LotState lot : state.lots().values()) {
            if (lot.crop().equals(crop) && lot.method().equals(course.method().id())) {
                Timeline line = Timeline.of(LotRecord.counts(lot), course, setting(crop));
                past.add(LotRecord.past(lot, line, state));
            }
        }
        return course.method().phases().survival().learning(past);
    }

    public LotCounts counts(LotState lot) {
        return LotRecord.counts(lot);
    }

    /** What will become of a lot; empty where nothing is known of its crop and method. */
    public Optional<Forecast> forecast(LotState lot) {
        return course(lot)
                .map(
                        course ->
                                Forecast.of(
                                        counts(lot),
                                        course,
                                        survival(lot.crop(), course),
                                        setting(lot.crop())));
    }

    /** Whether a lot's parent is fit to be one; empty where the parent is not the garden's own. */
    public Optional<ParentHealth> parentHealth(LotState lot) {
        return lot.parent().flatMap(state::plant).flatMap(this::health);
    }

    /** Whether a bush is fit to be a parent; empty where nothing is known of its crop. */
    public Optional<ParentHealth> health(PlantState plant) {
        return propagation(plant.plant().crop())
                .map(all -> HealthRecord.of(plant, all.health(), state.date()));
    }
}

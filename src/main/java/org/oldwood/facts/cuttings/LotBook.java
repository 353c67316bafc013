package org.oldwood.facts.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.Propagation;
import org.oldwood.craft.cuttings.Setting;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.craft.cuttings.StrikeWindow;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.garden.ByPlant;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;

/**
 * All lots of a garden on a day: their counts, forecasts, and what they teach; and the health of their parents. Reads each crop once; linear in lots.
 */
public final class LotBook {
    private static final double NINE_IN_TEN = 0.9;
    private static final double DAYS_A_YEAR = 365.25;

    private final GardenState state;
    private final Crops crops;
    private final Stages stages;
    private final Map<String, Setting> settings = new HashMap<>();
    private final Map<List<Object>, Optional<Course>> courses = new HashMap<>();
    private final Map<String, Survival> survivals = new HashMap<>();
    private final Map<String, List<ParentHealth.Sick>> sick = new HashMap<>();
    private final ByPlant<Optional<ParentHealth>> health = new ByPlant<>();
    private final IdentityHashMap<LotState, Optional<Forecast>> forecasts = new IdentityHashMap<>();
    private final IdentityHashMap<Survival, Map<Integer, OptionalInt>> numbers = new IdentityHashMap<>();

    public LotBook(GardenState state, Crops crops, Stages stages) {
        this.state = state;
        this.crops = crops;
        this.stages = stages;
    }

    /** How a crop is raised; empty where it has no section for it. */
    public Optional<Propagation> propagation(String crop) {
        return Propagation.of(crops.get(crop));
    }

    /** The stage dates of a crop here, and the day. */
    public Setting setting(String cropId) {
        return settings.computeIfAbsent(cropId, id -> {
            Crop crop = crops.get(id);
            Map<Season, Map<Stage, StageDate>> known = new HashMap<>();
            Setting.StageDates dates = (season, stage) -> known.computeIfAbsent(season, any -> new HashMap<>())
                    .computeIfAbsent(stage, any -> stages.date(crop, season, stage));
            return new Setting(state.garden().hemisphere(), dates, state.date());
        });
    }

    /**
     * The form that a lot's plants will have: as noted at the strike; else the parent's, where the method makes such
     * plants; else the one that the method makes; else the crop's default.
     */
    public String form(LotState lot) {
        Crop crop = crops.get(lot.crop());
        List<String> made = propagation(lot.crop()).map(all -> all.formsOf(lot.method())).orElse(List.of());
        return lot.form()
                .or(() -> lot.parent().flatMap(state::plant).map(parent -> parent.plant().form())
                        .filter(form -> made.isEmpty() || made.contains(form)))
                .or(() -> made.stream().findFirst()).filter(crop.forms()::contains).orElseGet(crop::form);
    }

    /**
     * The course of a crop, by method and cut; empty where the crop, the method or its yields are not known.
     *
     * @param method the method's id; empty for the default of the form
     * @param cut the cut's id; empty for the default of the form
     */
    public Optional<Course> course(String crop, String form, Optional<String> method, Optional<String> cut) {
        return courses.computeIfAbsent(List.of(crop, form, method, cut),
                any -> Course.of(crops.get(crop), form, method, cut));
    }

    /** The course that a lot is on. A cut that its form does not know leaves the default. */
    public Optional<Course> course(LotState lot) {
        String form = form(lot);
        Optional<String> method = Optional.of(lot.method());
        Optional<Course> noted = course(lot.crop(), form, method, lot.cut());
        return noted.isPresent() ? noted : course(lot.crop(), form, method, Optional.empty());
    }

    /** The rates of a crop and method, after what all lots of the garden taught. */
    public Survival survival(String crop, Course course) {
        return survivals.computeIfAbsent(crop + " " + course.method().id(), key -> taught(crop, course));
    }

    private Survival taught(String crop, Course course) {
        return course.method().survival()
                .learning(
                        state.lots().values().stream()
                                .filter(lot -> lot.crop().equals(crop) && lot.method().equals(course.method().id()))
                                .map(lot -> LotRecord.past(lot,
                                        Timeline.of(LotRecord.counts(lot, state), course, setting(crop)), state))
                                .toList());
    }

    public LotCounts counts(LotState lot) { return LotRecord.counts(lot, state); }

    /** What will become of a lot; empty where nothing is known of its crop and method. */
    public Optional<Forecast> forecast(LotState lot) {
        return forecasts.computeIfAbsent(lot, of -> course(of)
                .map(course -> Forecast.of(counts(of), course, survival(of.crop(), course), setting(of.crop()))));
    }

    /**
     * The fewest cuttings to strike for so many plants, nine times in ten; empty where more than
     * {@link StrikePlan#MOST}.
     */
    public OptionalInt fewest(int wanted, Survival survival) {
        return numbers.computeIfAbsent(survival, any -> new HashMap<>()).computeIfAbsent(wanted,
                number -> StrikePlan.fewest(number, NINE_IN_TEN, survival));
    }

    /** Whether a lot's parent is fit to be one; empty where the parent is not the garden's own. */
    public Optional<ParentHealth> parentHealth(LotState lot) {
        return lot.parent().flatMap(state::plant).flatMap(this::health);
    }

    /**
     * Whether a bush is fit to be a parent; empty where nothing is known of its crop. What bars a bush bars the same
     * crop beside it in the bed: a disease is there before it shows.
     */
    public Optional<ParentHealth> health(PlantState plant) {
        return health.get(plant, each -> healthOn(each, state.date()));
    }

    /** The same on another day than the garden's. */
    public Optional<ParentHealth> healthOn(PlantState plant, LocalDate day) {
        Optional<Propagation> raised = propagation(plant.plant().crop());
        if (raised.isEmpty()) { return Optional.empty(); }
        ParentHealth own = inspected(plant, raised.get().health(), day);
        if (!own.fit()) { return Optional.of(own); }
        String kind = plant.plant().bed() + " " + plant.plant().crop();
        return Optional.of(own.beside(sick.computeIfAbsent(kind, any -> sickBeside(plant))));
    }

    private List<ParentHealth.Sick> sickBeside(PlantState one) {
        HealthSigns signs = propagation(one.plant().crop()).orElseThrow().health();
        return state.bed(one.plant().bed()).stream().flatMap(bed -> bed.plants().stream())
                .filter(plant -> plant.plant().crop().equals(one.plant().crop()))
                .flatMap(plant -> barring(plant, signs).stream()).toList();
    }

    /**
     * A disease that goes with the cuttings never leaves the bush, so a finding that bars it holds for good; of the
     * others only the last inspection counts.
     */
    private static ParentHealth inspected(PlantState plant, HealthSigns signs, LocalDate day) {
        List<Entry> inspections = Entries.all(plant.entries(), EntryKind.INSPECTED);
        double age = years(plant.plant().planted(), day);
        if (inspections.isEmpty()) { return ParentHealth.of(signs, List.of(), age, age); }
        Entry last = inspections.get(inspections.size() - 1);
        List<String> found = inspections.stream().map(entry -> entry.text("finding").orElse(""))
                .filter(finding -> signs.barring(finding).isPresent() || last.names("finding", finding)).distinct()
                .toList();
        return ParentHealth.of(signs, found, years(last.date(), day), age);
    }

    private static double years(LocalDate from, LocalDate day) {
        return ChronoUnit.DAYS.between(from, day) / DAYS_A_YEAR;
    }

    /** The first finding on a bush that bars it; empty where nothing does. */
    private static Optional<ParentHealth.Sick> barring(PlantState plant, HealthSigns signs) {
        return Entries.all(plant.entries(), EntryKind.INSPECTED).stream()
                .flatMap(inspection -> inspection.text("finding").stream())
                .flatMap(finding -> signs.barring(finding)
                        .map(sign -> new ParentHealth.Sick(plant.plant().id(), finding, sign.sources())).stream())
                .findFirst();
    }

    /** When cuttings are struck, in the window that opens in a season; empty as for a course. */
    public Optional<StrikeWindow> strikeWindow(String crop, String form, String method, Season season) {
        return course(crop, form, Optional.of(method), Optional.empty())
                .map(course -> StrikeWindow.opensIn(season, course, setting(crop)));
    }
}

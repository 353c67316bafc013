package org.oldwood.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.crop.Stage;
import org.oldwood.season.CropStages.ChillNeed;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillModels.ChillModel;
import org.oldwood.season.sums.ChillReport;
import org.oldwood.store.Documents;
import org.oldwood.words.Words;

/** One season's days at one garden, with the winter's chill. */
final class SeasonClimate {
    private static final String PORTIONS = "dynamic";

    private final SeasonDays days;
    private final Climate climate;
    private final SeasonMethods methods;
    private final Documents documents;
    private final Map<String, Double> chill = new HashMap<>();
    private @Nullable Double winterHours;

    SeasonClimate(SeasonDays days, Climate climate, SeasonMethods methods, Documents documents) {
        this.days = days;
        this.climate = climate;
        this.methods = methods;
        this.documents = documents;
    }

    private ChillModel chillModel(String key) { return ChillModels.read(documents).get(key); }

    public SeasonDays days() { return days; }

    /** What the dates of this season rest on, in words. */
    public String basis() {
        String on = "on the climate of " + climate.name();
        return days.measuredDays() == 0 ? on
                : "on %s of the garden's weather, else %s".formatted(Words.count(days.measuredDays(), "day", "days"),
                        on);
    }

    public StageModel model(Optional<ChillNeed> need) {
        double factor = need.flatMap(ChillNeed::waits).map(waits -> waits.factor(winterHours())).orElse(1.0);
        return new StageModel(days, methods, factor, climate.meanC().most());
    }

    /** Hours of chill before the heat of spring, as many as are to be expected where they were not measured. */
    double winterHours() {
        Double known = winterHours;
        if (known == null) {
            LocalDate last = days.on(methods.chill().heatBefore()).minusDays(1);
            known = days.hourly(chillModel(methods.chill().heatModel()).begin(), chillFrom(), last);
            winterHours = known;
        }
        return known;
    }

    /** Whether the winter gives so little of what a crop wants that it will not suit. */
    boolean unsuited(ChillNeed need) {
        return winterHours() < methods.chill().unsuitedShare().is() * need.need().low();
    }

    /** The ± of a spring date after a winter like this; 0 where chill was enough. */
    double mildPlusMinus(ChillNeed need) {
        SeasonMethods.Chill mild = methods.chill();
        double hours = winterHours();
        if (hours < mild.unseenBelow().is()) { return mild.unseenPlusMinus().is(); }
        double here = need.waits().map(waits -> waits.plusMinus().is()).orElse(mild.shortPlusMinus().is());
        return hours < mild.shortBelow().is() ? here : 0;
    }

    SeasonMethods.Autumn autumn() { return methods.leafFall(); }

    boolean isSouth() { return days.season().hemisphere() == Hemisphere.SOUTH; }

    /** The ± of a stage that heat brings, with so many of its days still to come. */
    double leadDays(int toCome, double ofClimate) {
        return methods.leadError().days(toCome, climate.meanC().least(), ofClimate);
    }

    /** Standard error of a stage's day that comes from the place's climate, days. */
    public double placeDays(Stage stage) {
        return methods.placeError().days(climate, stage);
    }

    public LocalDate chillFrom() { return methods.chillFirst(days.season()); }

    private LocalDate chillTo() { return methods.chillLast(days.season()); }

    public ChillReport chill(Optional<ChillNeed> need) {
        return new ChillReport(chillFrom(), chillTo(), total(chillModel(PORTIONS)), need.map(each -> beside(each)));
    }

    /** True where not even the least of what sources give for the crop is reached. */
    public boolean isShort(ChillNeed need) {
        return beside(need).answer() == ChillReport.Answer.SHORT;
    }

    private ChillReport.Need beside(ChillNeed need) {
        ChillModel model = chillModel(need.model());
        return new ChillReport.Need(model.key(), model.name(), total(model), need.need());
    }

    private double total(ChillModel model) {
        return chill.computeIfAbsent(model.key(), key -> {
            double sum = days.hourly(model.begin(), chillFrom(), chillTo());
            return key.equals(PORTIONS) ? Math.max(0, sum - tooMany()) : sum;
        });
    }

    /** The portions too many that mean days give. */
    private double tooMany() {
        double all = ChronoUnit.DAYS.between(chillFrom(), chillTo());
        return methods.chill().meanDayPortions().is() * days.unmeasured(chillFrom(), chillTo()) / all;
    }
}

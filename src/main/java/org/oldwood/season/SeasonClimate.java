package org.oldwood.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Stage;
import org.oldwood.season.CropStages.ChillNeed;
import org.oldwood.season.sums.ChillCourse;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillModels.ChillModel;
import org.oldwood.season.sums.ChillReport;

/** One season's days at one garden, with the winter's chill and the day on which heat begins. */
final class SeasonClimate {
    private static final String PORTIONS = "dynamic";

    private final SeasonDays days;
    private final Climate climate;
    private final SeasonMethods methods;
    private final Map<String, Double> chill = new HashMap<>();
    private final Map<String, ChillCourse> courses = new HashMap<>();
    private final double warmestMonthC;

    public SeasonClimate(SeasonDays days, Climate climate, SeasonMethods methods) {
        this.days = days;
        this.climate = climate;
        this.methods = methods;
        this.warmestMonthC = climate.meanC().most();
    }

    public SeasonDays days() {
        return days;
    }

    /** What the dates of this season rest on, in words. */
    public String basis() {
        String on = "on the climate of " + climate.name();
        return days.measuredDays() == 0
                ? on
                : "on " + days.measuredDays() + " days of the garden's weather, else " + on;
    }

    public StageModel model(Optional<ChillNeed> need, ChillModels models) {
        LocalDate from = need.map(each -> heatFrom(each, models)).orElse(days.on(methods.heatFrom()));
        return new StageModel(days, methods, from, warmestMonthC);
    }

    /** Standard error of a stage's day that comes from the place's climate, days. */
    public double placeDays(Stage stage) {
        return methods.place().days(climate, stage);
    }

    public double unmetPlusMinus() {
        return methods.unmetPlusMinus().is();
    }

    public LocalDate chillFrom() {
        return methods.chillFirst(days.season());
    }

    private LocalDate chillTo() {
        return methods.chillLast(days.season());
    }

    /** Heat begins when the least chill that sources give is met, within bounds. */
    private LocalDate heatFrom(ChillNeed need, ChillModels models) {
        LocalDate from = days.on(methods.heatFrom());
        LocalDate latest = from.plusDays((long) methods.mostHoldDays().is());
        LocalDate met = courses.computeIfAbsent(
                        need.model(),
                        key -> new ChillCourse(days, models.get(key).begin(), chillFrom(), latest))
                .reaches(need.need().low());
        return met.isBefore(from) ? from : met;
    }

    public ChillReport chill(Optional<ChillNeed> need, ChillModels models) {
        return new ChillReport(
                chillFrom(),
                chillTo(),
                total(models.get(PORTIONS)),
                need.map(each -> beside(models.get(each.model()), each)));
    }

    /** True where not even the least of what sources give for the crop is reached. */
    public boolean isShort(ChillNeed need, ChillModels models) {
        return beside(models.get(need.model()), need).answer() == ChillReport.Answer.SHORT;
    }

    private ChillReport.Need beside(ChillModel model, ChillNeed need) {
        return new ChillReport.Need(model.key(), model.name(), total(model), need.need());
    }

    private double total(ChillModel model) {
        return chill.computeIfAbsent(model.key(), key -> days.hourly(model.begin(), chillFrom(), chillTo()));
    }
}

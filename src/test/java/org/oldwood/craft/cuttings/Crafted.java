package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.Arrays;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.SurvivalChain;
import org.oldwood.craft.cuttings.survival.UncertainRate;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.store.Documents;

/** The bundled crops in a garden known by the calendar only, for tests. */
public final class Crafted {
    public static final Documents DOCUMENTS = Documents.bundled();
    public static final Crops CROPS = new Crops(DOCUMENTS);
    private static final CalendarStages CALENDAR = new CalendarStages();

    private Crafted() {}

    /** The crop of a season from the first in place to the first full one. */
    public static Forecast.SeasonCrop crop(Forecast forecast, Season season) {
        return forecast.crops().stream().filter(crop -> crop.season().equals(season)).findFirst().orElseThrow();
    }

    /** The expected share that lives through every phase. */
    static double share(SurvivalChain chain) {
        return chain.rates().stream().mapToDouble(UncertainRate::mean).reduce(1, (one, next) -> one * next);
    }

    public static Propagation propagation(String crop) { return Propagation.of(CROPS.get(crop)).orElseThrow(); }

    public static Setting.StageDates stages(String crop) {
        Crop profile = CROPS.get(crop);
        return (season, stage) -> CALENDAR.date(profile, season, stage);
    }

    public static Setting north(String crop, String asOf) {
        return new Setting(Hemisphere.NORTH, stages(crop), LocalDate.parse(asOf));
    }

    public static Setting south(String crop, String asOf) {
        return new Setting(Hemisphere.SOUTH, stages(crop), LocalDate.parse(asOf));
    }

    /** The default method, and the cut of that id or else the default cut. */
    public static Course course(String crop, String form, String method, String... cut) {
        Propagation all = propagation(crop);
        PlantingOut.Cut chosen = all.plantingOut().cutsFor(form).stream()
                .filter(it -> cut.length == 0 || Arrays.asList(cut).contains(it.id())).findFirst().orElseThrow();
        return Course.of(all.method(method, form).orElseThrow(), chosen, CROPS.get(crop), form).orElseThrow();
    }

    public static LotCounts lot(int number, String on) { return LotCounts.struck(number, LocalDate.parse(on)); }

    public static Survival survival(Course course) { return course.method().survival(); }

    public static Season north(int year) { return new Season(year, Hemisphere.NORTH); }
}

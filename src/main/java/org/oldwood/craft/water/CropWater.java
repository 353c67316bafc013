package org.oldwood.craft.water;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.store.Fields;

/**
 * A crop's section {@code water}: how it draws water, how deep, and when it must not go short.
 *
 * @param group coefficients and depletion fraction
 * @param growth when its coefficient changes
 * @param rootDepth depth of the full-grown plant's roots, m
 * @param yearsToFullRoots seasons until then
 * @param weeklyNeed the common guide, mm a week
 * @param critical when the crop must not go short
 * @param trialDeficit deficit at which a trial watered it, mm
 * @param splits when ripe fruit splits if soaked after drought
 */
public record CropWater(WaterFigures.Group group, Growth growth, Figure rootDepth, Figure yearsToFullRoots,
        Cover coverByYear, Figure weeklyNeed, List<Period> critical, StandsWet standsWet, Optional<Figure> trialDeficit,
        Optional<Period> splits) {

    /**
     * A day told by a stage of growth.
     *
     * @param plusDays days after it; below 0 before it
     */
    public record StageDay(Stage stage, @Key(least = -365, most = 365) int plusDays) {
        public LocalDate in(Season season, Crop crop, Stages stages) {
            return stages.day(crop, season, stage).plusDays(plusDays);
        }
    }

    /**
     * The days on which the coefficient changes.
     *
     * @param begins when growth begins to raise it
     * @param fullLeaf from when it stands at its height
     * @param declines from when it falls
     * @param ends when the plants are bare
     */
    @Notes("seen")
    public record Growth(StageDay begins, StageDay fullLeaf, StageDay declines, StageDay ends) {}

    /** Share of the bed that is covered in seasons 1, 2 …; then full. */
    @Notes("seen")
    public record Cover(List<Double> share) {}

    /** A time of the year with its reason. Both ends are included. */
    @Notes("seen")
    public record Period(String name, StageDay from, StageDay to, String why, List<String> sources) {}

    /**
     * How a crop stands wet feet.
     *
     * @param word {@code badly}, {@code fairly well}
     * @param otherWord what another source says; may be empty
     * @param note which source says what; may be empty
     */
    @Notes("seen")
    public record StandsWet(String word, @Key(maybe = true) String otherWord, String note, List<String> sources) {}

    /** Reads a crop's section. Empty where neither it nor the crop it is like has one. */
    public static Optional<CropWater> of(Crop crop, WaterFigures figures) {
        return crop.section("water", CropWater.class, fields -> read(fields, figures));
    }

    private static CropWater read(Fields fields, WaterFigures figures) {
        fields.count("format", 1, 1);
        WaterFigures.Group group = figures.group(fields.text("coefficients"));
        Optional<Period> splits = fields.object("splits")
                .map(one -> RecordReader.read(one, Period.class, Map.of("name", "ripe fruit")));
        return RecordReader.read(fields, CropWater.class, Map.of("group", group, "splits", splits));
    }

    /**
     * Depth of the roots in a season after planting, m: from the planting hole to full depth in even steps.
     *
     * @param season 1 for the season of planting
     * @param firstDepthM depth in the season of planting, m
     */
    public double rootDepthM(int season, double firstDepthM) {
        double full = Math.max(1, yearsToFullRoots.is());
        double grown = Math.min(1, (season - 1) / full);
        double first = Math.min(firstDepthM, rootDepth.is());
        return first + (rootDepth.is() - first) * grown;
    }

    /** Share of the bed that the plants cover in a season after planting; 1 for the first. */
    public double cover(int season) {
        List<Double> share = coverByYear.share();
        return season > share.size() ? 1 : share.get(Math.max(1, season) - 1);
    }
}

package org.oldwood.craft.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/**
 * A crop's section {@code water}: how it draws water, how deep, and when it must not go short.
 *
 * @param group coefficients and depletion fraction
 * @param begins when growth begins to raise the coefficient
 * @param fullLeaf from when it stands at its height
 * @param declines from when it falls
 * @param ends when the plants are bare
 * @param rootDepth depth of the full-grown plant's roots, m
 * @param yearsToFullRoots seasons until then
 * @param coverByYear share of the bed covered in seasons 1, 2 …; then full
 * @param weeklyNeed the common guide, mm a week
 * @param critical when the crop must not go short
 * @param standsWet how it stands wet feet
 * @param trialDeficit deficit at which a trial watered it, mm
 * @param splits when ripe fruit splits if soaked after drought
 */
public record CropWater(
        WaterFigures.Group group,
        StageDay begins,
        StageDay fullLeaf,
        StageDay declines,
        StageDay ends,
        Figure rootDepth,
        Figure yearsToFullRoots,
        List<Double> coverByYear,
        Figure weeklyNeed,
        List<Period> critical,
        StandsWet standsWet,
        Optional<Figure> trialDeficit,
        Optional<Period> splits) {

    public CropWater {
        coverByYear = List.copyOf(coverByYear);
        critical = List.copyOf(critical);
    }

    /** A time of the year with its reason. Both ends are included. */
    public record Period(String name, StageDay from, StageDay to, String why, List<String> sources) {
        public Period {
            sources = List.copyOf(sources);
        }
    }

    /**
     * How a crop stands wet feet.
     *
     * @param word {@code badly}, {@code fairly well}
     * @param otherWord what another source says; may be empty
     * @param note which source says what; may be empty
     */
    public record StandsWet(String word, String otherWord, String note, List<String> sources) {
        public StandsWet {
            sources = List.copyOf(sources);
        }
    }

    /** Reads a crop's section. Empty where neither it nor the crop it is like has one. */
    public static Optional<CropWater> of(Crop crop, WaterFigures figures) {
        return crop.section("water", CropWater.class, fields -> read(fields, figures));
    }

    private static CropWater read(Fields fields, WaterFigures figures) {
        fields.count("format", 1, 1);
        Fields growth = Parts.must(fields, "growth");
        CropWater water = new CropWater(
                figures.group(fields.text("coefficients")),
                StageDay.read(growth, "begins"),
                StageDay.read(growth, "fullLeaf"),
                StageDay.read(growth, "declines"),
                StageDay.read(growth, "ends"),
                Figure.read(fields, "rootDepth"),
                Figure.read(fields, "yearsToFullRoots"),
                cover(Parts.must(fields, "coverByYear")),
                Figure.read(fields, "weeklyNeed"),
                periods(fields.objects("critical")),
                standsWet(Parts.must(fields, "standsWet")),
                Figure.optional(fields, "trialDeficit"),
                fields.object("splits").map(one -> period("ripe fruit", one)));
        Parts.grounds(growth);
        fields.done();
        return water;
    }

    private static List<Double> cover(Fields fields) {
        List<Double> cover = fields.numbers("share");
        Parts.grounds(fields);
        return cover;
    }

    private static List<Period> periods(List<Fields> all) {
        List<Period> periods = new ArrayList<>();
        for (Fields one : all) {
            periods.add(period(one.text("name"), one));
        }
        return periods;
    }

    private static Period period(String name, Fields fields) {
        return new Period(
                name,
                StageDay.read(fields, "from"),
                StageDay.read(fields, "to"),
                fields.text("why"),
                Parts.grounds(fields));
    }

    private static StandsWet standsWet(Fields fields) {
        String word = fields.text("word");
        String other = fields.text("otherWord", "");
        String note = fields.text("note", "");
        return new StandsWet(word, other, note, Parts.grounds(fields));
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
        return season > coverByYear.size() ? 1 : coverByYear.get(Math.max(1, season) - 1);
    }
}

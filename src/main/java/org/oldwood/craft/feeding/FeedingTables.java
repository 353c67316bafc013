package org.oldwood.craft.feeding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.RecordException;

/**
 * The published tables and limits of feeding that are not of one crop: {@code feeding.json}.
 *
 * @param soils which class a texture falls in
 * @param index bounds of the soil index
 * @param vigour factor of the nitrogen need by growth: weak, normal, strong
 * @param young what plants need while young
 * @param limits the single figures
 * @param usual feeds to reckon with where the grower names none
 * @param winter what winter leaves, and which season is fed
 * @param doubts when an entry is questioned
 * @param humus what ground rich in humus needs less
 * @param tub what plants in tubs get
 * @param recipes the recipes found so far by these tables
 */
public record FeedingTables(@Key("soilClasses") SoilClasses soils, SoilIndex index, Figure targetIndex,
        Map<String, NeedTable> tables, Map<String, Timing> timings,
        @Key(least = 0, most = 3) Map<String, Double> vigour, Young young, @Key(Key.HERE) Limits limits, Usual usual,
        Winter winter, @Key("doubt") Doubts doubts, Humus humus, Tub tub, Recipe.Found recipes) {

    /**
     * Feeds to reckon with where the grower names none.
     *
     * @param feeds ids, the favourite first
     * @param acidSoilFeeds ids for crops of acid soils
     */
    public record Usual(List<String> feeds, List<String> acidSoilFeeds) {
        public List<String> forCrop(boolean acidSoil) { return acidSoil ? acidSoilFeeds : feeds; }
    }

    /**
     * Ground that sets nitrogen free by itself.
     *
     * @param richAbove organic matter from which it does, %
     * @param nitrogenShare share of a table for mineral soils that is still given
     */
    public record Humus(Figure richAbove, Figure nitrogenShare) {}

    /**
     * The food of plants in tubs.
     *
     * @param nPerLitre nitrogen of a season, g for each litre of mix
     * @param p2o5PerN phosphate to go with a gram of nitrogen, g
     * @param k2oPerN potash to go with it, g
     * @param weeks over how many weeks it is given
     * @param weeksAtOnce for how many weeks one task speaks
     */
    public record Tub(Figure nPerLitre, Figure p2o5PerN, Figure k2oPerN, Figure weeks, Figure weeksAtOnce) {}

    /**
     * Single figures.
     *
     * @param residualShare share of organic nitrogen that comes in the second year
     * @param organicShareMost largest share of the nitrogen need to give as manure or compost
     * @param dressingMostN largest single dressing of nitrogen, g/m²
     * @param dressingMostNOnPeat the same on peat, g/m²
     * @param plantingYearMostN most nitrogen in the planting year, g/m²
     * @param potashToMagnesiumMost largest ratio of soil K to Mg, mg/l
     * @param soilTestEvery years between soil tests
     * @param retestAfter days after lime, feed or manure before a test tells the truth
     * @param manure how long before picking raw manure must be given
     * @param nitrogenWeight what being short of a gram of nitrogen weighs against a gram of another nutrient too many
     * @param overdoneMost how many times a need one feed may bring, for the nitrogen that comes with it
     * @param organicNMost most nitrogen of organic materials in a year, free at once or not, g/m²
     * @param carried share of a surplus that the next season still finds; none of nitrogen
     * @param smallest smallest dressing worth weighing out, g/m²
     */
    public record Limits(Figure residualShare, Figure organicShareMost, Figure dressingMostN,
            Figure dressingMostNOnPeat, Figure plantingYearMostN, Figure potashToMagnesiumMost, Figure soilTestEvery,
            Figure retestAfter, @Key(Key.HERE) ManureWait manure, Figure nitrogenWeight, Figure overdoneMost,
            Figure organicNMost, Nutrients carried, Nutrients smallest) {}

    public static FeedingTables read(Documents documents) {
        Fields fields = documents.fields("feeding.json");
        fields.count("format", 1, 1);
        Map<String, NeedTable> tables = RecordReader.byId(fields, "tables", NeedTable.class, NeedTable::id);
        Map<String, Timing> timings = RecordReader.byId(fields, "timings", Timing.class, Timing::id);
        return RecordReader.read(fields, FeedingTables.class,
                Map.of("tables", tables, "timings", timings, "recipes", new Recipe.Found()));
    }

    /** Seasons for which a plant counts as young, and the factor of the nitrogen need while it does. */
    public record Young(@Key(least = 0, most = 10) int seasons, @Key(least = 0, most = 1) double times) {}

    /**
     * Asks for all that a crop's profile names.
     *
     * @throws RecordException where one of these is not here
     */
    public void check(FeedingProfile profile) {
        timing(profile.timing());
        profile.tableIds().forEach(this::table);
    }

    /** The timing of a known id. */
    public Timing timing(String id) {
        return Optional.ofNullable(timings.get(id))
                .orElseThrow(() -> RecordException.lacks("feeding.json", "timing", id, timings.keySet()));
    }

    /** The table of a known id. */
    NeedTable table(String id) {
        return Optional.ofNullable(tables.get(id))
                .orElseThrow(() -> RecordException.lacks("feeding.json", "table", id, tables.keySet()));
    }
}

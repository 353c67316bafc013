package org.oldwood.craft.feeding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The published tables and limits of feeding that are not of one crop: {@code feeding.json}.
 *
 * @param soils which class a texture falls in
 * @param index bounds of the soil index
 * @param targetIndex the index to hold
 * @param tables tables of need by id
 * @param timings timings by id
 * @param vigour factor of the nitrogen need by growth: weak, normal, strong
 * @param youngSeasons seasons for which a plant counts as young
 * @param youngTimes factor of the nitrogen need while young
 * @param limits the single figures
 * @param usual feeds to reckon with where the grower names none
 * @param winter what winter leaves, and which season is fed
 * @param doubts when an entry is questioned
 * @param humus what ground rich in humus needs less
 * @param tub what plants in tubs get
 * @param recipes the recipes found so far by these tables
 */
public record FeedingTables(
        SoilClasses soils,
        SoilIndex index,
        Figure targetIndex,
        Map<String, NeedTable> tables,
        Map<String, Timing> timings,
        Map<String, Double> vigour,
        int youngSeasons,
        double youngTimes,
        Limits limits,
        Usual usual,
        Winter winter,
        Doubts doubts,
        Humus humus,
        Tub tub,
        Recipe.Found recipes) {

    /**
     * Feeds to reckon with where the grower names none.
     *
     * @param feeds ids, the favourite first
     * @param acidSoilFeeds ids for crops of acid soils
     */
    public record Usual(List<String> feeds, List<String> acidSoilFeeds) {
        public List<String> forCrop(boolean acidSoil) {
            return acidSoil ? acidSoilFeeds : feeds;
        }
    }

    /**
     * Ground that sets nitrogen free by itself.
     *
     * @param richAbove organic matter from which it does, %
     * @param nitrogenShare share of a table for mineral soils that is still given
     */
    public record Humus(Figure richAbove, Figure nitrogenShare) {
        static Humus read(Fields fields) {
            return new Humus(Figure.read(fields, "richAbove"), Figure.read(fields, "nitrogenShare"));
        }
    }

    /**
     * The food of plants in tubs.
     *
     * @param nPerLitre nitrogen of a season, g for each litre of mix
     * @param p2o5PerN phosphate to go with a gram of nitrogen, g
     * @param k2oPerN potash to go with it, g
     * @param weeks over how many weeks it is given
     * @param weeksAtOnce for how many weeks one task speaks
     */
    public record Tub(Figure nPerLitre, Figure p2o5PerN, Figure k2oPerN, Figure weeks, Figure weeksAtOnce) {
        static Tub read(Fields fields) {
            return new Tub(
                    Figure.read(fields, "nPerLitre"),
                    Figure.read(fields, "p2o5PerN"),
                    Figure.read(fields, "k2oPerN"),
                    Figure.read(fields, "weeks"),
                    Figure.read(fields, "weeksAtOnce"));
        }
    }

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
    public record Limits(
            Figure residualShare,
            Figure organicShareMost,
            Figure dressingMostN,
            Figure dressingMostNOnPeat,
            Figure plantingYearMostN,
            Figure potashToMagnesiumMost,
            Figure soilTestEvery,
            Figure retestAfter,
            ManureWait manure,
            double nitrogenWeight,
            Figure overdoneMost,
            Figure organicNMost,
            Nutrients carried,
            Nutrients smallest) {
        static Limits read(Fields fields) {
            return new Limits(
                    Figure.read(fields, "residualShare"),
                    Figure.read(fields, "organicShareMost"),
                    Figure.read(fields, "dressingMostN"),
                    Figure.read(fields, "dressingMostNOnPeat"),
                    Figure.read(fields, "plantingYearMostN"),
                    Figure.read(fields, "potashToMagnesiumMost"),
                    Figure.read(fields, "soilTestEvery"),
                    Figure.read(fields, "retestAfter"),
                    ManureWait.read(fields),
                    Figure.read(fields, "nitrogenWeight").is(),
                    Figure.read(fields, "overdoneMost"),
                    Figure.read(fields, "organicNMost"),
                    nutrients(part(fields, "carried")),
                    nutrients(part(fields, "smallest")));
        }
    }

    public static FeedingTables read(Documents documents) {
        Fields fields = documents.fields("feeding.json");
        fields.count("format", 1, 1);
        Fields young = part(fields, "young");
        FeedingTables all = new FeedingTables(
                SoilClasses.read(part(fields, "soilClasses")),
                SoilIndex.read(part(fields, "index")),
                Figure.read(fields, "targetIndex"),
                tables(fields),
                timings(fields),
                vigour(part(fields, "vigour")),
                young.count("seasons", 0, 10),
                young.number("times", 0, 1),
                Limits.read(fields),
                usual(part(fields, "usual")),
                Winter.read(part(fields, "winter")),
                Doubts.read(part(fields, "doubt")),
                Humus.read(part(fields, "humus")),
                Tub.read(part(fields, "tub")),
                new Recipe.Found());
        fields.done();
        return all;
    }

    private static Usual usual(Fields fields) {
        return new Usual(fields.texts("feeds"), fields.texts("acidSoilFeeds"));
    }

    private static Fields part(Fields fields, String key) {
        return fields.object(key).orElseThrow(() -> new IllegalStateException("feeding.json has no " + key));
    }

    private static Nutrients nutrients(Fields fields) {
        return Nutrients.each(nutrient -> Figure.read(fields, nutrient.symbol()).is());
    }

    private static Map<String, NeedTable> tables(Fields fields) {
        Map<String, NeedTable> tables = new LinkedHashMap<>();
        for (Fields inner : fields.objects("tables")) {
            NeedTable table = NeedTable.read(inner);
            tables.put(table.id(), table);
        }
        return tables;
    }

    private static Map<String, Timing> timings(Fields fields) {
        Map<String, Timing> timings = new LinkedHashMap<>();
        for (Fields inner : fields.objects("timings")) {
            Timing timing = Timing.read(inner);
            timings.put(timing.id(), timing);
        }
        return timings;
    }

    private static Map<String, Double> vigour(Fields fields) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (String growth : new String[] {"weak", "normal", "strong"}) {
            factors.put(growth, fields.number(growth, 0, 3));
        }
        return factors;
    }

    /** The timing of a known id. */
    public Timing timing(String id) {
        return Optional.ofNullable(timings.get(id))
                .orElseThrow(() -> new IllegalStateException("feeding.json has no timing " + id));
    }

    /** The table of a known id. */
    NeedTable table(String id) {
        return Optional.ofNullable(tables.get(id))
                .orElseThrow(() -> new IllegalStateException("feeding.json has no table " + id));
    }
}

package org.oldwood.season.sums;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The chill models by key, from {@code season/chill-models.json}: tables of steps and counts of hours are data,
 * equations are classes. A new table of steps needs no code.
 */
public final class ChillModels {
    private static final List<String> KINDS = List.of("hours", "steps", "modified-utah", "dynamic",
            "dynamic-hour-before");
    private static final double PERIOD_C = 28;
    private static final double WARM_C = 21;

    private final Map<String, ChillModel> byKey = new LinkedHashMap<>();

    public record ChillModel(String key, String name, String unit, List<String> sources, Seen seen, String note,
            Supplier<HourlySum> maker) {
        /** A new sum, at its beginning. */
        public HourlySum begin() { return maker.get(); }
    }

    private ChillModels() {}

    public static ChillModels read(Documents documents) {
        return documents.made("season/chill-models.json", ChillModels.class, ChillModels::read)
                .orElseThrow(() -> new IllegalStateException("season/chill-models.json is missing"));
    }

    private static ChillModels read(Fields fields) {
        ChillModels models = new ChillModels();
        fields.count("format", 1, 1);
        for (Fields each : fields.objects("models")) {
            ChillModel model = RecordReader.read(each, ChillModel.class, Map.of("maker", maker(each)));
            models.byKey.put(model.key(), model);
        }
        fields.done();
        return models;
    }

    private static Supplier<HourlySum> maker(Fields fields) {
        return switch (fields.oneOf("kind", KINDS)) {
            case "hours" -> hours(fields);
            case "steps" -> steps(fields);
            case "modified-utah" -> () -> ChillModels::modifiedUtah;
            case "dynamic-hour-before" -> DynamicModel::hourBefore;
            default -> DynamicModel::sameHour;
        };
    }

    /** Counts hours between two temperatures; one at exactly the upper end counts where the data say so. */
    private static Supplier<HourlySum> hours(Fields fields) {
        double from = fields.optionalNumber("fromC", -50, 50).orElse(Double.NEGATIVE_INFINITY);
        double to = fields.number("toC", -50, 50);
        boolean toCounts = fields.flag("toCounts", true);
        return () -> celsius -> celsius >= from && (celsius < to || (toCounts && celsius == to)) ? 1 : 0;
    }

    /**
     * Weighs each hour by a table of steps, as the Utah model and its relatives do. A step reaches from above the end
     * of the one before to its own end, which is included; the last has no end.
     */
    private static Supplier<HourlySum> steps(Fields fields) {
        double[] ends = array(fields.numbers("upToC"));
        double[] weights = array(fields.numbers("weights"));
        if (weights.length != ends.length + 1) {
            fields.tell("weights", "weights-and-steps", weights.length, ends.length);
            return () -> celsius -> 0;
        }
        return () -> celsius -> {
            int step = 0;
            while (step < ends.length && celsius > ends[step]) {
                step++;
            }
            return weights[step];
        };
    }

    /**
     * A sine instead of steps (Linvill 1990, as coded in the R package dormancyR): sin(2 pi T/28) above 0 °C to 21 °C,
     * -1 above, 0 at and below 0 °C.
     */
    private static double modifiedUtah(double celsius) {
        if (celsius <= 0) { return 0; }
        return celsius > WARM_C ? -1 : Math.sin(2 * Math.PI * celsius / PERIOD_C);
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    public Optional<ChillModel> find(String key) { return Optional.ofNullable(byKey.get(key)); }

    /** The model of a key that must be known. */
    public ChillModel get(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no chill model " + key + " in " + keys()));
    }

    public List<String> keys() { return List.copyOf(byKey.keySet()); }
}

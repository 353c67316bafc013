package org.oldwood.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stage;
import org.oldwood.season.StageRule.WarmSummer;
import org.oldwood.season.StageRule.Window;
import org.oldwood.store.Fields;

/**
 * What is known of one crop's stages: how it comes to each, the chill it wants, the frost each stage stands. Read from
 * the crop's {@code stages} section.
 *
 * @param rules by stage; a stage without a rule keeps its calendar date
 * @param chill what the crop wants before warmth moves it, where it is known
 * @param frost the temperature at which harm begins, °C, by stage
 */
public record CropStages(Map<Stage, StageRule> rules, Optional<ChillNeed> chill, Map<Stage, Figure> frost) {

    /**
     * Chill that a crop wants, with the model it was measured by.
     *
     * @param waits what lacking chill does to the heat that the crop's spring stages want, where it does anything
     */
    public record ChillNeed(String model, Figure need, Optional<Waits> waits) {}

    /**
     * How much more heat a crop wants when chill is lacking.
     *
     * @param below hours below which it wants more
     * @param perThousand the share by which its heat rises for a thousand missing hours
     * @param plusMinus the ± of its dates where chill is short
     */
    public record Waits(Figure below, Figure perThousand, Figure plusMinus) {
        /** What the heat sums are multiplied with. */
        double factor(double hours) {
            return 1 + perThousand.is() * Math.max(0, below.is() - hours) / 1000;
        }
    }

    private static final List<String> KINDS = List.of("heat", "days", "heat-after", "mean-rises", "leaf-fall");

    public static CropStages of(Crop crop) {
        return crop.section("stages")
                .map(CropStages::read)
                .orElse(new CropStages(Map.of(), Optional.empty(), Map.of()));
    }

    private static CropStages read(Fields fields) {
        Map<Stage, StageRule> rules = new EnumMap<>(Stage.class);
        Map<Stage, Figure> frost = new EnumMap<>(Stage.class);
        fields.count("format", 1, 1);
        fields.object("calendar");
        fields.object("models").ifPresent(models -> rules(models, rules));
        fields.object("frost").ifPresent(each -> frost(each, frost));
        Optional<ChillNeed> chill = fields.object("chill").map(CropStages::chill);
        fields.done();
        return new CropStages(rules, chill, frost);
    }

    private static ChillNeed chill(Fields fields) {
        ChillNeed need = new ChillNeed(
                fields.text("model"),
                Figure.read(fields, "need"),
                fields.object("waits").map(waits -> RecordReader.read(waits, Waits.class)));
        fields.done();
        return need;
    }

    private static void frost(Fields fields, Map<Stage, Figure> frost) {
        for (Stage stage : Stage.values()) {
            Figure.optional(fields, stage.key()).ifPresent(figure -> frost.put(stage, figure));
        }
        fields.done();
    }

    private static void rules(Fields models, Map<Stage, StageRule> rules) {
        for (Stage stage : Stage.values()) {
            models.object(stage.key()).ifPresent(fields -> {
                rules.put(stage, rule(fields));
                fields.done();
            });
        }
        models.done();
    }

    private static StageRule rule(Fields fields) {
        return switch (fields.oneOf("by", KINDS)) {
            case "heat" -> heat(fields);
            case "days" -> new StageRule.Days(of(fields), Figure.read(fields, "days"), plusMinus(fields));
            case "heat-after" -> heatAfter(fields);
            case "mean-rises" -> new StageRule.MeanRises(Figure.read(fields, "aboveC"), plusMinus(fields));
            default ->
                new StageRule.LeafFall(
                        RecordReader.monthDay(fields, "north"),
                        Figure.read(fields, "atC"),
                        Figure.read(fields, "perC"),
                        plusMinus(fields),
                        Figure.read(fields, "unseenPlusMinus"));
        };
    }

    private static StageRule heat(Fields fields) {
        Optional<Window> window = fields.has("notBefore")
                ? Optional.of(new Window(
                        RecordReader.monthDay(fields, "notBefore"), RecordReader.monthDay(fields, "notAfter")))
                : Optional.empty();
        Optional<WarmSummer> warm = fields.object("warmSummer")
                .map(inner ->
                        new WarmSummer(Figure.read(inner, "warmestMonthC"), RecordReader.monthDay(inner, "then")));
        return new StageRule.Heat(
                fields.number("baseC", -20, 30),
                fields.flag("dayLength", false),
                Figure.read(fields, "sum"),
                plusMinus(fields),
                window,
                warm);
    }

    private static StageRule heatAfter(Fields fields) {
        return new StageRule.HeatAfter(
                of(fields),
                fields.number("baseC", -20, 30),
                Figure.read(fields, "sum"),
                Figure.read(fields, "days"),
                plusMinus(fields),
                Figure.optional(fields, "early"),
                Figure.optional(fields, "late"));
    }

    private static Figure plusMinus(Fields fields) {
        return Figure.read(fields, "plusMinus");
    }

    private static Stage of(Fields fields) {
        return Stage.find(fields.oneOf("of", Stage.keys())).orElseThrow();
    }
}

package org.oldwood.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stage;
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
@Notes("calendar")
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
        return crop.section("stages").map(CropStages::read)
                .orElse(new CropStages(Map.of(), Optional.empty(), Map.of()));
    }

    private static CropStages read(Fields fields) {
        fields.count("format", 1, 1);
        Map<Stage, StageRule> rules = new EnumMap<>(Stage.class);
        fields.object("models").ifPresent(models -> rules(models, rules));
        return RecordReader.read(fields, CropStages.class, Map.of("rules", rules));
    }

    private static void rules(Fields models, Map<Stage, StageRule> rules) {
        for (Stage stage : Stage.values()) {
            models.object(stage.key()).ifPresent(fields -> rules.put(stage, rule(fields)));
        }
        models.done();
    }

    private static StageRule rule(Fields fields) {
        Class<? extends StageRule> kind = switch (fields.oneOf("by", KINDS)) {
            case "heat" -> StageRule.Heat.class;
            case "days" -> StageRule.Days.class;
            case "heat-after" -> StageRule.HeatAfter.class;
            case "mean-rises" -> StageRule.MeanRises.class;
            default -> StageRule.LeafFall.class;
        };
        Optional<Window> window = fields.has("notBefore")
                ? Optional.of(new Window(RecordReader.monthDay(fields, "notBefore"),
                        RecordReader.monthDay(fields, "notAfter")))
                : Optional.empty();
        return kind.cast(RecordReader.read(fields, kind.asSubclass(Record.class), Map.of("window", window)));
    }
}

package org.oldwood.craft.water;

import java.time.LocalDate;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.store.Fields;

/**
 * A day told by a stage of growth.
 *
 * @param stage the stage
 * @param plusDays days after it; below 0 before it
 */
public record StageDay(Stage stage, int plusDays) {
    static StageDay read(Fields parent, String key) {
        Fields fields = Parts.must(parent, key);
        StageDay day = new StageDay(
                Stage.find(fields.oneOf("stage", Stage.keys())).orElse(Stage.DORMANT),
                fields.count("plusDays", -365, 365));
        fields.done();
        return day;
    }

    /** The day in a season. */
    public LocalDate in(Season season, Crop crop, Stages stages) {
        return stages.day(crop, season, stage).plusDays(plusDays);
    }
}

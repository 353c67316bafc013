package org.oldwood.craft.water;

import java.time.LocalDate;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;

/**
 * A day told by a stage of growth.
 *
 * @param stage the stage
 * @param plusDays days after it; below 0 before it
 */
public record StageDay(Stage stage, @Key(least = -365, most = 365) int plusDays) {
    /** The day in a season. */
    public LocalDate in(Season season, Crop crop, Stages stages) {
        return stages.day(crop, season, stage).plusDays(plusDays);
    }
}

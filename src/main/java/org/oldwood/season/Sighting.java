package org.oldwood.season;

import java.time.LocalDate;
import org.oldwood.crop.Stage;

/**
 * A stage that a grower saw a crop reach.
 *
 * @param stage the stage; dormancy is seen as the leaf fall before it
 * @param date the day
 */
public record Sighting(String crop, Stage stage, Season season, LocalDate date) {

    /** A sighting on a day; leaf fall seen early in a season belongs to the season before. */
    public static Sighting on(LocalDate date, String crop, Stage stage, Season containing) {
        Stage seen = stage == Stage.DORMANT ? Stage.LEAF_FALL_DONE : stage;
        boolean autumn = seen == Stage.LEAF_FALL_BEGINS || seen == Stage.LEAF_FALL_DONE;
        boolean early = date.isBefore(containing.start().plusMonths(5));
        return new Sighting(crop, seen, autumn && early ? containing.plus(-1) : containing, date);
    }
}

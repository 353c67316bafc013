package org.oldwood.season;

import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Season;

/** Gives each crop of one garden its stage dates. Same inputs, same dates. */
public interface Stages {
    /**
     * The date of a stage in a season. {@link Stage#DORMANT} lies at the season's beginning (the
     * leaf fall before it), {@link Stage#LEAF_FALL_DONE} at its end.
     */
    StageDate date(Crop crop, Season season, Stage stage);
}

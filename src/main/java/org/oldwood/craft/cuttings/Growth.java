package org.oldwood.craft.cuttings;

import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;

/**
 * The growing seasons of a lot, counted from its first.
 *
 * @param first the season in which it first grows leaves of its own
 */
record Growth(Season first, StageDates stages) {

    StageDate date(int season, Stage stage) {
        return stages.date(first.plus(season), stage);
    }
}

package org.oldwood.craft.cuttings;

import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;

/** The date of each stage of one crop in one garden. The same question gives the same answer. */
@FunctionalInterface
public interface StageDates {
    StageDate date(Season season, Stage stage);
}

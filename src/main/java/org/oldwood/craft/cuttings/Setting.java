package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import org.oldwood.crop.Stage;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;

/**
 * Where and when a forecast is made.
 *
 * @param asOf the day of the forecast: what was not noted by then is still to come
 */
public record Setting(Hemisphere hemisphere, StageDates stages, LocalDate asOf) {

    Season season(LocalDate day) { return Season.containing(day, hemisphere); }

    /** The date of each stage of one crop in one garden. The same question gives the same answer. */
    @FunctionalInterface
    public interface StageDates {
        StageDate date(Season season, Stage stage);
    }
}

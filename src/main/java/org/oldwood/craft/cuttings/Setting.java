package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

/**
 * Where and when a forecast is made.
 *
 * @param hemisphere which half of the earth
 * @param stages the crop's stage dates there
 * @param asOf the day of the forecast: what was not noted by then is still to come
 */
public record Setting(Hemisphere hemisphere, StageDates stages, LocalDate asOf) {

    Season season(LocalDate day) {
        return Season.containing(day, hemisphere);
    }
}

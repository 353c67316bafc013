package org.oldwood.garden;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.season.Season;

/**
 * One bush, or one row of canes.
 *
 * @param id unique among the plants
 * @param cultivar the variety, where known
 * @param bushes how many alike bushes this record stands for; 1 for most
 * @param lengthM length of a row, m
 * @param planted the day it was planted
 * @param about how exact that day is: day, month or year
 * @param lot the lot it came from, for own cuttings
 */
public record Plant(String id, String crop, String form, Optional<String> cultivar, String bed, int bushes,
        OptionalDouble lengthM, LocalDate planted, String about, Optional<String> lot) {

    /** Its id, with its variety: {@code bc-1, Ben Lomond}. */
    public String idAndCultivar() {
        return id + cultivar.map(name -> ", " + name).orElse("");
    }

    /** The season in which it was planted, as seen from {@code season}: 1 in its first, 2 in its second. */
    public int seasonsOld(Season season) {
        return season.year() - Season.year(planted, season.hemisphere()) + 1;
    }
}

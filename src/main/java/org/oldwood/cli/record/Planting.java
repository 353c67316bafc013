package org.oldwood.cli.record;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.store.Place;

/**
 * Plants of one crop in one bed, as a new garden's owner tells them.
 *
 * @param number how many plants; of a crop grown in rows, how many stand in the row
 * @param bed the bed's id; empty for a bed of the crop's own
 * @param id its id, where it has one already; several bushes under one id are noted together
 * @param planted the day it was planted; empty for that of the whole garden
 * @param lengthM the length of a row, m; empty to take it from the plants' spacing
 * @param place where it was told
 */
record Planting(
        String crop,
        int number,
        Optional<String> bed,
        Optional<String> cultivar,
        Optional<String> form,
        Optional<String> id,
        Optional<LocalDate> planted,
        Optional<Double> lengthM,
        Place place) {
    String bedId() {
        return bed.orElse(crop + "-bed");
    }
}

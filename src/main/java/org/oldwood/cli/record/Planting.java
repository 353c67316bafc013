package org.oldwood.cli.record;

import java.util.Optional;
import org.oldwood.store.Place;

/**
 * Plants of one crop in one bed, as a new garden's owner tells them.
 *
 * @param bed the bed's id; empty for a bed of the crop's own
 * @param place where it was told
 */
record Planting(
        String crop, int number, Optional<String> bed, Optional<String> cultivar, Optional<String> form, Place place) {
    String bedId() {
        return bed.orElse(crop + "-bed");
    }
}

package org.oldwood.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A lot of cuttings on a day.
 *
 * @param id unique among the lots
 * @param parent the bush they came from, where it is the garden's own
 * @param method how they were made
 * @param struckOn the day
 * @param bed where they stand, if said
 * @param entries all that was noted of the lot, oldest first; the strike is the first
 */
public record LotState(String id, String crop, Optional<String> parent, String method, int struck, LocalDate struckOn,
        Optional<String> bed, List<Entry> entries) {

    /** How its plants will be grown, where that was noted when it was struck. */
    public Optional<String> form() {
        return entries.get(0).text("form");
    }

    /** What will be cut at planting, where that was noted: {@code hard}, {@code light}, none. */
    public Optional<String> cut() {
        return entries.get(0).text("cut");
    }
}

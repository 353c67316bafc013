package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stage;

/**
 * A day in a lot's life, told by the plant and not by the month: so many days after a stage of growth in the lot's
 * first growing season or one near it, or after striking.
 *
 * @param stage the stage; empty for days after striking
 * @param season seasons from the lot's first growing season: −1 the one before, 0 the first
 * @param plusDays days after the stage or the striking; below 0 for days before
 */
record Anchor(Optional<Stage> stage, @Key(least = -2, most = 5, otherwise = 0) int season,
        @Key(least = -200, most = 400, otherwise = 0) int plusDays) {

    /** The day, with its ±, for a lot struck on {@code struck} whose seasons are {@code growth}. */
    LikelyDay day(LocalDate struck, Timeline.Growth growth, int laterSeasons) {
        return stage.map(s -> LikelyDay.of(growth.date(season + laterSeasons, s)).plusDays(plusDays))
                .orElseGet(() -> new LikelyDay(struck.plusDays(plusDays), 0, "days after striking"));
    }
}

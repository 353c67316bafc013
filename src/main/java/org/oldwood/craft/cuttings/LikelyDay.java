package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import org.oldwood.season.StageDate;

/**
 * A day that is not known to the day.
 *
 * @param plusMinusDays days to either side within which it should lie, at least 0
 */
public record LikelyDay(LocalDate date, int plusMinusDays, String words) {

    static LikelyDay of(StageDate stage) { return new LikelyDay(stage.date(), stage.plusMinusDays(), stage.words()); }

    public LikelyDay plusDays(int days) {
        return days == 0 ? this
                : new LikelyDay(date.plusDays(days), plusMinusDays,
                        Math.abs(days) + (days < 0 ? " days before " : " days after ") + words);
    }
}

package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import org.oldwood.season.StageDate;

/**
 * A day that is not known to the day.
 *
 * @param date the likeliest day
 * @param plusMinusDays days to either side within which it should lie, at least 0
 * @param words what it was made from
 */
public record Around(LocalDate date, int plusMinusDays, String words) {

    static Around of(StageDate stage) {
        return new Around(stage.date(), stage.plusMinusDays(), stage.words());
    }

    public Around plusDays(int days) {
        return days == 0
                ? this
                : new Around(
                        date.plusDays(days),
                        plusMinusDays,
                        Math.abs(days) + (days < 0 ? " days before " : " days after ") + words);
    }
}

package org.oldwood.season;

import java.time.LocalDate;
import java.util.List;

/**
 * The date of a stage and how sure it is.
 *
 * @param date the likeliest day
 * @param plusMinusDays days to either side within which it should lie; 0 when it was seen
 * @param words one sentence on what it was made from
 */
public record StageDate(LocalDate date, int plusMinusDays, Basis basis, String words, List<String> sources) {

    /** What it was made from, then the day, ± how many days; a day that was seen stands alone. */
    public String inWords() {
        if (basis == Basis.SEEN) { return words; }
        return words + ", " + date + (plusMinusDays == 0 ? "" : " ± " + plusMinusDays + " days");
    }
}

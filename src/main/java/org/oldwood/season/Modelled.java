package org.oldwood.season;

import java.time.LocalDate;
import java.util.List;

/**
 * What the models say of a stage, before anything that was seen.
 *
 * @param date the day
 * @param plusMinus one standard deviation, days
 * @param own the part of it that is the stage's own, without that of the stage it follows
 * @param basis modelled, or calendar where no model holds there
 */
record Modelled(LocalDate date, double plusMinus, double own, Basis basis, String words, List<String> sources) {

    static Modelled of(StageDate date, String why) {
        return new Modelled(date.date(), date.plusMinusDays(), date.plusMinusDays(), date.basis(), date.words() + why,
                date.sources());
    }

    /** The same, less sure by so many days. */
    Modelled lessSureBy(double days) {
        return days == 0 ? this : new Modelled(date, Math.hypot(plusMinus, days), own, basis, words, sources);
    }
}

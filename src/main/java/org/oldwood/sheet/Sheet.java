package org.oldwood.sheet;

import java.util.List;

/**
 * All that a year sheet says, in the order in which it says it.
 *
 * @param garden the garden's name
 * @param title what the sheet is of
 * @param facts the day and how much there is of everything
 * @param stages when the crops reach their stages; no rows for none
 * @param years the year's charts, season by season
 * @param months the open jobs by month
 * @param finished what is done
 * @param bushes the plants' wood
 * @param lots the cuttings
 * @param beds the beds
 * @param picks what was picked
 * @param questions what to clear up
 * @param sources where the figures come from
 */
record Sheet(
        String garden,
        String title,
        List<String> facts,
        List<Chart> stages,
        List<Year> years,
        List<JobMonth> months,
        List<JobMonth> finished,
        List<BushCard> bushes,
        List<LotCard> lots,
        List<BedCard> beds,
        List<PickTable> picks,
        List<String> questions,
        List<SourceLine> sources) {

    /** The charts of one season. */
    record Year(String label, List<Chart> charts) {}
}

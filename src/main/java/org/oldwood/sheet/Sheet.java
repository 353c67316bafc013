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
 * @param outlookWords what the outlooks rest on, where it was not read in print
 * @param lots the cuttings
 * @param beds the beds
 * @param picks what was picked
 * @param waterLacking what must be known before the beds' water can be told; empty for nothing
 * @param shopping what to buy
 * @param lacking what no material at hand brings
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
        List<String> outlookWords,
        List<LotCard> lots,
        List<BedCard> beds,
        List<PickTable> picks,
        String waterLacking,
        List<ShopLine> shopping,
        List<String> lacking,
        List<String> questions,
        List<SourceLine> sources) {

    /** The plants whose wood is drawn. */
    List<BushCard> drawn() {
        return bushes.stream().filter(it -> it.wood().isPresent()).toList();
    }

    /** The plants of whose wood nothing is known. */
    List<BushCard> undrawn() {
        return bushes.stream().filter(it -> it.wood().isEmpty()).toList();
    }

    /** The charts of one season. */
    record Year(String label, List<Chart> charts) {}
}
